import { join } from 'node:path';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { Review } from '../pressure/review/review.ts';
import { earlierReviews } from './earlier-reviews.ts';
import { EXIT } from './exit-code.ts';
import { pageScript } from './page-script.ts';
import { readWeek, type WeekInputs } from './read-week.ts';
import { rejectsCsv } from './rejects.ts';
import { inputsPrint, type Seal, sealed, sealedText } from './seal.ts';
import { readSeasonFolder } from './season-folder.ts';
import { requireSeed } from './seed-option.ts';
import type { Terminal } from './terminal.ts';
import { workOutPlan } from './work-out-plan.ts';
import { type OutputFile, writeFiles } from './write-files.ts';

/** Flags of the report command. */
export interface ReportOptions {
  readonly output?: string;
  readonly seed?: string;
  readonly json?: boolean;
}

/** Reads the week, works out the plan, and writes report, call sheet and tip sheet; all of them or none. */
export async function report(weekFolder: string, options: ReportOptions, terminal: Terminal): Promise<number> {
  const { week, inputs } = await readFiles(weekFolder);
  const seed = options.seed === undefined ? week.settings.seed : requireSeed(options.seed);
  const plan = await workOutPlan({ ...week, settings: { ...week.settings, seed } }, terminal);
  terminal.progress('Drawing the pages');
  const { reviews, problems } = await earlierReviews(weekFolder);
  const saved = sealed(plan, inputs);
  const pages = await drawPages(saved, reviews);
  terminal.progress('');
  const written = await writeFiles(options.output ?? join(weekFolder, 'out'), [...pages, ...rejectFiles(week)]);
  if (options.json) terminal.out(`${JSON.stringify(saved, null, 2)}\n`);
  for (const problem of problems) terminal.note(problem);
  tellReader(week, written, terminal);
  return week.faults > 0 ? EXIT.faults : EXIT.fine;
}

/** The week and the print of its files, whose bytes can go before the work begins: an archive may be long. */
async function readFiles(weekFolder: string): Promise<{ readonly week: WeekInputs; readonly inputs: string }> {
  const folder = await readSeasonFolder(weekFolder);
  return { week: await readWeek(folder), inputs: inputsPrint(folder) };
}

async function drawPages(plan: WeekPlan & { readonly seal: Seal }, reviews: readonly Review[]): Promise<OutputFile[]> {
  const { renderReport } = await import('../report/render-report.ts');
  const { renderCallSheet } = await import('../report/render-call-sheet.ts');
  const { renderTipSheet } = await import('../report/render-tip-sheet.ts');
  return [
    { name: 'report.html', text: await renderReport(plan, { script: await pageScript(), reviews }) },
    { name: 'report.json', text: sealedText(plan) },
    { name: 'call-sheet.html', text: await renderCallSheet(plan) },
    { name: 'tip-sheet.html', text: await renderTipSheet(plan) },
  ];
}

/** Without faults the rejects of an earlier run are taken away: they speak of a sheet that was mended. */
function rejectFiles(week: WeekInputs): OutputFile[] {
  return [{ name: 'rejected.csv', text: week.rejected.length === 0 ? null : rejectsCsv(week.rejected) }];
}

function tellReader(week: WeekInputs, written: readonly string[], terminal: Terminal): void {
  for (const line of week.film.problems) terminal.note(line);
  if (week.faults > 0) terminal.note(faultWords(week.faults));
  for (const path of written) terminal.note(`Wrote ${path}`);
}

function faultWords(faults: number): string {
  const rows = faults === 1 ? '1 row had a fault and is' : `${faults} rows had faults and are`;
  return `${rows} in no number; rejected.csv keeps what was written, with the reasons.`;
}
