import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { DEFAULT_FIT_RULES } from '../../../src/game/default-fit-rules.ts';
import { FAMILIES, type Family } from '../../../src/game/families.ts';
import { FIT_FEATURES, type FitFeature } from '../../../src/game/fit-features.ts';
import type { FitShares } from '../../../src/pressure/fit/fit-result.ts';
import { fitShares } from '../../../src/pressure/fit/fit-shares.ts';
import { readyRules, rulesOf, type SnapWords, VERDICTS, verdictOf } from '../../../src/pressure/fit/verdict.ts';

/** A kind of snap with how many of it are expected. */
interface SnapKind {
  readonly snap: SnapWords;
  readonly weight: number;
}

const rules = readyRules(DEFAULT_FIT_RULES);
const NO_WORD = 254;
const PASS_ONLY: readonly FitFeature[] = ['back', 'ball', 'protectors', 'thrown_to', 'routes'];
const names = Object.keys(FIT_FEATURES) as FitFeature[];
const code = (feature: FitFeature, word: string) => (FIT_FEATURES[feature] as readonly string[]).indexOf(word);

/** What goes without saying: a run has no throw, a screen and a quick throw are out at once. */
function consistent(snap: SnapWords): SnapWords {
  const answer = ANSWERS[snap.answer];
  if (answer === 'run' || answer === 'quarterback_run')
    return {
      ...snap,
      ...Object.fromEntries(PASS_ONLY.map((name) => [name, NO_WORD])),
      scramble: code('scramble', 'no'),
    };
  return answer === 'screen' || answer === 'quick'
    ? { ...snap, ball: code('ball', 'out'), scramble: code('scramble', 'no') }
    : snap;
}

const anySnap = fc
  .tuple(...names.map((name) => fc.nat(FIT_FEATURES[name].length - 1)))
  .map((codes) => consistent(Object.fromEntries(names.map((name, i) => [name, codes[i]])) as unknown as SnapWords));
const kinds = fc.array(fc.record({ snap: anySnap, weight: fc.integer({ min: 1, max: 40 }) }), {
  minLength: 1,
  maxLength: 12,
});

/** Fit of a family on kinds of snaps, each kind an answer of its own to the shares. */
function fitOn(family: Family, offense: readonly SnapKind[]): FitShares {
  const own = rulesOf(family, rules);
  return fitShares(
    offense.map(({ snap, weight }) => {
      const verdict = verdictOf(own, snap);
      return { alpha: weight, shares: VERDICTS.map((one) => Number(one === verdict)), worth: weight, guessed: 0 };
    }),
  );
}

const net = (family: Family, offense: readonly SnapKind[]) => fitOn(family, offense).net.mean;
/** How far three-under is ahead of four-under. */
const gap = (offense: readonly SnapKind[]) => net('three_under', offense) - net('four_under', offense);
const SLACK = 1e-12;

/** The offense with the first kind's snaps changed, everything else about them left alone. */
function changed(offense: readonly SnapKind[], change: Partial<Record<FitFeature, string>>): SnapKind[] {
  const words = Object.entries(change).map(([name, word]) => [name, code(name as FitFeature, word)]);
  return offense.map((kind, i) =>
    i === 0 ? { ...kind, snap: consistent({ ...kind.snap, ...Object.fromEntries(words) }) } : kind,
  );
}

const holds = (check: (offense: readonly SnapKind[]) => void) =>
  fc.assert(fc.property(kinds, check), { numRuns: 800, seed: 14 });

describe('fit moves one way only', () => {
  it.each(['screen', 'quick'])('more %s never helps the add-on', (answer) => {
    holds((offense) => {
      const before = fitOn('add_on', offense);
      const after = fitOn('add_on', changed(offense, { answer }));
      expect(after.net.mean).toBeLessThanOrEqual(before.net.mean + SLACK);
      expect(after.right.mean).toBeLessThanOrEqual(before.right.mean + SLACK);
      expect(after.wrong.mean).toBeGreaterThanOrEqual(before.wrong.mean - SLACK);
    });
  });

  it('more wide releases never help zero against peel', () => {
    holds((offense) => {
      const passing = changed(offense, { answer: 'dropback' });
      const wide = changed(offense, { answer: 'dropback', back: 'releases_wide' });
      expect(net('zero', wide) - net('peel', wide)).toBeLessThanOrEqual(
        net('zero', passing) - net('peel', passing) + SLACK,
      );
    });
  });

  it('more held balls with the back in never hurt the add-on', () => {
    holds((offense) => {
      const before = changed(offense, { answer: 'dropback' });
      const held = changed(offense, { answer: 'dropback', back: 'blocks', ball: 'held' });
      expect(net('add_on', held)).toBeGreaterThanOrEqual(net('add_on', before) - SLACK);
    });
  });

  it('more flat throws never help three-under against four-under', () => {
    holds((offense) => {
      const before = changed(offense, { answer: 'dropback' });
      const flat = changed(before, { thrown_to: 'flat' });
      expect(gap(flat)).toBeLessThanOrEqual(gap(before) + SLACK);
    });
  });

  // Five receivers out is left aside: both zones are wrong against it, so that a balanced set can only free the one.
  it.each(['trips', 'other'])(
    'more balanced sets in place of %s never help three-under against four-under',
    (receivers) => {
      holds((offense) => {
        const balanced = changed(offense, { receivers: 'balanced' });
        expect(gap(balanced)).toBeLessThanOrEqual(gap(changed(offense, { receivers })) + SLACK);
      });
    },
  );

  it('more trips never help four-under against three-under', () => {
    holds((offense) => {
      expect(gap(changed(offense, { receivers: 'trips' }))).toBeGreaterThanOrEqual(gap(offense) - SLACK);
    });
  });

  it.each(['zero', 'man_free'] as const)('more quarterback runs never help %s against peel with a spy', (family) => {
    holds((offense) => {
      const runs = changed(offense, { answer: 'quarterback_run' });
      expect(net(family, runs) - net('peel_spy', runs)).toBeLessThanOrEqual(
        net(family, offense) - net('peel_spy', offense) + SLACK,
      );
    });
  });

  it('shares of right, neutral, wrong and unknown sum to 1, and each lies in its interval', () => {
    holds((offense) => {
      for (const family of FAMILIES) {
        const { right, neutral, wrong, unknown, net: less } = fitOn(family, offense);
        expect(right.mean + neutral.mean + wrong.mean + unknown).toBeCloseTo(1, 12);
        expect(right.mean - wrong.mean).toBeCloseTo(less.mean, 12);
        for (const { mean, low, high } of [right, neutral, wrong, less]) {
          expect(low).toBeLessThanOrEqual(mean + 1e-9);
          expect(high).toBeGreaterThanOrEqual(mean - 1e-9);
        }
      }
    });
  });

  it('does not depend on the order of the snaps or of the rules', () => {
    const backward = readyRules([...DEFAULT_FIT_RULES].reverse());
    holds((offense) => {
      for (const family of FAMILIES) {
        expect(net(family, [...offense].reverse())).toBeCloseTo(net(family, offense), 12);
        for (const { snap } of offense)
          expect(verdictOf(rulesOf(family, backward), snap)).toBe(verdictOf(rulesOf(family, rules), snap));
      }
    });
  });
});
