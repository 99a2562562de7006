import { toCsv } from '../ingest/write-csv.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { Review } from '../pressure/review/review.ts';
import { earlierReviews } from './earlier-reviews.ts';
import { type RowFindings, readWeek, type WeekInputs } from './read-week.ts';
import { rejectsCsv } from './rejects.ts';
import { inputsPrint, type Seal, type Sealed, sealed } from './seal.ts';
import { readSeasonFolder } from './season-folder.ts';
import type { Listener, OutputFile, SeasonWeek } from './store.ts';
import { workOutPlan } from './work-out-plan.ts';

/** What a Sunday is worked out with, beside the week's files. */
export interface SundayOptions {
  readonly listener: Listener;
  /** The report page's own script, inlined into it. */
  readonly pageScript: string;
  /** In place of the seed in week.yaml. */
  readonly seed?: number;
  /** Every folded part of the report open, so that everything prints. */
  readonly full?: boolean;
  /** The report's tables as CSV too. */
  readonly tables?: boolean;
}

/** Sunday's plan with its pages, named as they are written into the week's out folder. */
export interface Sunday {
  readonly week: WeekInputs;
  readonly plan: WeekPlan & { readonly seal: Seal };
  readonly pages: readonly OutputFile[];
  /** Every table of the report as CSV, where they are asked for. */
  readonly tables: readonly OutputFile[];
  /** Reviews of earlier weeks that could not be used, and what to do. */
  readonly problems: readonly string[];
}

/** Reads the week, works out the plan and draws report, call sheet, tip sheet and wristband; nothing is written. */
export async function sundayPages(at: SeasonWeek, options: SundayOptions): Promise<Sunday> {
  const { listener, seed } = options;
  const { week, inputs, rejects } = await readFiles(at);
  const settings = seed === undefined ? week.settings : { ...week.settings, seed };
  const worked = await workOutPlan({ ...week, settings }, listener, at.platform);
  listener.progress('Drawing the pages');
  const { reviews, problems } = await earlierReviews(at);
  const plan = sealed(worked, inputs, at.platform.digest);
  const pages = await drawPages(plan, reviews, options);
  const tables = options.tables ? await drawTables(worked, reviews) : [];
  listener.progress('');
  return { week, plan: plan.value, pages: [...pages, rejects], tables, problems };
}

/** A week as it was read, the print of its files, and the rows that stay out of the numbers. */
interface FilesRead {
  readonly week: WeekInputs;
  readonly inputs: string;
  readonly rejects: OutputFile;
}

/**
 * Neither the files' bytes nor what is wrong with their rows is in memory once the work begins: an archive may be long,
 * and a sheet wrong in every row.
 */
async function readFiles(at: SeasonWeek): Promise<FilesRead> {
  const folder = await readSeasonFolder(at);
  const { week, found } = await readWeek(folder);
  return { week, inputs: inputsPrint(folder, at.platform.digest), rejects: rejectFile(week, found) };
}

async function drawPages(
  { value: plan, text }: Sealed<WeekPlan>,
  reviews: readonly Review[],
  { pageScript: script, full = false }: SundayOptions,
): Promise<OutputFile[]> {
  const { renderReport } = await import('../report/render-report.ts');
  const { renderCallSheet } = await import('../report/render-call-sheet.ts');
  const { renderWristband, wristbandRows } = await import('../report/render-wristband.ts');
  const { renderTipSheet } = await import('../report/render-tip-sheet.ts');
  return [
    { name: 'report.html', text: await renderReport(plan, { script, reviews, full }) },
    { name: 'report.json', text },
    { name: 'call-sheet.html', text: await renderCallSheet(plan) },
    { name: 'tip-sheet.html', text: await renderTipSheet(plan) },
    { name: 'wristband.html', text: await renderWristband(plan) },
    { name: 'wristband.csv', text: toCsv(wristbandRows(plan)) },
  ];
}

async function drawTables(plan: WeekPlan, reviews: readonly Review[]): Promise<OutputFile[]> {
  const { reportTables } = await import('../report/report-tables.ts');
  return reportTables(plan, reviews).map(({ id, rows }) => ({ name: `${id}.csv`, text: toCsv(rows) }));
}

/** Without faults the rejects of an earlier run are taken away: they speak of a sheet that was mended. */
function rejectFile({ faults }: WeekInputs, { rejected }: RowFindings): OutputFile {
  return { name: 'rejected.csv', text: faults === 0 ? null : rejectsCsv(rejected) };
}
