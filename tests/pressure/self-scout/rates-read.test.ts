import { describe, expect, it } from 'vitest';
import { pressureRates } from '../../../src/pressure/menu/pressure-rates.ts';
import { chapterOf } from './own-log.ts';
import { playedPlan } from './played-plan.ts';

/** A game's situations; every theory fits late downs and none early ones: the plainest reason there is to bend. */
const SITUATIONS = [
  { id: 'first_ten', expectedSnaps: 25, net: -0.5 },
  { id: 'second_medium', expectedSnaps: 8, net: -0.5 },
  { id: 'second_long', expectedSnaps: 9, net: 0.5 },
  { id: 'third_medium', expectedSnaps: 7, net: 0.5 },
  { id: 'third_long', expectedSnaps: 9, net: 0.5 },
];

const LOGS = 20;

/** Of twenty films of four games each, on how many our own search says that a split gives our pressure away. */
function filmsRead(rates: readonly number[]): number {
  const mix = SITUATIONS.map(({ id }, s) => ({ situation: id, share: rates[s] as number }));
  const call = { call: 'Roof', family: 'three_under', path: 'a', coverage: 'roof', mix } as const;
  const menu = { situations: SITUATIONS, calls: [call] };
  return Array.from({ length: LOGS }, (_, seed) => chapterOf(playedPlan(menu, 4, seed))).filter(({ pressureSplits }) =>
    pressureSplits.some(({ adjusted }) => (adjusted ?? 1) < 0.05),
  ).length;
}

describe('four games of the planned pressure rates on our own search', () => {
  it('give nothing away by down, distance or situation', () => {
    const rates = pressureRates(SITUATIONS, { least: 0, most: 0.8, band: 0.15 }, 0.4);
    expect(Math.max(...rates) - Math.min(...rates)).toBeGreaterThan(0.05);
    // The 99.9% point of the films that a search at the 5% level would call by chance: binomial, 20 trials.
    expect(filmsRead(rates)).toBeLessThanOrEqual(5);
  });

  it('would show the whole band, used for late downs against early ones', () => {
    expect(filmsRead([0.25, 0.25, 0.55, 0.55, 0.55])).toBe(LOGS);
  });
});
