import { countBy } from '../../game/by-word.ts';
import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { chartedCount, type Film, filterSnaps, rowsOf, textAt } from '../../game/film.ts';
import { PASS_COLUMNS, wasRun } from '../../game/run-or-pass.ts';
import { type FilmChapter, SEASON_PARTS, type SeasonPart } from './week-plan.ts';

/** Which parts of the season folder were there, and what reading them found. */
export interface FilmFacts {
  readonly faults: number;
  readonly warnings: number;
  readonly problems: readonly string[];
  readonly invented: boolean;
  readonly has: Readonly<Record<SeasonPart, boolean>>;
}

/** Columns that belong to our own film and are never expected of a scouted offense. */
const OWN_ONLY: readonly string[] = ['call', 'path', 'family', 'coverage', 'rotation', 'shown_early', 'note'];

/** What the numbers were made from: games, charted shares, faults, and what was absent. */
export function filmChapter(chart: Film, facts: FilmFacts): FilmChapter {
  const passes = notRuns(chart);
  const columns = FILM_COLUMNS.filter(({ name }) => !OWN_ONLY.includes(name)).map(({ name }) =>
    PASS_COLUMNS.includes(name) ? chartedOn(passes, name) : { ...chartedOn(chart, name), of: 'snaps' as const },
  );
  const absent = SEASON_PARTS.filter((part) => !facts.has[part]);
  return {
    snaps: chart.size,
    games: gamesOf(chart),
    sources: chart.sources.map(fileInSeason),
    columns,
    faults: facts.faults,
    warnings: facts.warnings,
    problems: facts.problems,
    absent,
    invented: facts.invented,
  };
}

/** Every snap that was not a run. */
function notRuns(chart: Film): Film {
  return filterSnaps(chart, (i) => !wasRun(textAt(chart, 'play_kind', i), textAt(chart, 'result', i)));
}

function chartedOn(film: Film, column: ColumnName) {
  return { column, charted: chartedCount(film, column), snaps: film.size, of: 'passes' as const };
}

/** A file as the staff knows it, folder and name: where the season lies on a machine is nobody's business. */
function fileInSeason(path: string): string {
  return path.split(/[\\/]/).slice(-2).join('/');
}

function gamesOf(chart: Film): FilmChapter['games'] {
  const games = countBy(rowsOf(chart), (row) => textAt(chart, 'game', row) ?? null);
  return [...games].map(([game, snaps]) => ({ game, snaps }));
}
