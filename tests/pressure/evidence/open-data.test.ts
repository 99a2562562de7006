import { describe, expect, it } from 'vitest';
import { ANSWERS, FAMILIES, type Family } from '../../../src/game/vocabulary.ts';
import {
  baseShares,
  OPEN_DATA_ATTRIBUTION,
  OPEN_DATA_LICENCE,
  openEvidence,
} from '../../../src/pressure/evidence/open-data.ts';
import { openFamilyOf, proxyQuality, proxyWords } from '../../../src/pressure/evidence/open-data-proxy.ts';
import {
  OPEN_ANSWERS,
  OPEN_DIFFERENCES,
  OPEN_FAMILIES,
  OPEN_TABLE,
} from '../../../src/pressure/evidence/open-data-table.ts';
import { outcomePremiums, outcomeValues } from '../../../src/pressure/evidence/outcome-value.ts';

const PASSES = ['screen', 'quick', 'dropback', 'movement'] as const;

describe('the committed table', () => {
  it('carries its licence and names its sources', () => {
    expect(OPEN_DATA_LICENCE).toBe('CC BY-SA 4.0');
    for (const name of ['nflverse (CC BY 4.0)', 'FTN Data', 'NFL NextGenStats', 'derived']) {
      expect(OPEN_DATA_ATTRIBUTION).toContain(name);
    }
  });

  it('holds shares that sum to 1 but for rounding', () => {
    for (const family of OPEN_FAMILIES) {
      for (const answer of OPEN_ANSWERS) {
        expect(OPEN_TABLE[family][answer].shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 3);
      }
    }
  });
});

describe('open evidence', () => {
  it('says nothing on a run, nor on the spy', () => {
    for (const family of FAMILIES) expect(openEvidence(family, 'run', 'high_school')).toBeNull();
    for (const answer of ANSWERS) expect(openEvidence('peel_spy', answer, 'high_school')).toBeNull();
    expect([openFamilyOf('peel_spy'), proxyQuality('peel_spy', 'quick'), proxyWords('peel_spy')]).toEqual([
      null,
      0,
      'nothing: a spy is not charted',
    ]);
  });

  it('is worth less for a proxy that misses what makes the family', () => {
    for (const [better, worse] of [
      ['three_under', 'hot'],
      ['man_free', 'peel'],
      ['zero', 'add_on'],
    ] as [Family, Family][]) {
      expect(sizeOf(better)).toBeGreaterThan(sizeOf(worse));
    }
  });

  it('gives the base its own shares', () => {
    expect(Array.from(openEvidence('base', 'screen', 'pro')?.shares ?? [])).toEqual(Array.from(baseShares('screen')));
  });

  it('says that a screen against man coverage loses yards more often than against zone', () => {
    const losses = (family: Family) => openEvidence(family, 'screen', 'pro')?.shares[0] ?? 0;
    expect(losses('man_free')).toBeGreaterThan(losses('three_under') + 0.03);
  });

  // Points were measured snap by snap, shares by outcome kind: two ways to the same difference from four rushers.
  it.each(['three_under', 'four_under', 'man_free', 'hot', 'zero', 'peel', 'add_on'] as const)(
    'agrees in points with the matched difference of %s to 0.06 a snap',
    (family) => {
      const proxy = openFamilyOf(family) as keyof typeof OPEN_DIFFERENCES;
      const measured = OPEN_DIFFERENCES[proxy].points;
      expect(Math.abs(pointsBehind(family) - measured.value)).toBeLessThan(Math.max(0.06, 1.5 * measured.error));
    },
  );

  it('is a distribution for every family, answer and level', () => {
    for (const family of FAMILIES) {
      for (const answer of ANSWERS) {
        const shares = openEvidence(family, answer, 'college')?.shares ?? baseShares(answer);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 10);
        expect(Math.min(...shares)).toBeGreaterThan(0);
      }
    }
  });
});

function sizeOf(family: Family): number {
  return openEvidence(family, 'dropback', 'high_school')?.size ?? 0;
}

/** What the offense gains against a family beyond the base, a pass, averaged as pros throw on first to third down. */
function pointsBehind(family: Family): number {
  const proxy = openFamilyOf(family);
  let [sum, snaps] = [0, 0];
  for (const answer of PASSES) {
    const count = OPEN_TABLE[proxy ?? 'base'][answer === 'movement' ? 'play_action' : answer].snaps;
    for (const down of [1, 2, 3]) {
      const values = outcomeValues(answer, down);
      const premiums = outcomePremiums(family, answer);
      const shares = openEvidence(family, answer, 'pro')?.shares ?? new Float64Array();
      const base = baseShares(answer);
      sum +=
        (count / 3) *
        values.reduce((gain, v, k) => gain + (shares[k] ?? 0) * (v + (premiums[k] ?? 0)) - (base[k] ?? 0) * v, 0);
    }
    snaps += count;
  }
  return sum / snaps;
}
