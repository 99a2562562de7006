import { ANSWERS, isPass } from '../../game/answers.ts';
import type { Film } from '../../game/film.ts';
import { BACK_ACTIONS } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from '../snap/answer.ts';
import { SLIDE_DIRECTIONS } from '../snap/field-side.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';
import { TARGETS, type Target } from './forecast-result.ts';
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

const DEFINITIONS: Readonly<Record<Target, Omit<TargetDefinition, 'target'>>> = {
  answer: {
    classes: ANSWERS,
    per: 'snap',
    codes: answerCodes,
    runs: ANSWERS.filter((answer) => !isPass(answer)),
  },
  run_or_pass: { classes: ['run', 'pass'], per: 'snap', codes: runOrPassCodes },
  screen: {
    classes: ['screen', 'no_screen'],
    per: 'pass',
    codes: screenCodes,
    readByFile: true,
  },
  quick_release: {
    classes: ['within', 'later'],
    per: 'pass',
    codes: quickReleaseCodes,
  },
  motion: { classes: ['motion', 'none'], per: 'snap', codes: motionCodes },
  protectors: {
    classes: ['five', 'six', 'seven_or_more'],
    per: 'pass',
    codes: protectorCodes,
  },
  slide_to_back: slide('back'),
  slide_to_field: slide('field'),
  slide_to_strength: slide('strength'),
  back_job: { classes: BACK_ACTIONS, per: 'pass', codes: backJobCodes },
};

function slide(reference: 'back' | 'field' | 'strength'): Omit<TargetDefinition, 'target'> {
  return { classes: SLIDE_DIRECTIONS, per: 'pass', codes: (chart) => slideTargetCodes(chart, reference) };
}

/** Every target of the report, in the order of the page. */
export const TARGET_DEFINITIONS: readonly TargetDefinition[] = TARGETS.map((target) => ({
  target,
  ...DEFINITIONS[target],
}));

/** The definition of one target, the same object each time. */
export function definitionOf(target: Target): TargetDefinition {
  return TARGET_DEFINITIONS[TARGETS.indexOf(target)] as TargetDefinition;
}

/** Whether they run or pass; nearly every chart tells it. */
export const RUN_OR_PASS = definitionOf('run_or_pass');
