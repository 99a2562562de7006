import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { HalftimeUpdate } from '../pressure/halftime/halftime.ts';
import { callsTable, familiesTable, rushTable } from '../report/halftime/halftime-table.ts';
import { habitWords, overtakingWords, topLine, warningWords } from '../report/halftime/halftime-words.ts';
import type { TableView } from '../report/view/table-view.ts';
import { situationLabel } from '../report/words/situation-label.ts';
import { halftimePages } from '../season/halftime-pages.ts';
import type { FoundFile } from '../season/season-folder.ts';
import { UserProblem } from '../season/user-problem.ts';
import { diskWeek } from './disk-season.ts';
import { EXIT } from './exit-code.ts';
import { tableText } from './table-text.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the halftime command. */
export interface HalftimeOptions {
  readonly live?: readonly string[];
  readonly output?: string;
  readonly json?: boolean;
}

/** Habits named on the terminal before the rest is left to the page. */
const NAMED = 8;

/** Brings Sunday's plan up to date with the snaps charted tonight; may be run again after every series. */
export async function halftime(weekFolder: string, options: HalftimeOptions, terminal: Terminal): Promise<number> {
  const given = await namedFiles(options.live ?? []);
  const { update, faults, pages } = await halftimePages(diskWeek(weekFolder), terminal, given);
  const written = await writeFiles(options.output ?? join(weekFolder, 'out'), pages);
  terminal.out(options.json ? `${JSON.stringify(update, null, 2)}\n` : updateText(update));
  for (const path of written) terminal.note(`Wrote ${path}`);
  return faults > 0 ? EXIT.faults : EXIT.fine;
}

async function namedFiles(names: readonly string[]): Promise<FoundFile[]> {
  return Promise.all(
    names.map(async (file) => {
      const bytes = await readFile(file).catch((error: NodeJS.ErrnoException) => {
        const reason = error.code === 'ENOENT' ? 'there is no such file' : error.message;
        throw new UserProblem('usage', `cannot read ${file}: ${reason}`, { cause: error });
      });
      return { file, bytes };
    }),
  );
}

function updateText(update: HalftimeUpdate): string {
  const { moved } = update;
  return [
    `${update.liveSnaps} snaps tonight. ${topLine(update)}`,
    `Real changes (${moved.looked} tendencies checked):`,
    ...(moved.moved.length === 0 ? ['  nothing'] : moved.moved.map((habit) => `  ${habitWords(habit)}`)),
    'Probably noise:',
    ...(moved.looksSo.length === 0
      ? ['  nothing']
      : moved.looksSo.slice(0, NAMED).map((habit) => `  ${habitWords(habit)}`)),
    ...update.warnings.map((warning) => `Shown too often: ${warningWords(warning)}`),
    ...update.situations.flatMap(({ situation, overtakings }) =>
      overtakings.map((one) => `${situationLabel(situation)}: ${overtakingWords(one)}.`),
    ),
    plainTable(rushTable(update)),
    plainTable(update.calls.length > 0 ? callsTable(update) : familiesTable(update)),
  ].join('\n');
}

/** A table of the page as the terminal prints it. */
function plainTable({ columns, rows }: TableView): string {
  if (rows.length === 0) return '';
  const lines = rows.map(({ name, cells }) => [name, ...cells.map(({ text }) => text)]);
  return tableText(
    columns.map(({ label }) => label),
    lines,
  );
}
