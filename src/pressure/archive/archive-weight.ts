import { type Film, numberAt, rowsOf } from '../../game/film.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { mean } from '../../stats/mean.ts';
import type { ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { TARGET_DEFINITIONS, type TargetDefinition } from '../forecast/target.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { offenseGames } from '../snap/offense-game.ts';
import { countStyle, type StyleCounts, styleCodes, styleDistance, withoutStyle } from './style-distance.ts';

/** One offense of the archive, and how far its style is from this week's opponent. */
export interface ArchiveOffense {
  readonly offense: string;
  readonly games: number;
  readonly snaps: number;
  /** 0 is the same mix of answers, looks and motion, 1 nothing in common; null when too little was charted. */
  readonly style: number | null;
  /** Yards a snap, a rough sign of level; null when no gain was charted. */
  readonly yards: number | null;
}

/** What the archive is used for: every target it was charted for, as the films themselves teach. */
export interface ArchiveUse {
  readonly target: Target;
  /** Offense-games of the archive on which the target was charted at all. */
  readonly games: number;
  /** How much of the forecast over all snaps is the opponent's own film, 0 to 1; null where nobody charted it. */
  readonly ownShare: number | null;
}

/** The base rates: which offenses they come from, how alike those are, and where they help. */
export interface ArchiveWeight {
  readonly offenses: readonly ArchiveOffense[];
  readonly offenseGames: number;
  readonly snaps: number;
  /** How far the opponent's own games are from each other in style: the yardstick; null under two games. */
  readonly ownGames: number | null;
  /** Yards a snap of the opponent; null when no gain was charted. */
  readonly ownYards: number | null;
  readonly uses: readonly ArchiveUse[];
  /** Every offense is taken as of the week's own level: sheets carry none. */
  readonly level: WeekSettings['level'];
}

/** Which offenses are on film, and what the forecast made of it. */
export interface ArchiveInput {
  readonly chart: Film;
  readonly archive: Film | null;
  readonly settings: WeekSettings;
  readonly forecast: Pick<ForecastChapter, 'forecasts'>;
}

/** What an archive offers against this opponent. The sheets carry no level of play: all are taken as the week's own. */
export function archiveWeight({ chart, archive, settings, forecast }: ArchiveInput): ArchiveWeight {
  const games = archive ? offenseGames(archive) : [];
  const own = ownStyle(chart, settings);
  return {
    offenses: archive ? archiveOffenses(archive, { games, own: own.counts, settings }) : [],
    offenseGames: games.length,
    snaps: archive?.size ?? 0,
    ownGames: betweenOwnGames(own),
    ownYards: yardsOf(chart, own.rows),
    uses: TARGET_DEFINITIONS.map((definition) => useOf(archive, { definition, games, settings, forecast })),
    level: settings.level,
  };
}

/** The opponent's style, and that of each of their games. */
interface OwnStyle {
  readonly rows: readonly number[];
  readonly counts: StyleCounts;
  readonly byGame: readonly StyleCounts[];
}

function ownStyle(chart: Film, settings: WeekSettings): OwnStyle {
  const codes = styleCodes(chart, settings.situations);
  const rows = rowsOf(chart);
  const byGame = offenseGames(chart).map((game) => countStyle(codes, game.rows));
  return { rows, counts: countStyle(codes, rows), byGame };
}

interface OffensesRequest {
  readonly games: ReturnType<typeof offenseGames>;
  readonly own: StyleCounts;
  readonly settings: WeekSettings;
}

/** Every offense of the archive beside the opponent. */
function archiveOffenses(archive: Film, { games, own, settings }: OffensesRequest): ArchiveOffense[] {
  const codes = styleCodes(archive, settings.situations);
  const names = [...new Set(games.map(({ offense }) => offense))];
  const offenses = names.map((offense): ArchiveOffense => {
    const theirs = games.filter((game) => game.offense === offense);
    const rows = theirs.flatMap((game) => game.rows);
    const style = styleDistance(own, countStyle(codes, rows));
    return { offense, games: theirs.length, snaps: rows.length, style, yards: yardsOf(archive, rows) };
  });
  return offenses.sort(nearestFirst);
}

function nearestFirst(a: ArchiveOffense, b: ArchiveOffense): number {
  return (a.style ?? 2) - (b.style ?? 2) || b.snaps - a.snaps;
}

/** Mean distance of each of the opponent's games from the rest of them. */
function betweenOwnGames({ counts, byGame }: OwnStyle): number | null {
  if (byGame.length < 2) return null;
  const distances = byGame.flatMap((game) => styleDistance(withoutStyle(counts, game), game) ?? []);
  return distances.length === 0 ? null : distances.reduce((sum, d) => sum + d, 0) / distances.length;
}

/** Mean gain over the snaps on which it was charted. */
function yardsOf(film: Film, rows: readonly number[]): number | null {
  const gains: number[] = [];
  for (const row of rows) {
    const gain = numberAt(film, 'gain', row);
    if (gain !== undefined) gains.push(gain);
  }
  return gains.length === 0 ? null : mean(gains);
}

interface UseRequest extends Pick<ArchiveInput, 'settings' | 'forecast'> {
  readonly definition: TargetDefinition;
  readonly games: ReturnType<typeof offenseGames>;
}

function useOf(archive: Film | null, { definition, games, settings, forecast }: UseRequest): ArchiveUse {
  const { target } = definition;
  const codes = archive ? definition.codes(archive, settings.situations) : new Uint8Array();
  const charted = games.filter(({ rows }) => rows.some((row) => codes[row] !== NOT_KNOWN)).length;
  const all = forecast.forecasts.find((one) => one.target === target && one.situation === 'all');
  const silent = all === undefined || (all.ownSnaps === 0 && charted === 0);
  return { target, games: charted, ownShare: silent ? null : all.ownShare };
}
