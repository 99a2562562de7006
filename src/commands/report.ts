import { join } from 'node:path';
import type { WeekInputs } from '../season/read-week.ts';
import { sundayPages } from '../season/sunday-pages.ts';
import { diskWeek } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import { pageScript } from './page-script.ts';
import { requireSeed } from './seed-option.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the report command. */
export interface ReportOptions {
  readonly output?: string;
  readonly seed?: string;
  readonly json?: boolean;
  readonly full?: boolean;
  readonly tables?: boolean;
}

/** Reads the week, works out the plan, and writes report, call sheet, tip sheet and wristband; all of them or none. */
export async function report(weekFolder: string, options: ReportOptions, terminal: Terminal): Promise<number> {
  const seed = options.seed === undefined ? {} : { seed: requireSeed(options.seed) };
  const given = {
    listener: terminal,
    pageScript: await pageScript(),
    full: options.full ?? false,
    tables: options.tables ?? false,
    ...seed,
  };
  const { week, plan, pages, tables, problems } = await sundayPages(diskWeek(weekFolder), given);
  const out = options.output ?? join(weekFolder, 'out');
  const written = [
    ...(await writeFiles(out, pages)),
    ...(tables.length > 0 ? await writeFiles(join(out, 'tables'), tables) : []),
  ];
  if (options.json) terminal.out(`${JSON.stringify(plan, null, 2)}\n`);
  for (const problem of problems) terminal.note(problem);
  tellReader(week, written, terminal);
  return week.faults > 0 || week.menuProblems.length > 0 ? EXIT.faults : EXIT.fine;
}

function tellReader(week: WeekInputs, written: readonly string[], terminal: Terminal): void {
  for (const line of week.film.problems) terminal.note(line);
  if (week.faults > 0) terminal.note(faultWords(week.faults));
  for (const path of written) terminal.note(`Wrote ${path}`);
}

function faultWords(faults: number): string {
  const rows = faults === 1 ? '1 row had a fault and is' : `${faults} rows had faults and are`;
  return `${rows} left out of the numbers; rejected.csv keeps each as written, with the reason.`;
}
