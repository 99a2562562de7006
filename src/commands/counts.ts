import { joinCharts } from '../ingest/chart.ts';
import { toCsv } from '../ingest/write-csv.ts';
import { countChart } from '../pressure/forecast/counts/count-chart.ts';
import { COUNT_COLUMNS, countedSnaps } from '../pressure/forecast/counts/count-row.ts';
import { countsSql } from '../pressure/forecast/counts/counts-sql.ts';
import { withOffense } from '../pressure/plan/name-offense.ts';
import { EXIT } from './exit-code.ts';
import { readWeek } from './read-week.ts';
import { readSeasonFolder } from './season-folder.ts';
import type { Terminal } from './terminal.ts';

/** Flags of the counts command. */
export interface CountsOptions {
  readonly sql?: boolean;
}

/**
 * Writes the tallies of all scouted film of a season, the opponent's and the archive's sheets, as CSV; or the SQL that
 * makes them. Tallies that came from elsewhere are not passed on, so that no game is counted twice.
 */
export async function counts(weekFolder: string, options: CountsOptions, terminal: Terminal): Promise<number> {
  const { chart, archive, settings, faults } = await readWeek(await readSeasonFolder(weekFolder));
  if (options.sql) {
    terminal.out(countsSql(settings.situations));
    return EXIT.fine;
  }
  const own = withOffense(chart, settings.opponent);
  const rows = countChart(archive ? joinCharts([own, archive]) : own, settings.situations);
  terminal.out(toCsv([COUNT_COLUMNS, ...rows.map((row) => COUNT_COLUMNS.map((name) => row[name]))]));
  const offenses = new Set(rows.map(({ offense }) => offense)).size;
  terminal.note(`${rows.length} tallies of ${countedSnaps(rows)} snaps by ${offenses} offenses`);
  if (faults > 0) terminal.note(`${faults} rows had faults and are in no tally; "pressure-plan check" lists them`);
  return faults > 0 ? EXIT.faults : EXIT.fine;
}
