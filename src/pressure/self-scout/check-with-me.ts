import { newcombeDifference } from '../../stats/difference.ts';
import { share } from '../../stats/share.ts';
import type { LookChanges } from './result.ts';
import type { OwnSnap } from './snaps.ts';

/** What counts as theirs: the chains of a snap that gained what it had to, or broke long. */
const THEIRS: readonly (OwnSnap['outcome'] | undefined)[] = ['gain', 'explosive'];

/**
 * What it costs to show early against an offense that changes its play: how the snaps ended that they changed after our
 * look, against those they left, with the interval of the difference (Newcombe). Snaps on which the change or the end was not
 * charted are counted apart.
 */
export function lookChanges(snaps: readonly OwnSnap[]): LookChanges {
  const shown = snaps.filter(({ shownEarly }) => shownEarly);
  const charted = shown.filter(({ changed }) => changed !== undefined);
  const [changed, left] = [true, false].map((is) => {
    const ended = charted.filter((snap) => snap.changed === is && snap.outcome !== undefined);
    const count = (kinds: typeof THEIRS) => ended.filter(({ outcome }) => kinds.includes(outcome)).length;
    return { success: share(count(THEIRS), ended.length), explosive: share(count(['explosive']), ended.length) };
  }) as [LookChanges['changed'], LookChanges['left']];
  const difference = newcombeDifference({
    x1: changed.success.count,
    n1: changed.success.trials,
    x2: left.success.count,
    n2: left.success.trials,
  });
  return {
    shown: shown.length,
    notCharted: shown.length - charted.length,
    changed,
    left,
    difference,
  };
}
