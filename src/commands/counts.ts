import { joinFilms } from '../game/film.ts';
import { toCsv } from '../ingest/write-csv.ts';
import { countChart } from '../pressure/forecast/counts/count-chart.ts';
import { ANY, COUNT_COLUMNS, countedSnaps, GAMES } from '../pressure/forecast/counts/count-row.ts';
import { countsSql } from '../pressure/forecast/counts/counts-sql.ts';
import { withOffense } from '../pressure/plan/name-offense.ts';
import { readCountFile } from '../season/read-counts.ts';
import { readWeek } from '../season/read-week.ts';
import { readSeasonFolder } from '../season/season-folder.ts';
import { UserProblem } from '../season/user-problem.ts';
import { diskWeek } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import { bytesOf } from './read-disk.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';

/** Flags of the counts command. */
export interface CountsOptions {
  readonly sql?: boolean;
  /** A file of tallies to be checked. */
  readonly check?: string;
}

/**
 * Writes the tallies of all scouted film of a season, the opponent's and the archive's sheets, as CSV; or the SQL that
 * makes them. Tallies that came from elsewhere are not passed on, so that no game is counted twice.
 */
export async function counts(
  weekFolder: string | undefined,
  options: CountsOptions,
  terminal: Terminal,
): Promise<number> {
  if (options.check !== undefined) return checkCounts(options.check, terminal);
  if (weekFolder === undefined) throw new UserProblem('usage', 'name the folder of a week, or a file with --check');
  const { week } = await readWeek(await readSeasonFolder(diskWeek(weekFolder)));
  const { chart, archive, settings, faults } = week;
  if (options.sql) {
    terminal.out(countsSql(settings.situations));
    return EXIT.fine;
  }
  const own = withOffense(chart, settings.opponent);
  const rows = countChart(archive ? joinFilms([own, archive]) : own, settings.situations);
  terminal.out(toCsv([COUNT_COLUMNS, ...rows.map((row) => COUNT_COLUMNS.map((name) => row[name]))]));
  const offenses = new Set(rows.map(({ offense }) => offense)).size;
  terminal.note(`${rows.length} tallies of ${countedSnaps(rows)} snaps by ${offenses} offenses`);
  if (faults > 0) terminal.note(`${faults} rows had faults and are in no tally; "pressure-plan check" lists them`);
  return faults > 0 ? EXIT.faults : EXIT.fine;
}

/** Whether a file of tallies would be accepted, and what it holds. */
async function checkCounts(file: string, terminal: Terminal): Promise<number> {
  const rows = readCountFile({ file, bytes: await bytesOf(file, file) });
  const byOffense = [...new Set(rows.map(({ offense }) => offense))].sort();
  const table = byOffense.map((offense) => {
    const own = rows.filter((row) => row.offense === offense);
    const games = own.find(({ target, class: name }) => target === GAMES && name === ANY)?.count;
    return [offense, String(countedSnaps(own)), games === undefined ? 'not said' : String(games)];
  });
  terminal.out(tableText(['offense', 'snaps', 'games'], table));
  terminal.note(`${file} can be used: put it into the season's archive folder, with "counts" in its name.`);
  return EXIT.fine;
}
