import { ANSWERS, PASS_ANSWERS } from '../../game/answers.ts';
import type { Film } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import type { Target } from '../forecast/forecast-result.ts';
import { definitionOf } from '../forecast/target.ts';
import { quickReleaseCodes, screenCodes } from '../forecast/target-codes.ts';
import { answerCodes } from '../snap/answer.ts';
import { classifiedAnswers } from '../snap/classified-answers.ts';
import { codesBySnap } from '../snap/codes-by-snap.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { offenseGames } from '../snap/offense-game.ts';
import { OUTCOME_KINDS, outcomeAt } from '../snap/outcome.ts';
import { PASS, runOrPassCodes } from '../snap/run-or-pass.ts';
import type { PressuredTarget } from './pressured-result.ts';

/** One question asked when pressured. */
export interface PressuredDefinition {
  readonly target: PressuredTarget;
  readonly classes: readonly string[];
  /** Class of every snap as an index into `classes`; 255 where it does not apply or was not charted. */
  readonly codes: (chart: Film, cuts: SituationCuts) => Uint8Array;
  /** The forecast that says what to expect in a situation; null where nothing forecasts it. */
  readonly forecast: Target | null;
  /** Asked of runs too, so that the rush must have been charted on runs. */
  readonly ofRuns: boolean;
}

/** Every question, in the order of the page. */
export const PRESSURED_DEFINITIONS: readonly PressuredDefinition[] = [
  {
    target: 'run_or_pass',
    classes: classesOf('run_or_pass'),
    codes: runOrPassCodes,
    forecast: 'run_or_pass',
    ofRuns: true,
  },
  { target: 'pass_answer', classes: PASS_ANSWERS, codes: passAnswerCodes, forecast: 'answer', ofRuns: false },
  { target: 'screen', classes: classesOf('screen'), codes: screenCodes, forecast: 'screen', ofRuns: false },
  {
    target: 'quick_release',
    classes: classesOf('quick_release'),
    codes: quickReleaseCodes,
    forecast: 'quick_release',
    ofRuns: false,
  },
  { target: 'result', classes: OUTCOME_KINDS, codes: passResultCodes, forecast: null, ofRuns: false },
];

function classesOf(target: Target): readonly string[] {
  return definitionOf(target).classes;
}

/** Which pass it was, in games that tell their passes apart. */
function passAnswerCodes(chart: Film, cuts: SituationCuts): Uint8Array {
  const charted = classifiedAnswers(answerCodes(chart, cuts), runOrPassCodes(chart), offenseGames(chart));
  const places = ANSWERS.map((answer) => {
    const place = (PASS_ANSWERS as readonly string[]).indexOf(answer);
    return place === -1 ? NOT_KNOWN : place;
  });
  return charted.map((code) => (code === NOT_KNOWN ? NOT_KNOWN : (places[code] as number)));
}

/** How each pass ended for the offense, as an index into the outcome kinds. */
function passResultCodes(chart: Film): Uint8Array {
  const runOrPass = runOrPassCodes(chart);
  return codesBySnap(chart.size, (i) => {
    const outcome = runOrPass[i] === PASS ? outcomeAt(chart, i) : undefined;
    return outcome === undefined ? NOT_KNOWN : OUTCOME_KINDS.indexOf(outcome);
  });
}
