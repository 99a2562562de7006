import { type Film, textAt } from '../../game/film.ts';
import { ANSWERS, type Answer, BACK_ACTIONS } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import type { Target } from '../forecast/forecast-result.ts';
import { backJobCodes, protectorCodes } from '../forecast/target-codes.ts';
import { answerCodes } from '../snap/answer.ts';
import { RECEIVER_LOOKS, receiverCodes } from '../snap/look.ts';
import { namedWords } from '../snap/named-words.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { exceptOnRuns, runOrPassCodes } from '../snap/run-or-pass.ts';
import type { SheetRow } from './judgement-sheet.ts';

/**
 * Which answers a look bears on: `set` all of them, `pass` every pass but the screen, `held` the passes on which the
 * ball is held. Who stays in to block, and whether the quarterback takes off, means nothing to a ball out at once.
 */
export const LOOK_REACHES = ['set', 'pass', 'held'] as const;
/** One word of {@link LOOK_REACHES}. */
export type LookReach = (typeof LOOK_REACHES)[number];

/** Whether a look of this reach bears on an answer. */
export function reaches(reach: LookReach, answer: Answer): boolean {
  switch (reach) {
    case 'set':
      return true;
    case 'pass':
      return answer === 'quick' || HELD.includes(answer);
    case 'held':
      return HELD.includes(answer);
    default:
      return reach satisfies never;
  }
}

const HELD: readonly Answer[] = ['dropback', 'deep_shot', 'movement'];

/** A row of the sheet that is told by how often a part falls into one of its classes. */
export interface LookRow {
  readonly row: SheetRow;
  readonly index: number;
  readonly reach: LookReach;
  /** How much more than typical counts as "a lot", where the mark applies in full; share, 0 to 1. */
  readonly lot: number;
  /** What they do, for sentences: "they ... on 31 of 60". */
  readonly words: string;
}

/** One thing charted of an offense whose classes exclude each other. */
export interface LookPart {
  readonly id: string;
  readonly column: string;
  /** Shares of the classes at an ordinary offense, summing to 1; judgement. */
  readonly typical: readonly number[];
  /** The forecast that answers for this part, where there is one. */
  readonly target?: Target;
  readonly rows: readonly LookRow[];
  /** Class of every snap as an index into `typical`; 255 where it was not charted. */
  readonly codes: (chart: Film, cuts: SituationCuts) => Uint8Array;
}

const TYPICAL_JOBS = { blocks: 0.4, check_releases: 0.15, releases_wide: 0.17, releases_inside: 0.2, none: 0.08 };

const jobIndex = (job: (typeof BACK_ACTIONS)[number]) => BACK_ACTIONS.indexOf(job);
const receiverIndex = (look: string) => RECEIVER_LOOKS.findIndex(({ id }) => id === look);

/**
 * Everything but the answer that the trade's sheet asks of an offense. Each is counted over all snaps on which its
 * column was charted, whatever the answer, so that a change of answers alone never moves a look. What is typical and
 * what is a lot is judgement.
 */
export const LOOK_PARTS: readonly LookPart[] = [
  {
    id: 'receivers',
    column: 'receivers',
    typical: [0.4, 0.32, 0.08, 0.2],
    codes: receiverCodes,
    rows: [
      { row: 'balanced', index: receiverIndex('balanced'), reach: 'set', lot: 0.5, words: 'line up balanced' },
      { row: 'trips', index: receiverIndex('trips'), reach: 'set', lot: 0.5, words: 'line up in trips' },
      { row: 'empty', index: receiverIndex('empty'), reach: 'set', lot: 0.5, words: 'line up empty' },
    ],
  },
  {
    id: 'backs',
    column: 'personnel',
    typical: [0.2, 0.8],
    codes: (chart) => personnelCodes(chart, 0),
    rows: [{ row: 'two_backs', index: 0, reach: 'set', lot: 0.5, words: 'use two backs' }],
  },
  {
    id: 'tight_ends',
    column: 'personnel',
    typical: [0.18, 0.82],
    codes: (chart) => personnelCodes(chart, 1),
    rows: [{ row: 'heavy', index: 0, reach: 'set', lot: 0.5, words: 'use two tight ends or more' }],
  },
  {
    id: 'back_job',
    column: 'back_action',
    typical: BACK_ACTIONS.map((job) => TYPICAL_JOBS[job]),
    target: 'back_job',
    codes: backJobCodes,
    rows: [
      {
        row: 'releases_wide',
        index: jobIndex('releases_wide'),
        reach: 'pass',
        lot: 0.4,
        words: 'get the back out wide',
      },
      {
        row: 'releases_inside',
        index: jobIndex('releases_inside'),
        reach: 'pass',
        lot: 0.4,
        words: 'release the back inside',
      },
      { row: 'back_in', index: jobIndex('blocks'), reach: 'held', lot: 0.4, words: 'keep the back in to block' },
    ],
  },
  {
    id: 'protectors',
    column: 'protectors',
    typical: [0.4, 0.5, 0.1],
    target: 'protectors',
    codes: protectorCodes,
    rows: [{ row: 'max_protection', index: 2, reach: 'held', lot: 0.3, words: 'protect with seven or more' }],
  },
  {
    id: 'throws',
    column: 'target_zone',
    typical: [0.2, 0.1, 0.7],
    codes: throwCodes,
    rows: [
      { row: 'flat_throws', index: 0, reach: 'pass', lot: 0.25, words: 'throw to the flat' },
      { row: 'seams', index: 1, reach: 'pass', lot: 0.2, words: 'throw down the deep middle' },
    ],
  },
  {
    id: 'crossers',
    column: 'concept',
    typical: [0.12, 0.88],
    codes: crosserCodes,
    rows: [{ row: 'crossers', index: 0, reach: 'pass', lot: 0.2, words: 'run crossers' }],
  },
  {
    id: 'scrambles',
    column: 'result',
    typical: [0.1, 0.9],
    codes: scrambleCodes,
    rows: [{ row: 'quarterback_run', index: 0, reach: 'held', lot: 0.3, words: 'scramble when they hold the ball' }],
  },
];

/** Where a row of the sheet is told: index of its part, and of its class within the part. */
export function lookRow(row: SheetRow): { readonly part: number; readonly index: number } {
  const part = LOOK_PARTS.findIndex(({ rows }) => rows.some((entry) => entry.row === row));
  const index = LOOK_PARTS[part]?.rows.find((entry) => entry.row === row)?.index ?? 0;
  return { part, index };
}

function personnelCodes(chart: Film, digit: 0 | 1): Uint8Array {
  return codesOf(chart, (index) => {
    const count = Number(textAt(chart, 'personnel', index)?.[digit]);
    if (Number.isNaN(count)) return NOT_KNOWN;
    return count >= 2 ? 0 : 1;
  });
}

function throwCodes(chart: Film): Uint8Array {
  const classes: Readonly<Record<string, number>> = { flat: 0, deep_middle: 1 };
  const codes = codesOf(chart, (index) => {
    const zone = textAt(chart, 'target_zone', index);
    return zone === undefined ? NOT_KNOWN : (classes[zone] ?? 2);
  });
  return exceptOnRuns(chart, codes);
}

const CROSSER = /mesh|cross|drag|shallow|drive|under/i;

/** The concept column holds the staff's own names, so a crosser on a pass is told only by a name that says so. */
function crosserCodes(chart: Film): Uint8Array {
  const passed = runOrPassCodes(chart);
  const named = namedWords(chart, 'concept', CROSSER);
  return codesOf(chart, (index) => {
    const told = passed[index] === 1 ? named(index) : undefined;
    if (told === undefined) return NOT_KNOWN;
    return told ? 0 : 1;
  });
}

/** Scrambles among the passes on which the ball was held, or may have been where nobody timed them. */
function scrambleCodes(chart: Film, cuts: SituationCuts): Uint8Array {
  const answers = answerCodes(chart, cuts);
  const passed = runOrPassCodes(chart);
  return codesOf(chart, (index) => {
    const answer = ANSWERS[answers[index] ?? NOT_KNOWN];
    const held = answer === undefined ? passed[index] === 1 : HELD.includes(answer);
    const result = textAt(chart, 'result', index);
    if (!held || result === undefined) return NOT_KNOWN;
    return result === 'scramble' || textAt(chart, 'play_kind', index) === 'scramble' ? 0 : 1;
  });
}

function codesOf(chart: Film, codeAt: (index: number) => number): Uint8Array {
  return Uint8Array.from({ length: chart.size }, (_, index) => codeAt(index));
}
