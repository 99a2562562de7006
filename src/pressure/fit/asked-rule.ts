import type { FitTrigger } from '../../game/fit-rules.ts';
import type { Spread } from '../../stats/spread.ts';
import type { ExpectedPart, ExpectedSnaps } from './expected-snaps.ts';
import { fitShares } from './fit-shares.ts';
import { type ReadFilm, ruleChance, unseenSnap } from './theory.ts';
import { meets, type ReadyRule, readyRules, type SnapWords, VERDICTS } from './verdict.ts';

/** A trigger asked of every film snap. */
export interface AskedRule {
  readonly ready: ReadyRule;
  /** Whether each film snap meets it; undefined where it was not charted. */
  readonly met: readonly (boolean | undefined)[];
  /** The chance of it, blank cells filled from their other snaps. */
  readonly chances: readonly number[];
  /** The chance of it on a snap of a part that their film has not shown. */
  readonly unseen: (part: ExpectedPart) => number;
}

/** Asks a rule's trigger of every film snap. */
export function askRule(ready: ReadyRule, { snaps, blanks }: ReadFilm): AskedRule {
  const chanceOf = (snap: SnapWords) => ruleChance(ready, snap, blanks);
  return {
    ready,
    met: snaps.map((snap) => meets(ready, snap)),
    chances: snaps.map(chanceOf),
    unseen: (part) => chanceOf(unseenSnap(part)),
  };
}

/** Asks a trigger that belongs to no rule. */
export function askTrigger(when: FitTrigger, film: ReadFilm): AskedRule {
  const [ready] = readyRules([{ id: '', families: [], when, says: 'wrong', stands: false, source: '' }]);
  return askRule(ready as ReadyRule, film);
}

/** Share of the expected snaps on which any of the triggers is met; no snap meets two of them. */
export function shareOf(asked: readonly AskedRule[], expected: ExpectedSnaps): number {
  const total = expected.parts.reduce((sum, { alpha }) => sum + alpha, 0);
  if (total === 0) return 0;
  return expected.parts.reduce((sum, part) => sum + (part.alpha / total) * partShare(asked, part), 0);
}

/** The same share with its 95% interval. */
export function shareSpread(asked: readonly AskedRule[], expected: ExpectedSnaps): Spread {
  const parts = expected.parts.map((part) => {
    const share = partShare(asked, part);
    const shares = VERDICTS.map((verdict) =>
      verdict === 'right' ? share : Number(verdict === 'neutral') * (1 - share),
    );
    const squares = part.weights.reduce((sum, weight) => sum + weight ** 2, 0);
    return { alpha: part.alpha, shares, worth: squares === 0 ? 0 : 1 / squares, guessed: 0 };
  });
  return fitShares(parts).right;
}

/** The chance that a film snap meets any of the triggers. */
export function chanceAt(asked: readonly AskedRule[], row: number): number {
  return Math.min(
    1,
    asked.reduce((sum, { chances }) => sum + (chances[row] as number), 0),
  );
}

function partShare(asked: readonly AskedRule[], part: ExpectedPart): number {
  if (part.rows.length === 0)
    return Math.min(
      1,
      asked.reduce((sum, { unseen }) => sum + unseen(part), 0),
    );
  return part.rows.reduce((sum, row, i) => sum + (part.weights[i] as number) * chanceAt(asked, row), 0);
}
