import { type Film, numberAt, textAt } from '../../game/film.ts';
import { ANSWERS, type Answer } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { LOOKS, lookCodes, receiverLookOf } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';

/** What a scout team can be asked to show: an answer, with the back's job and the receivers where they decide a call. */
export const LOOK_KINDS = [
  { id: 'run', label: 'Run', answer: 'run' },
  { id: 'quarterback_run', label: 'Quarterback run', answer: 'quarterback_run' },
  { id: 'screen', label: 'Screen', answer: 'screen' },
  { id: 'quick', label: 'Quick throw', answer: 'quick' },
  { id: 'dropback', label: 'Dropback, back stays in', answer: 'dropback' },
  { id: 'wide_release', label: 'Dropback, back releases wide', answer: 'dropback' },
  { id: 'inside_release', label: 'Dropback, back releases inside', answer: 'dropback' },
  { id: 'max_protection', label: 'Max protection, ball held', answer: 'dropback' },
  { id: 'empty', label: 'Empty', answer: 'dropback' },
  { id: 'deep_shot', label: 'Deep shot', answer: 'deep_shot' },
  { id: 'trips_deep', label: 'Deep shot from trips', answer: 'deep_shot' },
  { id: 'movement', label: 'Movement', answer: 'movement' },
] as const satisfies readonly { id: string; label: string; answer: Answer }[];
/** The id of one of {@link LOOK_KINDS}. */
export type LookKind = (typeof LOOK_KINDS)[number]['id'];

/** The staff's word for a kind of look. */
export function lookKindLabel(kind: LookKind): string {
  return LOOK_KINDS.find(({ id }) => id === kind)?.label ?? kind;
}

/**
 * The kind of look of every snap, or undefined where the answer is not known. A dropback whose back's job was not charted
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
