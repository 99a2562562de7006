import type { CallLibrary } from '../../game/call-library.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import type { ArchiveWeight } from '../archive/archive-weight.ts';
import type { DifferentChapter } from '../different/different-result.ts';
import type { FitChapter } from '../fit/fit-result.ts';
import type { ForecastChapter } from '../forecast/forecast-result.ts';
import type { MenuResult } from '../menu/result.ts';
import type { PressuredChapter } from '../pressured/pressured-result.ts';
import type { ProtectionChapter } from '../protection/protection-result.ts';
import type { ScoreChapter } from '../score/score-result.ts';
import type { OwnFilmChapter } from '../self-scout/result.ts';
import type { OpponentTables } from '../tables/tables-result.ts';
import type { ZoneCalls } from '../zone/zone-result.ts';

/** How much of a column was charted on the opponent's film. */
export interface ColumnCharted {
  readonly column: string;
  readonly charted: number;
  /** Snaps on which it could have been charted: all of them, or the passes. */
  readonly snaps: number;
  readonly of: 'snaps' | 'passes';
}

/** Parts of a season folder a plan can do without. */
export const SEASON_PARTS = ['weekFile', 'library', 'ownFilm', 'archive'] as const;
/** One word of {@link SEASON_PARTS}. */
export type SeasonPart = (typeof SEASON_PARTS)[number];

/** What the numbers were made from. */
export interface FilmChapter {
  readonly snaps: number;
  /** By name; null for the snaps that name no game. */
  readonly games: readonly { readonly game: string | null; readonly snaps: number }[];
  readonly sources: readonly string[];
  readonly columns: readonly ColumnCharted[];
  readonly faults: number;
  readonly warnings: number;
  readonly problems: readonly string[];
  /** Parts of the season folder that were not there. */
  readonly absent: readonly SeasonPart[];
  /** True when every snap is invented demonstration data. */
  readonly invented: boolean;
}

/** Everything one week's report says; the page, report.json and the sheets are made from this and nothing else. */
export interface WeekPlan {
  readonly schema: 'pressure-plan.week/4';
  readonly version: string;
  readonly opponent: string;
  readonly us: string;
  /** YYYY-MM-DD, handed in by the shell. */
  readonly date: string;
  readonly seed: number;
  readonly settings: WeekSettings;
  readonly library: CallLibrary | null;
  readonly film: FilmChapter;
  readonly forecast: ForecastChapter;
  /** What they do when pressured, by rushers and coverage faced. */
  readonly pressured: PressuredChapter;
  /** By formation, personnel, field zone, hash and side of the strength. */
  readonly tables: OpponentTables;
  /** What makes them different from the archive's offenses, in at most eight lines. */
  readonly different: DifferentChapter;
  /** Which offenses the base rates come from, how alike they are, and what each question counts them for. */
  readonly archive: ArchiveWeight;
  readonly protection: ProtectionChapter;
  readonly scores: ScoreChapter;
  /** When each theory is right against them. */
  readonly fit: FitChapter;
  readonly menu: MenuResult | null;
  /** What to call by field zone. */
  readonly zones: readonly ZoneCalls[];
  readonly ownFilm: OwnFilmChapter | null;
}
