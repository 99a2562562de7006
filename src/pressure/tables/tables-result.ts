import type { Share } from '../../stats/share.ts';
import type { Compared } from '../others/compared.ts';
import type { GameCount } from '../others/cross-count.ts';
import type { Sure } from '../others/sure.ts';

/** What a table splits their snaps by; `strength_side` is the passing strength set to the field or into the boundary. */
export const TABLE_SPLITS = [
  'formation',
  'personnel',
  'receivers',
  'look',
  'field_zone',
  'hash',
  'strength_side',
] as const;
/** One word of {@link TABLE_SPLITS}. */
export type TableSplit = (typeof TABLE_SPLITS)[number];

/** The field zones of the table. */
export const TABLE_ZONES = ['backed_up', 'open_field', 'red_zone', 'goal_line'] as const;

/** Where the passing strength is set: the wide side, the short side, or with the ball in the middle. */
export const STRENGTH_SIDES = ['to_field', 'to_boundary', 'ball_in_middle'] as const;

/** How often something came, by name. */
export interface NamedCount {
  readonly name: string;
  readonly count: number;
}

/** The most frequent of several things, and how many snaps have it charted. */
export interface TopCounts {
  /** Most frequent first, at most six. */
  readonly top: readonly NamedCount[];
  /** Snaps on which it was charted: the denominator of every count. */
  readonly trials: number;
}

/** Their snaps with one formation, personnel, zone ... */
export interface TableRow {
  /** Word or id of the value: a formation's name, `11`, `red_zone`, `left`, `to_field`. */
  readonly value: string;
  /** Of their snaps on which the split was charted. */
  readonly used: Compared;
  /** Runs among its snaps on which run or pass was charted. */
  readonly runs: Compared;
  /** Answers by count; empty in films that do not tell their passes apart. */
  readonly answers: TopCounts;
  /** The staff's names of plays by count. */
  readonly concepts: TopCounts;
  /** Indices into the opponent chart. */
  readonly snaps: readonly number[];
}

/** One table; values by falling number of snaps, zones and sides in their own order. */
export interface OpponentTable {
  readonly by: TableSplit;
  /** Snaps on which the split was charted, of all. */
  readonly charted: number;
  readonly snaps: number;
  readonly rows: readonly TableRow[];
}

/** What came before a snap: how their last play of the series ended, how many rushed on it, or the down. */
export const AFTER_KINDS = ['last_play', 'last_rush', 'down'] as const;
/** One word of {@link AFTER_KINDS}. */
export type AfterKind = (typeof AFTER_KINDS)[number];

/** How often they look over or change the play after one thing. */
export interface AfterRow {
  readonly question: 'looks_over' | 'checks';
  readonly after: AfterKind;
  /** `first_of_series`, `loss`, `stop`, `gain`, `explosive`; `four_or_fewer`, `five_or_more`; `1` to `4`. */
  readonly value: string;
  readonly film: Share;
  /** Their own share over all snaps. */
  readonly overall: number;
  readonly games: readonly GameCount[];
  /** Chance of a count at least this far from `overall`, both sides, snaps clustered by game. */
  readonly p: number;
  /** After correcting over every row of the two questions. */
  readonly adjusted: number;
  readonly sure: Sure;
}

/** How they come to the line, look over and change the play. */
export interface TempoAndChecks {
  /** Each tempo of the snaps on which it was charted. */
  readonly tempos: readonly (Compared & { readonly tempo: string })[];
  /** Looks to the sideline before the play (tempo `freeze`), of snaps with a tempo; null where no tempo was charted. */
  readonly looksOver: Compared | null;
  /** Plays changed at the line, of snaps on which that was charted; null where it never was. */
  readonly checks: Compared | null;
  /** Plays changed after they looked over, and otherwise. */
  readonly checksAfterLook: Share;
  readonly checksOtherwise: Share;
  readonly after: readonly AfterRow[];
}

/** The questions a staff asks first, as tables. */
export interface OpponentTables {
  readonly tables: readonly OpponentTable[];
  readonly tempo: TempoAndChecks;
  /** Comparisons with the archive the correction was made over. */
  readonly looked: number;
}
