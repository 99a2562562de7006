import { readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { UserProblem } from '../season/user-problem.ts';
import { report } from './report.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** The demo week: its folder name within the season. */
const DEMO_WEEK = 'week-09';

/** Copies the invented demo season to `output` and writes the report of its last week. */
export async function demo(options: { readonly output: string }, terminal: Terminal): Promise<number> {
  await copySeason(await demoSeason(), options.output);
  terminal.note(`The demo season is invented: league, schools and snaps. It is in ${options.output}.`);
  const code = await report(join(options.output, DEMO_WEEK), {}, terminal);
  terminal.note(`Open ${join(options.output, DEMO_WEEK, 'out', 'report.html')} in a browser.`);
  return code;
}

/** Copies the sheets and settings that are not there yet, all of them or none; earlier reports are no part of a season. */
async function copySeason(source: string, output: string): Promise<void> {
  const names = (await readdir(source, { recursive: true })).filter((name) => SEASON_FILE.test(name));
  const files = names.map(async (name) => {
    if (await isThere(join(output, name))) return [];
    return [{ name, text: await readFile(join(source, name), 'utf8') }];
  });
  await writeFiles(output, (await Promise.all(files)).flat());
}

/** Sheets and settings outside the folders named out. */
const SEASON_FILE = /^(?!(?:.*[\\/])?out[\\/]).*\.(?:csv|yaml)$/;

async function isThere(path: string): Promise<boolean> {
  return (await stat(path).catch(() => null)) !== null;
}

async function demoSeason(): Promise<string> {
  for (const place of ['../data/demo/season', '../../data/demo/season']) {
    const path = fileURLToPath(new URL(place, import.meta.url));
    if (await isThere(path)) return path;
  }
  throw new UserProblem('faults', 'the demo season is missing from this installation');
}
