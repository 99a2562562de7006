import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { type Film, joinFilms } from '../game/film.ts';
import { readSheet } from '../ingest/read-sheet.ts';
import { describeGroup, groupProblems, type RowProblem } from '../ingest/row-problem.ts';
import { type Adjustment, adjustWeek } from '../pressure/halftime/adjust.ts';
import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import { habitWords, warningWords } from '../report/adjust/half-time-words.ts';
import { CommandProblem, EXIT } from './exit-code.ts';
import { inputsPrint } from './seal.ts';
import { type FoundFile, holdsOpponent, readSeasonFolder, readSheets } from './season-folder.ts';
import { savedPlan } from './sunday-plan.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';
import { unreadFiles } from './unread-files.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the adjust command. */
export interface AdjustOptions {
  readonly live?: readonly string[];
  readonly output?: string;
  readonly json?: boolean;
}

/** Groups of problems named before the rest is only counted. */
const NAMED = 8;

/** Brings Sunday's plan up to date with the snaps charted tonight; may be run again after every series. */
export async function adjust(weekFolder: string, options: AdjustOptions, terminal: Terminal): Promise<number> {
  const live = await readLive(weekFolder, options.live ?? []);
  for (const group of live.named) terminal.note(group);
  const plan = await sundayPlan(weekFolder, terminal);
  const update = adjustWeek(plan, live.chart);
  const { renderHalfTime } = await import('../report/adjust/render-half-time.ts');
  const written = await writeFiles(options.output ?? join(weekFolder, 'out'), [
    { name: 'half-time.html', text: await renderHalfTime(update, live.faults) },
    { name: 'half-time.json', text: `${JSON.stringify(update, null, 1)}\n` },
  ]);
  terminal.out(options.json ? `${JSON.stringify(update, null, 2)}\n` : updateText(update));
  for (const path of written) terminal.note(`Wrote ${path}`);
  return live.faults > 0 ? EXIT.faults : EXIT.fine;
}

interface LiveReading {
  readonly chart: Film;
  readonly faults: number;
  readonly named: readonly string[];
}

async function readLive(weekFolder: string, named: readonly string[]): Promise<LiveReading> {
  const files =
    named.length > 0 ? await namedFiles(named) : await readSheets(resolve(weekFolder), weekFolder, /^live/i);
  if (files.length === 0)
    throw new CommandProblem(
      'usage',
      [`${weekFolder} holds no live….csv; name the sheet with --live <file>`, ...(await unreadFiles(weekFolder))].join(
        '\n',
      ),
    );
  const readings = files.map((file) => readSheet(file, { kind: 'live' }));
  const problems = readings.flatMap((reading) => reading.problems);
  const faults = readings.reduce((sum, { rejected }) => sum + rejected.length, 0);
  const chart = joinFilms(readings.map((reading) => reading.chart));
  if (chart.size === 0) throw new CommandProblem('faults', ['no usable snap was found', ...lines(problems)].join('\n'));
  return { chart, faults, named: lines(problems) };
}

async function namedFiles(names: readonly string[]): Promise<FoundFile[]> {
  return Promise.all(
    names.map(async (file) => {
      const bytes = await readFile(file).catch((error: NodeJS.ErrnoException) => {
        const reason = error.code === 'ENOENT' ? 'there is no such file' : error.message;
        throw new CommandProblem('usage', `cannot read ${file}: ${reason}`, { cause: error });
      });
      return { file, bytes };
    }),
  );
}

function lines(problems: readonly RowProblem[]): string[] {
  const { groups, restProblems } = groupProblems(problems, NAMED);
  return [...groups.map(describeGroup), ...(restProblems > 0 ? [`… and ${restProblems} more`] : [])];
}

/** The saved plan where it was made from the very files of the season; else it is worked out again from them. */
async function sundayPlan(weekFolder: string, terminal: Terminal): Promise<WeekPlan> {
  const saved = await savedPlan(weekFolder);
  if (saved.kind === 'sound') {
    if (!(await holdsOpponent(weekFolder))) return planAlone(saved.value, terminal);
    if (saved.seal.inputs === inputsPrint(await readSeasonFolder(weekFolder))) return saved.value;
  }
  const { plannedWeek } = await import('./week-plan-source.ts');
  return (await plannedWeek(weekFolder, terminal)).plan;
}

/** At the field there may be no more than the plan and tonight's sheet. */
function planAlone(plan: WeekPlan, terminal: Terminal): WeekPlan {
  terminal.note(
    `There is no opponent….csv here to hold out/report.json to; it is taken as Sunday's plan for ${plan.opponent}`,
  );
  return plan;
}

function updateText(update: Adjustment): string {
  const { moved, calls, families } = update;
  const ranked = calls.length > 0 ? calls.map(callRow) : families.map((family) => moveRow(family.family, family));
  return [
    `${update.liveSnaps} snaps tonight; truly moved, of ${moved.looked} habits looked at:`,
    ...(moved.moved.length === 0 ? ['  nothing'] : moved.moved.map((habit) => `  ${habitWords(habit)}`)),
    'Only looks so:',
    ...(moved.looksSo.length === 0
      ? ['  nothing']
      : moved.looksSo.slice(0, NAMED).map((habit) => `  ${habitWords(habit)}`)),
    ...update.warnings.map((warning) => `Shown too often: ${warningWords(warning)}`),
    tableText(['best first', 'Sunday', 'now', 'rank Sunday', 'used'], ranked),
  ].join('\n');
}

function callRow(call: Adjustment['calls'][number]): string[] {
  return [...moveRow(call.call, call), `${call.used} of ${Math.round(call.planned)}`];
}

function moveRow(name: string, move: Adjustment['families'][number] | Adjustment['calls'][number]): string[] {
  return [name, move.before.toFixed(2), move.now.toFixed(2), String(move.rankBefore)];
}
