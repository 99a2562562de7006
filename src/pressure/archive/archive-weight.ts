import { type Chart, filterSnaps, selectSnaps, textAt } from '../../ingest/chart.ts';
import type { WeekSettings } from '../../ingest/week-settings.ts';
import type { Target } from '../forecast/forecast-result.ts';
import { offenseGames } from '../snap/offense-game.ts';
import { styleDistance } from './style-distance.ts';

/** One offense of the archive, and how far its style is from this week's opponent. */
export interface ArchiveOffense {
  readonly offense: string;
  readonly games: number;
  readonly snaps: number;
  /** 0 is the same mix of answers, looks and motion, 1 nothing in common; null when too little was charted. */
  readonly style: number | null;
}

/** Whether the archive is large enough to help with a target. */
export interface ArchiveUse {
  readonly target: Target;
  /** Offense-games from which an archive helped on open play data; null where that was not measured. */
  readonly helpsFrom: number | null;
  /** Offense-games of the archive on which the target was charted at all. */
  readonly games: number;
  readonly verdict: 'helps' | 'held down' | 'not measured' | 'nothing charted';
}

/** The base rates: whose they are, how alike, and where they help. */
export interface ArchiveWeight {
  readonly offenses: readonly ArchiveOffense[];
  readonly offenseGames: number;
  readonly snaps: number;
  /** How far the opponent's own games are from each other in style: the yardstick; null under two games. */
  readonly ownGames: number | null;
  readonly uses: readonly ArchiveUse[];
  readonly level: string;
}

/**
 * Offense-games (one offense in one game, about 62 snaps) from which an archive beat the opponent's own film alone. For
 * run or pass and for quick release the smallest archive tried, four, already did; below the figure screens and motion
 * got worse. Other targets were not measured.
 *
 * @see PREDICTION 5, measured on open professional play data (nflverse CC BY 4.0, FTN Data via nflverse CC BY-SA 4.0)
 */
export const HELPS_FROM: Readonly<Partial<Record<Target, number>>> = {
  answer: 4,
  run_or_pass: 4,
  quick_release: 4,
  motion: 16,
  screen: 32,
};

/** What an archive offers against this opponent. The sheets carry no level of play: all are taken as the week's own. */
export function archiveWeight(chart: Chart, archive: Chart | null, settings: WeekSettings): ArchiveWeight {
  const games = archive ? offenseGames(archive) : [];
  const names = [...new Set(games.map(({ offense }) => offense))];
  return {
    offenses: names.map((offense) => offenseOf(chart, archive, { offense, games, settings })).sort(nearestFirst),
    offenseGames: games.length,
    snaps: archive?.size ?? 0,
    ownGames: betweenOwnGames(chart, settings),
    uses: (Object.keys(COLUMN_OF) as Target[]).map((target) => useOf(archive, games, target)),
    level: `sheets carry no level of play; every offense is taken as ${settings.level.replace('_', ' ')}`,
  };
}

interface OffenseRequest {
  readonly offense: string;
  readonly games: ReturnType<typeof offenseGames>;
  readonly settings: WeekSettings;
}

function offenseOf(chart: Chart, archive: Chart | null, { offense, games, settings }: OffenseRequest): ArchiveOffense {
  const own = games.filter((game) => game.offense === offense);
  const rows = own.flatMap((game) => game.rows);
  const style = archive ? styleDistance(chart, selectSnaps(archive, rows), settings.situations) : null;
  return { offense, games: own.length, snaps: rows.length, style };
}

function nearestFirst(a: ArchiveOffense, b: ArchiveOffense): number {
  return (a.style ?? 2) - (b.style ?? 2) || b.snaps - a.snaps;
}

/** Mean distance of each of the opponent's games from the rest of them. */
function betweenOwnGames(chart: Chart, settings: WeekSettings): number | null {
  const games = offenseGames(chart);
  if (games.length < 2) return null;
  const distances = games.flatMap(({ rows }) => {
    const inGame = new Set(rows);
    const rest = filterSnaps(chart, (i) => !inGame.has(i));
    return styleDistance(rest, selectSnaps(chart, rows), settings.situations) ?? [];
  });
  return distances.length === 0 ? null : distances.reduce((sum, d) => sum + d, 0) / distances.length;
}

/** The column without which a target cannot be told. */
const COLUMN_OF = {
  answer: 'play_kind',
  run_or_pass: 'play_kind',
  screen: 'play_kind',
  quick_release: 'time_to_throw',
  motion: 'motion',
  protectors: 'protectors',
  slide_to_back: 'slide',
  slide_to_field: 'slide',
  slide_to_strength: 'slide',
  back_job: 'back_action',
} as const satisfies Record<Target, keyof Chart['columns']>;

function useOf(archive: Chart | null, games: ReturnType<typeof offenseGames>, target: Target): ArchiveUse {
  const column = COLUMN_OF[target];
  const charted = archive ? games.filter(({ rows }) => rows.some((row) => isCharted(archive, column, row))).length : 0;
  const helpsFrom = HELPS_FROM[target] ?? null;
  return { target, helpsFrom, games: charted, verdict: verdictOf(charted, helpsFrom) };
}

function isCharted(chart: Chart, column: keyof Chart['columns'], row: number): boolean {
  const found = chart.columns[column];
  if (found?.kind === 'number') return !Number.isNaN(found.numbers[row]);
  return textAt(chart, column, row) !== undefined;
}

function verdictOf(games: number, helpsFrom: number | null): ArchiveUse['verdict'] {
  if (games === 0) return 'nothing charted';
  if (helpsFrom === null) return 'not measured';
  return games >= helpsFrom ? 'helps' : 'held down';
}
