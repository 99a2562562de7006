import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import { classifiedCodes } from '../forecast/classified-codes.ts';
import type { Target, Tell } from '../forecast/forecast-result.ts';
import { definitionOf } from '../forecast/target.ts';
import { isSeen, type SeenValue, tellFeatures } from '../forecast/tell-feature.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';

/** A tell of Sunday's report in the game. */
export interface TellReview {
  readonly seen: readonly SeenValue[];
  readonly target: Target;
  readonly follows: string;
  /** Share Sunday expected without the tell, on film with it, and to plan with. */
  readonly expected: number;
  readonly film: Share;
  readonly planWith: number;
  /** What followed in the game when it was seen. */
  readonly game: Share;
  readonly verdict: 'held' | 'died' | 'too_few' | 'not_seen';
}

/** A tell seen on fewer snaps says nothing of whether it holds. Judged on open play data from three snaps on; judgment. */
const LEAST_SEEN = 3;

/** Whether each tell held: followed more often than the forecast without it expected, on three snaps or more. */
export function reviewTells(tells: readonly Tell[], game: Film, cuts: SituationCuts): readonly TellReview[] {
  const features = tellFeatures(game, cuts);
  return tells.map((tell) => {
    const definition = definitionOf(tell.target);
    const wanted = definition.classes.indexOf(tell.follows);
    const codes = classifiedCodes(definition, game, cuts);
    const rows = [...codes.keys()].filter((i) => codes[i] !== NOT_KNOWN && isSeen(features, i, tell.seen));
    const came = share(rows.filter((i) => codes[i] === wanted).length, rows.length);
    const { seen, target, follows, expected, film, planWith } = tell;
    return { seen, target, follows, expected, film, planWith, game: came, verdict: verdictOf(came, expected) };
  });
}

function verdictOf(came: Share, expected: number): TellReview['verdict'] {
  if (came.estimate === null) return 'not_seen';
  if (came.trials < LEAST_SEEN) return 'too_few';
  return came.estimate > expected ? 'held' : 'died';
}
