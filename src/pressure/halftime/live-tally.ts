import type { Film } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { classifiedCodes } from '../forecast/classified-codes.ts';
import type { Target } from '../forecast/forecast-result.ts';
import { TARGET_DEFINITIONS } from '../forecast/target.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { situationCodes } from '../snap/situation.ts';

/** Snaps without a known situation; they count for all situations together. */
export const NO_SITUATION = 'not known';

/** Classes of one target counted by situation; `counts` are in the order of the target's classes. */
export interface LiveTally {
  readonly target: Target;
  readonly classes: readonly string[];
  readonly bySituation: ReadonlyMap<string, readonly number[]>;
}

/**
 * Counts every target by situation. Counts are sums over snaps: those of two files add up to those of one.
 *
 * @param snaps - charted tonight, in however many files
 * @param cuts - the staff's cut-offs
 */
export function liveTallies(snaps: Film, cuts: SituationCuts): readonly LiveTally[] {
  const live = asOneFile(snaps);
  const situations = situationCodes(live, cuts);
  return TARGET_DEFINITIONS.map((definition) => {
    const { target, classes } = definition;
    const classOf = classifiedCodes(definition, live, cuts);
    const bySituation = new Map<string, number[]>();
    for (let i = 0; i < live.size; i++) {
      const code = classOf[i] ?? NOT_KNOWN;
      if (code === NOT_KNOWN) continue;
      const id = SITUATIONS[situations[i] ?? NOT_KNOWN]?.id ?? NO_SITUATION;
      const counts = bySituation.get(id) ?? classes.map(() => 0);
      counts[code] = (counts[code] as number) + 1;
      bySituation.set(id, counts);
    }
    return { target, classes, bySituation };
  });
}

/** Counts of all situations together, the unknown one included. */
export function liveTotals({ classes, bySituation }: LiveTally): readonly number[] {
  return classes.map((_, k) => [...bySituation.values()].reduce((sum, counts) => sum + (counts[k] as number), 0));
}

/** Some words are read in the light of their file; tonight's snaps are one film, in however many files they came. */
function asOneFile(live: Film): Film {
  return { ...live, sources: ['first half'], sourceOf: new Uint16Array(live.size) };
}
