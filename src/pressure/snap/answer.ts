import { ANSWERS, type Answer, isAnswer } from '../../game/answers.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { PASS_ENDINGS, RUN_KINDS } from '../../game/run-or-pass.ts';
import type { PlayKind } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';
import { onceAFilm } from './once-a-film.ts';

/** What was charted of one snap that bears on the offense's answer. */
export interface AnswerEvidence {
  readonly playKind?: PlayKind | undefined;
  readonly result?: string | undefined;
  /** Snap to release in seconds. */
  readonly timeToThrow?: number | undefined;
  /** Yards past the line the ball was thrown. */
  readonly targetDepth?: number | undefined;
}

/**
 * The offense's answer on a snap, or undefined where it is not known. The rules, first match decides:
 *
 * 1. A pass charted as one of the answers stands as charted. A run stays a run whatever its concept or option tag says,
 *    until the kind itself says `quarterback_run`.
 * 2. `scramble`, and a run of either kind, a pass, play action or blank kind that ended in a scramble or a sack, is a
 *    dropback.
 * 3. `pass` or `play_action` thrown at least `deep_yards` past the line is a deep shot.
 * 4. `pass` thrown within `quick_seconds` is quick; play action never is.
 * 5. `pass` thrown later is a dropback, and so is any other play action.
 * 6. Everything else is not known: no kind, or a pass without a time that was not thrown deep, since quick and dropback
 *    cannot be separated without one.
 *
 * @param cuts - the staff's `deep_yards` and `quick_seconds`
 */
export function answerOf(evidence: AnswerEvidence, cuts: SituationCuts): Answer | undefined {
  const { playKind, result } = evidence;
  const isRun = RUN_KINDS.includes(playKind ?? '');
  if (playKind !== undefined && !isRun && isAnswer(playKind)) return playKind;
  if (playKind === 'scramble' || PASS_ENDINGS.includes(result ?? '')) return 'dropback';
  if (playKind === 'pass' || playKind === 'play_action') return thrownAnswer(playKind, evidence, cuts);
  return playKind;
}

/**
 * The answer of every snap as an index into the vocabulary's answers; 255 where it is not known.
 *
 * @param cuts - the staff's `deep_yards` and `quick_seconds`
 * @see {@link answerOf} for the rules
 */
export function answerCodes(chart: Film, cuts: SituationCuts): Uint8Array {
  const known = BY_CUTS(chart);
  const codes = known.get(cuts) ?? readAnswers(chart, cuts);
  known.set(cuts, codes);
  return codes;
}

const BY_CUTS = onceAFilm(() => new Map<SituationCuts, Uint8Array>());

function readAnswers(chart: Film, cuts: SituationCuts): Uint8Array {
  return codesBySnap(chart.size, (i) => {
    const evidence = {
      playKind: textAt(chart, 'play_kind', i) as PlayKind | undefined,
      result: textAt(chart, 'result', i),
      timeToThrow: numberAt(chart, 'time_to_throw', i),
      targetDepth: numberAt(chart, 'target_depth', i),
    };
    const answer = answerOf(evidence, cuts);
    return answer === undefined ? NOT_KNOWN : ANSWERS.indexOf(answer);
  });
}

function thrownAnswer(
  kind: 'pass' | 'play_action',
  { timeToThrow, targetDepth }: AnswerEvidence,
  cuts: SituationCuts,
): Answer | undefined {
  if (targetDepth !== undefined && targetDepth >= cuts.deep_yards) return 'deep_shot';
  if (kind === 'play_action') return 'dropback';
  if (timeToThrow === undefined) return undefined;
  return timeToThrow <= cuts.quick_seconds ? 'quick' : 'dropback';
}
