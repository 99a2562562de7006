import type { FitFeature } from '../../game/fit-features.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { meets, type ReadyRule, type SnapWords, type Verdict } from './verdict.ts';

/** What rules have said so far: the strongest of them that is met, and those that would overrule it and wait for a cell. */
export interface Standing {
  /** 0 neutral, 1 right, 2 wrong, 3 right whatever else is said. */
  readonly said: number;
  readonly waiting: readonly ReadyRule[];
}

/** A word put into a blank cell, and the cells that are still blank after it. */
export interface FilledCell {
  readonly feature: FitFeature;
  readonly code: number;
  readonly rest: readonly FitFeature[];
}

/** Weakest first: wrong beats right, unless the right rule stands. */
const STRENGTH = ['neutral', 'right', 'wrong', 'right'] as const satisfies readonly Verdict[];

/** What rules say of a snap by what was charted alone. */
export function chartedStanding(rules: readonly ReadyRule[], snap: SnapWords): Standing {
  const open = rules.filter((ready) => meets(ready, snap) !== false);
  return settle({ said: 0, waiting: open }, ({ features }) => !features.some((name) => snap[name] === NOT_KNOWN));
}

/** What they say once a word stands in a blank cell. */
export function standingAfter(standing: Standing, { feature, code, rest }: FilledCell): Standing {
  const { said, waiting } = standing;
  if (!waiting.some(({ features }) => features.includes(feature))) return standing;
  const open = waiting.filter(({ features, wanted }) => {
    const at = features.indexOf(feature);
    return at < 0 || wanted[at]?.includes(code);
  });
  return settle({ said, waiting: open }, ({ features }) => !features.some((name) => rest.includes(name)));
}

/** The verdict when no rule waits any more. */
export function verdictOfStanding({ said }: Standing): (typeof STRENGTH)[number] {
  return STRENGTH[said] ?? 'neutral';
}

function settle({ said, waiting }: Standing, isMet: (ready: ReadyRule) => boolean): Standing {
  const most = waiting.reduce((best, ready) => (isMet(ready) ? Math.max(best, strength(ready)) : best), said);
  return { said: most, waiting: waiting.filter((ready) => strength(ready) > most) };
}

function strength({ rule: { says, stands } }: ReadyRule): number {
  if (says === 'wrong') return 2;
  return stands ? 3 : 1;
}
