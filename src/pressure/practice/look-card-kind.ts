import { ANSWERS, type Answer } from '../../game/answers.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import type { LookKind } from '../../game/look-kinds.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { LOOKS, lookCodes, receiverLookOf } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';

/**
 * The kind of look of every snap, or undefined where the answer is not known. A dropback on which the back's job was not charted
 * counts as one with the back in.
 *
 * @param cuts - the staff's cut-offs, for the answer
 */
export function lookKinds(chart: Film, cuts: SituationCuts): readonly (LookKind | undefined)[] {
  const answers = answerCodes(chart, cuts);
  const looks = lookCodes(chart);
  return Array.from({ length: chart.size }, (_, i) => {
    const code = answers[i] ?? NOT_KNOWN;
    if (code === NOT_KNOWN) return undefined;
    return kindOf(ANSWERS[code] ?? 'dropback', {
      empty: LOOKS[looks[i] ?? NOT_KNOWN]?.id === 'empty',
      trips: receiverLookOf(textAt(chart, 'receivers', i) ?? '') === 'trips',
      protectors: numberAt(chart, 'protectors', i),
      backAction: textAt(chart, 'back_action', i),
    });
  });
}

/** Seven or more stay in: seven-man and max protection. Common practice, no source. */
const MAX_PROTECTORS = 7;

interface LookEvidence {
  readonly empty: boolean;
  readonly trips: boolean;
  readonly protectors: number | undefined;
  readonly backAction: string | undefined;
}

function kindOf(answer: Answer, seen: LookEvidence): LookKind {
  if (answer === 'deep_shot') return seen.trips ? 'trips_deep' : 'deep_shot';
  if (answer === 'quick') return seen.empty ? 'empty' : 'quick';
  return answer === 'dropback' ? dropbackKind(seen) : answer;
}

function dropbackKind({ empty, protectors, backAction }: LookEvidence): LookKind {
  if (empty) return 'empty';
  if ((protectors ?? 0) >= MAX_PROTECTORS) return 'max_protection';
  if (backAction === 'releases_wide') return 'wide_release';
  return backAction === 'releases_inside' ? 'inside_release' : 'dropback';
}
