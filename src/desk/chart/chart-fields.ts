import type { ColumnName } from '../../game/columns.ts';
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
  SLIDES,
  STRENGTHS,
  TARGET_ZONES,
  TEMPOS,
  YES_NO,
} from '../../game/vocabulary.ts';
import type { SheetKind } from '../../ingest/sheet-kind.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';
import { type Choice, keyedChoices } from './keyed-choices.ts';
import { isEndAsked, isGainAsked, isPass } from './play-facts.ts';

/** How much is charted, from the least to everything. */
export const DEPTHS = ['quick', 'plan', 'full'] as const;
/** One of {@link DEPTHS}. */
export type Depth = (typeof DEPTHS)[number];

/** How a cell is typed: one key, a number, a ball position, a name of the staff's own, or the space bar held down. */
export type Entry =
  | { readonly kind: 'choice'; readonly choices: readonly Choice[] }
  /** Its choices are keys that take the number and say how the play ended. */
  | { readonly kind: 'number'; readonly signed: boolean; readonly choices: readonly Choice[] }
  | { readonly kind: 'ball' }
  | { readonly kind: 'name'; readonly first: readonly string[] }
  | { readonly kind: 'time' };

/** One stop of the strip. */
export interface ChartField {
  readonly column: ColumnName;
  readonly label: string;
  readonly entry: Entry;
  readonly depth: Depth;
  /** 1: situation, look and play; 2: protection and release, once more over the game. */
  readonly pass: 1 | 2;
  /** The snap has something to say here. */
  readonly applies: (snap: SnapCells) => boolean;
}

const always = () => true;
type More = Partial<Pick<ChartField, 'depth' | 'pass' | 'applies'>>;
const field = (column: ColumnName, label: string, ...[entry, more = {}]: [entry: Entry, more?: More]): ChartField => ({
  ...{ column, label, entry, depth: 'plan', pass: 1, applies: always },
  ...more,
});
const choice = (words: readonly string[], keys?: string): Entry => ({
  kind: 'choice',
  choices: keyedChoices(words, keys),
});
const digits = (from: number, to: number): Entry =>
  choice(Array.from({ length: to - from + 1 }, (_, i) => String(from + i)));
const full = { depth: 'full' } as const;
const quick = { depth: 'quick' } as const;
const onPass = { pass: 2, applies: isPass } as const;
const onPassFull = { ...onPass, ...full } as const;
const names = (...first: string[]): Entry => ({ kind: 'name', first });

/** Down, distance and ball follow from the snap before; they are stopped at where they do not. */
const SITUATION: readonly ChartField[] = [
  field('down', 'Down', digits(1, 4), quick),
  field('to_go', 'Yards to go', { kind: 'number', signed: false, choices: [] }, quick),
  field('ball_on', 'Ball on', { kind: 'ball' }, quick),
];

const LOOK: readonly ChartField[] = [
  field('hash', 'Hash, from behind the offense', choice(HASHES)),
  field(
    'personnel',
    'Personnel: backs, then tight ends',
    names('11', '12', '10', '21', '20', '22', '13', '00', '01'),
    full,
  ),
  field('formation', 'Formation, in your own word', names(), full),
  field(
    'receivers',
    'Receivers: to the strength x away',
    names('2x2', '3x1', '2x1', '3x2', '4x1', '1x1', '1x2', '2x0'),
  ),
  field('strength', 'Strength', choice(STRENGTHS), full),
  field('back_spot', 'Where the back stands', choice(BACK_SPOTS, 'nbswo')),
  field('quarterback_depth', 'Quarterback lines up', choice(QUARTERBACK_DEPTHS, 'ups'), full),
  field('motion', 'Motion', choice(MOTIONS, 'ntsafb'), full),
  field('tempo', 'Tempo', choice(TEMPOS, 'hnfz'), full),
  field('checked', 'Checked at the line', choice(YES_NO), full),
];

const PLAY: readonly ChartField[] = [
  field('play_kind', 'Play', choice(PLAY_KINDS, 'rkpsqdlmax'), quick),
  field('option_tag', 'Option', choice(OPTION_TAGS, 'nrpt'), full),
  field('concept', 'Concept, in your own word', names(), full),
  field('result', 'How it ended', choice(RESULTS, 'rcikstxfp'), { ...quick, applies: isEndAsked }),
  field(
    'gain',
    'Gain',
    { kind: 'number', signed: true, choices: keyedChoices(['fumble_lost', 'penalty'], 'fp') },
    { ...quick, applies: isGainAsked },
  ),
];

const PROTECTION: readonly ChartField[] = [
  field('protectors', 'How many protect', choice(['4', '5', '6', '7', '8', '9', '10'], '4567890'), onPass),
  field('slide', 'Line slides', choice(SLIDES, 'lrfgm'), onPass),
  field('back_action', "The back's job", choice(BACK_ACTIONS, 'bcwin'), {
    ...onPass,
    applies: (snap) => isPass(snap) && snap.back_spot !== 'none',
  }),
  field('backs_released', 'Backs out for a pass', digits(0, 3), onPassFull),
  field('rushers_faced', 'Rushers sent at them', digits(0, 9), onPass),
  field('coverage_faced', 'Coverage they faced', choice(COVERAGES_FACED, '324150o'), onPassFull),
  field(
    'time_to_throw',
    'Snap to throw',
    { kind: 'time' },
    {
      ...onPass,
      applies: (snap) => isPass(snap) && snap.result !== 'sack' && snap.result !== 'scramble',
    },
  ),
  field('target_zone', 'Thrown to', choice(TARGET_ZONES, 'bfmode'), onPassFull),
  field('target_depth', 'Yards past the line', { kind: 'number', signed: true, choices: [] }, onPassFull),
];

const CALL = field('call', 'Our call', names(), quick);

/** Every stop of the strip for a sheet, in the order of the film. */
export function fieldsOf(kind: SheetKind): readonly ChartField[] {
  if (kind === 'opponent') return [...SITUATION, ...LOOK, ...PLAY, ...PROTECTION];
  if (kind === 'live')
    return [...SITUATION, CALL, ...LOOK, ...PLAY, ...PROTECTION.filter(({ column }) => LIVE.has(column))];
  return [...SITUATION, CALL, ...PLAY.filter(({ column }) => OWN.has(column))];
}

/** What one person charts between two snaps, and what a sheet of our calls holds. */
const LIVE: ReadonlySet<string> = new Set(['protectors', 'back_action', 'time_to_throw']);
const OWN: ReadonlySet<string> = new Set(['play_kind', 'result', 'gain']);
