import { cp, mkdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CommandProblem } from './exit-code.ts';
import { report } from './report.ts';
import type { Terminal } from './terminal.ts';

/** The demo week: its folder name within the season. */
const DEMO_WEEK = 'week-09';

/** Copies the invented demo season to `output` and writes the report of its last week. */
export async function demo(options: { readonly output: string }, terminal: Terminal): Promise<number> {
  const source = await demoSeason();
  await mkdir(options.output, { recursive: true });
  await cp(source, options.output, {
    recursive: true,
    force: false,
    filter: (path) => !/[\\/]out([\\/]|$)/.test(path.slice(source.length)),
  });
  terminal.note(`The demo season is invented: league, schools and snaps. It is in ${options.output}.`);
  const code = await report(join(options.output, DEMO_WEEK), {}, terminal);
  terminal.note(`Open ${join(options.output, DEMO_WEEK, 'out', 'report.html')} in a browser.`);
  return code;
}

async function demoSeason(): Promise<string> {
  for (const place of ['../data/demo/season', '../../data/demo/season']) {
    const path = fileURLToPath(new URL(place, import.meta.url));
    if (await stat(path).catch(() => null)) return path;
  }
  throw new CommandProblem('faults', 'the demo season is missing from this installation');
}
