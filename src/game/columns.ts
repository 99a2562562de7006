import { FAMILIES } from './families.ts';
import {
  BACK_ACTIONS,
  BACK_SPOTS,
  COVERAGES_FACED,
  HASHES,
  MOTIONS,
  OPTION_TAGS,
  PLAY_KINDS,
  QUARTERBACK_DEPTHS,
  RESULTS,
  ROTATIONS,
  SLIDES,
  STRENGTHS,
  TARGET_ZONES,
  TEMPOS,
  YES_NO,
} from './vocabulary.ts';

/**
 * What a column holds. `word`: one of `words`. `text`: free text. `code`: text of a fixed shape (personnel,
 * receivers), kept as text. `number`: a number in `unit` between `least` and `most`. `clock` (mm:ss, kept as seconds
 * left in the quarter) and `field` (ball position, kept as yards to the opponent's goal line) are written in their own
 * way and stored as numbers.
 */
export type CellForm =
  | { readonly form: 'word'; readonly words: readonly string[] }
  | { readonly form: 'text' }
  | { readonly form: 'code'; readonly shape: 'personnel' | 'receivers' }
  | {
      readonly form: 'number';
      readonly unit: string;
      readonly least: number;
      readonly most: number;
      readonly decimals: 0 | 2;
    }
  | { readonly form: 'clock' }
  | { readonly form: 'field' };

/** One column of a charted sheet: its header, what it means, what it may hold, and how the chart stores it. */
export interface ColumnDefinition {
  readonly name: string;
  readonly kind: 'code' | 'number';
  readonly cell: CellForm;
  readonly meaning: string;
  readonly example: string;
}

const word = (words: readonly string[]) => ({ kind: 'code', cell: { form: 'word', words } }) as const;
const text = { kind: 'code', cell: { form: 'text' } } as const;
const whole = (unit: string, least: number, most: number) =>
  ({ kind: 'number', cell: { form: 'number', unit, least, most, decimals: 0 } }) as const;
const seconds = {
  kind: 'number',
  cell: { form: 'number', unit: 'seconds', least: 0.3, most: 15, decimals: 2 },
} as const;

/** Every column a sheet may carry, in the order of the template; the one place where columns are defined. */
export const FILM_COLUMNS = [
  { name: 'offense', ...text, meaning: 'the offense that ran the snap', example: 'Harrow Creek' },
  { name: 'defense', ...text, meaning: 'the defense that faced it', example: 'Oakhollow' },
  { name: 'game', ...text, meaning: 'a name for the game, the same on all its snaps', example: 'week 5 Harrow Creek' },
  { name: 'week', ...whole('week', 0, 60), meaning: 'week of the season', example: '5' },
  { name: 'snap', ...whole('snap', 1, 9999), meaning: 'number of the snap within the game', example: '17' },
  { name: 'drive', ...whole('drive', 1, 60), meaning: 'number of the series within the game', example: '3' },
  { name: 'quarter', ...whole('quarter', 1, 9), meaning: 'quarter; 5 and up are overtime', example: '2' },
  { name: 'clock', kind: 'number', cell: { form: 'clock' }, meaning: 'time left in the quarter', example: '7:42' },
  {
    name: 'score_margin',
    ...whole('points', -120, 120),
    meaning: "the offense's score less the defense's",
    example: '-7',
  },
  { name: 'down', ...whole('down', 1, 4), meaning: 'number of the down', example: '3' },
  { name: 'to_go', ...whole('yards', 1, 99), meaning: 'yards to the first down or the goal line', example: '8' },
  {
    name: 'ball_on',
    kind: 'number',
    cell: { form: 'field' },
    meaning: 'where the ball lies, from the offense',
    example: 'own 35',
  },
  {
    name: 'hash',
    ...word(HASHES),
    meaning: 'where the ball lies across the field, from behind the offense',
    example: 'left',
  },
  {
    name: 'personnel',
    kind: 'code',
    cell: { form: 'code', shape: 'personnel' },
    meaning: 'backs, then tight ends',
    example: '11',
  },
  { name: 'formation', ...text, meaning: "the staff's own name for the formation", example: 'trey open' },
  {
    name: 'receivers',
    kind: 'code',
    cell: { form: 'code', shape: 'receivers' },
    meaning: 'receivers to the strength x away from it',
    example: '3x1',
  },
  {
    name: 'strength',
    ...word(STRENGTHS),
    meaning: 'side of the passing strength, from behind the offense',
    example: 'right',
  },
  { name: 'back_spot', ...word(BACK_SPOTS), meaning: 'where the back stands before the snap', example: 'weak' },
  {
    name: 'quarterback_depth',
    ...word(QUARTERBACK_DEPTHS),
    meaning: 'where the quarterback takes the snap',
    example: 'shotgun',
  },
  { name: 'motion', ...word(MOTIONS), meaning: 'movement before the snap', example: 'across' },
  { name: 'tempo', ...word(TEMPOS), meaning: 'how the offense came to the line', example: 'no_huddle' },
  { name: 'checked', ...word(YES_NO), meaning: 'the play was changed at the line', example: 'no' },
  { name: 'play_kind', ...word(PLAY_KINDS), meaning: 'what they did with the ball', example: 'quick' },
  { name: 'option_tag', ...word(OPTION_TAGS), meaning: 'an option on the play', example: 'none' },
  { name: 'concept', ...text, meaning: "the staff's own name for the play", example: 'stick' },
  { name: 'protectors', ...whole('players', 4, 10), meaning: 'players who stayed in to protect', example: '6' },
  { name: 'slide', ...word(SLIDES), meaning: "the line's slide, from behind the offense", example: 'left' },
  { name: 'back_action', ...word(BACK_ACTIONS), meaning: "the back's job on a pass", example: 'blocks' },
  { name: 'backs_released', ...whole('players', 0, 3), meaning: 'backs who went out for a pass', example: '1' },
  { name: 'rushers_faced', ...whole('players', 0, 11), meaning: 'rushers the charted defense sent', example: '5' },
  {
    name: 'coverage_faced',
    ...word(COVERAGES_FACED),
    meaning: 'coverage the charted defense played',
    example: 'three_deep',
  },
  { name: 'time_to_throw', ...seconds, meaning: 'snap to release; blank on sacks and scrambles', example: '2.4' },
  { name: 'target_zone', ...word(TARGET_ZONES), meaning: 'where the ball was thrown', example: 'flat' },
  {
    name: 'target_depth',
    ...whole('yards', -20, 80),
    meaning: 'yards past the line the ball was thrown',
    example: '6',
  },
  { name: 'gain', ...whole('yards', -99, 99), meaning: 'yards gained or lost', example: '5' },
  { name: 'result', ...word(RESULTS), meaning: 'how the snap ended', example: 'complete' },
  { name: 'call', ...text, meaning: 'our call, by its name in defense.yaml (our own snaps only)', example: 'Anchor' },
  { name: 'path', ...text, meaning: 'our path, by its name in defense.yaml (our own snaps only)', example: 'cross' },
  { name: 'family', ...word(FAMILIES), meaning: 'kind of pressure we sent (our own snaps only)', example: 'hot' },
  {
    name: 'coverage',
    ...text,
    meaning: 'the coverage we played behind it (our own snaps only)',
    example: 'three deep',
  },
  {
    name: 'rotation',
    ...word(ROTATIONS),
    meaning: 'which way our shell turned (our own snaps only)',
    example: 'to_rush',
  },
  {
    name: 'shown_early',
    ...word(YES_NO),
    meaning: 'we showed the look before the snap (our own snaps only)',
    example: 'no',
  },
  { name: 'note', ...text, meaning: 'anything else; never used in numbers', example: 'wet ball' },
] as const satisfies readonly ColumnDefinition[];

/** The header of a column. */
export type ColumnName = (typeof FILM_COLUMNS)[number]['name'];

/** Columns of our own film; the rest belong to a scouted offense, and the plain ones to both. */
export const OWN_FILM_COLUMNS = [
  'game',
  'week',
  'snap',
  'drive',
  'quarter',
  'score_margin',
  'down',
  'to_go',
  'ball_on',
  'hash',
  'personnel',
  'formation',
  'receivers',
  'strength',
  'back_spot',
  'call',
  'path',
  'family',
  'coverage',
  'rotation',
  'shown_early',
  'checked',
  'play_kind',
  'back_action',
  'gain',
  'result',
] as const satisfies readonly ColumnName[];
