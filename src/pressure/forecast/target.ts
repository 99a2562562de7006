import type { Film } from '../../game/film.ts';
import { ANSWERS, BACK_ACTIONS } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { SLIDE_DIRECTIONS } from '../snap/field-side.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';
import type { Target } from './forecast-result.ts';
import {
  backJobCodes,
  motionCodes,
  protectorCodes,
  quickReleaseCodes,
  screenCodes,
  slideTargetCodes,
} from './target-codes.ts';

/** A question the tool forecasts: its classes, what it is asked of, and how a chart answers it snap by snap. */
export interface TargetDefinition {
  readonly target: Target;
  /** Heading on the page. */
  readonly label: string;
  /** Class names in the order of the codes. */
  readonly classes: readonly string[];
  /** What Friday's count is a count of. */
  readonly per: 'snap' | 'pass';
  /** Class of every snap as an index into `classes`; 255 where the question does not apply or was not charted. */
  readonly codes: (chart: Film, cuts: SituationCuts) => Uint8Array;
  /** The classes that are runs, where runs and passes together follow the forecast of run or pass. */
  readonly runs?: readonly string[];
  /** True where the words a file uses anywhere decide how its other snaps are read. */
  readonly readByFile?: true;
}

/** Whether they run or pass; nearly every chart tells it. */
export const RUN_OR_PASS: TargetDefinition = {
  target: 'run_or_pass',
  label: 'run or pass',
  classes: ['run', 'pass'],
  per: 'snap',
  codes: runOrPassCodes,
};

/** Every target of the report, in the order of the page. */
export const TARGET_DEFINITIONS: readonly TargetDefinition[] = [
  {
    target: 'answer',
    label: 'answer',
    classes: ANSWERS,
    per: 'snap',
    codes: answerCodes,
    runs: ['run', 'quarterback_run'],
  },
  RUN_OR_PASS,
  {
    target: 'screen',
    label: 'screen, when they pass',
    classes: ['screen', 'no_screen'],
    per: 'pass',
    codes: screenCodes,
    readByFile: true,
  },
  {
    target: 'quick_release',
    label: 'ball out within 2.5 seconds, when timed',
    classes: ['within', 'later'],
    per: 'pass',
    codes: quickReleaseCodes,
  },
  { target: 'motion', label: 'motion or shift', classes: ['motion', 'none'], per: 'snap', codes: motionCodes },
  {
    target: 'protectors',
    label: 'protectors, when they pass',
    classes: ['five', 'six', 'seven_or_more'],
    per: 'pass',
    codes: protectorCodes,
  },
  slideTarget('slide_to_back', 'slide to or away from the back', 'back'),
  slideTarget('slide_to_field', 'slide to or away from the wide side', 'field'),
  slideTarget('slide_to_strength', 'slide to or away from the strength', 'strength'),
  {
    target: 'back_job',
    label: "the back's job, when they pass",
    classes: BACK_ACTIONS,
    per: 'pass',
    codes: backJobCodes,
  },
];

function slideTarget(target: Target, label: string, reference: 'back' | 'field' | 'strength'): TargetDefinition {
  return {
    target,
    label,
    classes: SLIDE_DIRECTIONS,
    per: 'pass',
    codes: (chart) => slideTargetCodes(chart, reference),
  };
}
