import { describe, expect, it } from 'vitest';
import { share } from '../../src/stats/share.ts';

describe('share', () => {
  it('carries its count and its Wilson interval (R 4.2.2, prop.test, correct = FALSE)', () => {
    const got = share(3, 10);
    expect(got).toMatchObject({ count: 3, trials: 10, estimate: 0.3 });
    expect(got.low).toBeCloseTo(0.107791267406301, 12);
    expect(got.high).toBeCloseTo(0.603221852538855, 12);
  });

  it('has no estimate after no trial', () => {
    expect(share(0, 0)).toEqual({ count: 0, trials: 0, estimate: null, low: 0, high: 1 });
  });
});
