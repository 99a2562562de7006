import { describe, expect, it } from 'vitest';
import { ANSWER_TABLE, ANSWERS } from '../../../src/game/answers.ts';
import { FAMILIES, familyFacts } from '../../../src/game/families.ts';
import { baseShares, extraExplosives, OPEN_DATA_ATTRIBUTION } from '../../../src/pressure/evidence/open-data.ts';
import { OPEN_BASE, OPEN_DIFFERENCES, OPEN_RUN_SHARES } from '../../../src/pressure/evidence/open-data-table.ts';

describe('the committed table', () => {
  it('carries its license and names its sources', () => {
    for (const name of [
      'nflverse (CC BY 4.0)',
      'FTN Data via nflverse (CC BY-SA 4.0)',
      'NFL NextGenStats',
      'derived',
    ]) {
      expect(OPEN_DATA_ATTRIBUTION).toContain(name);
    }
  });

  it('gives four rushers a distribution of outcomes against every answer', () => {
    for (const answer of ANSWERS) {
      const shares = baseShares(answer);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      expect(Math.min(...shares)).toBeGreaterThan(0);
    }
  });

  it('shares of each answer sum to one as they stand, to four digits', () => {
    for (const shares of [...Object.values(OPEN_BASE), OPEN_RUN_SHARES]) {
      expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThan(0.0011);
    }
  });

  it('has nothing to say on a run, nor on the spy', () => {
    expect([
      ANSWER_TABLE.run.openData,
      ANSWER_TABLE.quarterback_run.openData,
      familyFacts('peel_spy').openData,
    ]).toEqual([null, null, null]);
  });
});

describe('explosives beyond four rushers', () => {
  it('lie between what was measured of the family and of all pressures', () => {
    const pooled = extraExplosives('peel_spy').value;
    for (const family of FAMILIES) {
      const proxy = familyFacts(family).openData;
      if (proxy === null || proxy === 'base') continue;
      const [own, kept] = [OPEN_DIFFERENCES[proxy].explosive.value, extraExplosives(family).value];
      expect(kept).toBeGreaterThanOrEqual(Math.min(own, pooled) - 1e-12);
      expect(kept).toBeLessThanOrEqual(Math.max(own, pooled) + 1e-12);
    }
  });

  it('are the most where the league gave up most: seven rushers and six with one deep', () => {
    const most = ['three_under', 'four_under', 'man_free', 'hot', 'zero'] as const;
    for (const family of most) expect(extraExplosives(family).value).toBeLessThan(extraExplosives('peel').value);
    expect(extraExplosives('base')).toEqual({ value: 0, error: 0 });
  });
});
