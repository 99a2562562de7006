import { writeClock, writeFieldPosition } from '../game/written-numbers.ts';
import { GOAL_TO_GO, isGoalToGo } from './goal-to-go.ts';
import { withPlainMinus } from './plain-minus.ts';
import { plainWord } from './read-cell.ts';
import { readFieldPosition } from './read-field-position.ts';
import { readFigure } from './read-figure.ts';
import { type PairDates, readPair } from './read-pair.ts';
import { withSide } from './yard-line-side.ts';

/** The ways a profile may turn a foreign cell into ours, by the name a coach writes after `as:`. */
export const TRANSFORMS = [
  'yards_to_goal',
  'yards_from_own_goal',
  'minus_is_own',
  'bare_is_opp',
  'bare_is_own',
  'figure',
  'zero_one',
  'plus',
  'minus',
  'seconds',
  'first_of_pair',
  'second_of_pair',
] as const;

/** One word of {@link TRANSFORMS}. */
export type Transform = (typeof TRANSFORMS)[number];

/** What the transforms mean, for the template and the messages. */
export const TRANSFORM_MEANINGS: Readonly<Record<Transform, string>> = {
  yards_to_goal: "a number 1 to 99, yards to the opponent's goal line",
  yards_from_own_goal: "a number 1 to 99, yards from the offense's own goal line",
  minus_is_own: 'a yard line with a minus on the own side (-35) and none or a plus on the other (20)',
  bare_is_opp: "a yard line marked on the own side (own 35, -35); a bare number lies on the opponent's",
  bare_is_own: "a yard line marked on the opponent's side (opp 20, +20); a bare number lies on the own",
  figure: 'a number with words or in brackets: +5, (3) or loss of 3 for -3, 5 yds, 3rd, Q2, 11 personnel',
  zero_one: '1 is yes, 0 is no',
  plus: "a difference from the offense's side",
  minus: "a difference from the defense's side; the sign is turned",
  seconds: 'a number of seconds',
  first_of_pair:
    'the first of two numbers in one cell (3-10, 3 & 10, 3rd and 10), also when a spreadsheet made a date of it',
  second_of_pair: 'the second of two such numbers',
};

/** How a profile reads one of the sheet's columns. Keys of `words` are {@link plainWord}s. */
export interface CellTranslation {
  readonly notCharted: ReadonlySet<string>;
  readonly words: ReadonlyMap<string, string>;
  readonly as?: Transform | undefined;
  /** How a spreadsheet's dates stand for two numbers. */
  readonly dates?: PairDates | undefined;
  /** What names a side of the field in a yard line such as `PLW 35`; keys are {@link plainWord}s. */
  readonly sides?: ReadonlyMap<string, 'own' | 'opp'> | undefined;
  readonly otherWordsAreBlank: 'blank' | 'kept';
}

/** The cell as our own sheet would have it, or the rule it breaks. */
export type TranslatedCell =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'fault'; readonly rule: string };

/** A foreign cell in our own writing: first "not charted", then the profile's words, then its transform. */
export function translateCell(translation: CellTranslation, written: string): TranslatedCell {
  const word = plainWord(written);
  if (word === '' || translation.notCharted.has(word)) return { kind: 'text', text: '' };
  const meant = translation.words.get(word);
  if (meant !== undefined) return { kind: 'text', text: meant };
  if (translation.sides !== undefined)
    return { kind: 'text', text: withSide(translation.sides, written, translation.dates) };
  if (translation.as !== undefined) return transform(translation.as, written.trim(), translation.dates);
  return { kind: 'text', text: translation.otherWordsAreBlank === 'blank' ? '' : written };
}

function transform(as: Transform, written: string, dates: PairDates | undefined): TranslatedCell {
  const text = transformed(as, written, dates);
  if (text !== undefined) return { kind: 'text', text };
  return { kind: 'fault', rule: `cannot be read as ${as}: ${TRANSFORM_MEANINGS[as]}` };
}

function transformed(as: Transform, written: string, dates: PairDates | undefined): string | undefined {
  switch (as) {
    case 'zero_one':
      return { '1': 'yes', '0': 'no' }[written];
    case 'first_of_pair':
      return readPair(written, dates)?.first;
    case 'second_of_pair':
      return readPair(written, dates)?.second;
    case 'bare_is_opp':
      return yardLine(halfMarked(written, 'own'));
    case 'bare_is_own':
      return yardLine(halfMarked(written, 'opp'));
    case 'figure':
      return isGoalToGo(written) ? GOAL_TO_GO : figureText(readFigure(written));
    default:
      return fromNumber(as, /\d/.test(written) ? Number(withPlainMinus(written)) : Number.NaN);
  }
}

/**
 * Yards to the opponent's goal line of a yard line on which only one side is marked, by a sign or a word; a bare number
 * lies on the other. NaN when it is no yard line.
 */
export function halfMarked(written: string, marked: 'own' | 'opp'): number {
  const bare = /^\d{1,2}$/.test(written) ? Number(written) : undefined;
  if (bare !== undefined) return bare < 1 || bare > 50 ? Number.NaN : marked === 'own' ? bare : 100 - bare;
  const reading = readFieldPosition(written);
  return reading.kind === 'value' ? Number(reading.value) : Number.NaN;
}

function figureText(value: number): string | undefined {
  return Number.isNaN(value) ? undefined : String(value);
}

type NumberTransform = Extract<
  Transform,
  'yards_to_goal' | 'yards_from_own_goal' | 'minus_is_own' | 'plus' | 'minus' | 'seconds'
>;

function fromNumber(as: NumberTransform, value: number): string | undefined {
  if (Number.isNaN(value)) return undefined;
  switch (as) {
    case 'yards_to_goal':
      return yardLine(value);
    case 'yards_from_own_goal':
      return yardLine(100 - value);
    case 'minus_is_own':
      return Math.abs(value) > 50 || value === 0 ? undefined : yardLine(value < 0 ? 100 + value : value);
    case 'plus':
      return String(value);
    case 'minus':
      return String(0 - value);
    case 'seconds':
      return String(value);
    default:
      return as satisfies never;
  }
}

function yardLine(yards: number): string | undefined {
  return Number.isInteger(yards) && yards >= 1 && yards <= 99 ? writeFieldPosition(yards) : undefined;
}

/** Seconds left in the quarter, written as our clock. */
export function secondsAsClock(text: string): string {
  return /^\d+(?:\.\d+)?$/.test(text) ? writeClock(Number(text)) : text;
}
