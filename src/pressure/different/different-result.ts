import type { Share } from '../../stats/share.ts';
import type { SeenValue } from '../forecast/tell-feature.ts';
import type { OffenseShare } from '../others/against-others.ts';
import type { GameCount } from '../others/cross-count.ts';
import type { Sure } from '../others/sure.ts';

/** What a line is about. */
export const DIFFERENT_TOPICS = [
  'answers',
  'run_by_situation',
  'run_by_zone',
  'pressured',
  'formations',
  'personnel',
  'motion',
  'tempo',
  'checks',
  'options',
  'protection',
  'back',
  'slides',
  'release',
  'targets',
  'tells',
] as const;
/** One word of {@link DIFFERENT_TOPICS}. */
export type DifferentTopic = (typeof DIFFERENT_TOPICS)[number];

/** Which snaps a line is about: those with one value of one thing; null for all on which it was charted. */
export type DifferentWhere =
  | { readonly by: 'situation' | 'field_zone' | 'rushers' | 'coverage'; readonly value: string }
  | { readonly by: 'seen'; readonly seen: readonly SeenValue[] };

/** One thing that makes them different. */
export interface DifferentLine {
  readonly topic: DifferentTopic;
  /** The question: a forecast target, a column, or a question of the pressured chapter. */
  readonly question: string;
  /** The class that came more or less often than usual. */
  readonly name: string;
  readonly where: DifferentWhere | null;
  readonly film: Share;
  readonly games: readonly GameCount[];
  /** Usual share: the mean of the archive's offenses; for a tell what the forecast expects. */
  readonly usual: number;
  readonly direction: 'more' | 'less';
  /** One tick an offense of the archive, lowest share first; empty for a tell. */
  readonly offenses: readonly OffenseShare[];
  /** Offenses of the archive with a lower share. */
  readonly below: number;
  /** Snaps a game by which they differ from the usual. */
  readonly snapsAGame: number;
  /** Chance that one more offense like the archive's shows a share this far out; null for a tell. */
  readonly rarity: number | null;
  /** Chance of a share at least this far from the usual if theirs were the usual one; for a tell that of its test. */
  readonly p: number;
  /** After correcting over everything examined; a tell over the whole search for tells. */
  readonly adjusted: number;
  readonly sure: Exclude<Sure, 'none'>;
  /** Indices into the opponent chart of the snaps in the denominator. */
  readonly snaps: readonly number[];
}

/** What makes them different, in at most eight lines: surest first, among equals the most unusual. */
export interface DifferentChapter {
  /** `no_archive`: there are no other offenses to be different from, and only tells can be named. */
  readonly against: 'archive' | 'no_archive';
  /** Offenses of the archive. */
  readonly offenses: number;
  /** Comparisons examined beside the search for tells. */
  readonly looked: number;
  readonly lines: readonly DifferentLine[];
}
