import { describe, expect, it } from 'vitest';
import { ASSUMED_WORTH, baseWorth } from '../../../src/pressure/protection/base-worth.ts';

const offense = (half: number, rest: number) => ({ counts: [half, rest], games: 4 });
const ALIKE = [offense(60, 40), offense(58, 42), offense(61, 39), offense(60, 40)];
const APART = [offense(95, 5), offense(10, 90), offense(50, 50), offense(80, 20)];
const base = [0.6, 0.4];

describe('baseWorth', () => {
  it('is more where the other offenses are alike, and less for an offense that is none of their kind', () => {
    const usual = baseWorth({ own: [50, 30], games: 4, others: ALIKE, base });
    expect(usual).toBeGreaterThan(2 * baseWorth({ own: [50, 30], games: 4, others: APART, base }));
    expect(usual).toBeGreaterThan(2 * baseWorth({ own: [3, 77], games: 4, others: ALIKE, base }));
  });

  it('is what an assumption is worth without other offenses, or without film', () => {
    expect(baseWorth({ own: [50, 30], games: 4, others: [], base })).toBe(ASSUMED_WORTH);
    expect(baseWorth({ own: [50, 30], games: 4, others: [offense(0, 0)], base })).toBe(ASSUMED_WORTH);
    expect(baseWorth({ own: [0, 0], games: 0, others: ALIKE, base })).toBe(ASSUMED_WORTH);
  });
});
