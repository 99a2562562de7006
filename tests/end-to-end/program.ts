import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';

/** What a run of the built program said and how it ended. */
export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly note: string;
}

/** Runs the built command line as a user would; builds it first when dist/ is not there. */
export function run(args: readonly string[], options: { readonly cwd?: string; readonly input?: string } = {}): Run {
  const program = resolve('dist/cli.js');
  if (!existsSync(program)) execFileSync('node', ['scripts/build.mjs']);
  const ended = spawnSync(process.execPath, [program, ...args], {
    encoding: 'utf8',
    env: { ...process.env, SOURCE_DATE_EPOCH: '1792800000', NO_COLOR: '1' },
    maxBuffer: 2 ** 28,
    ...options,
  });
  return { code: ended.status, out: ended.stdout, note: ended.stderr };
}

/** A fresh copy of the demo season, without what earlier runs wrote. */
export function demoSeason(): string {
  const season = mkdtempSync(join(tmpdir(), 'season-'));
  cpSync('data/demo/season', season, { recursive: true, filter: (path) => !/[\\/]out([\\/]|$)/.test(path) });
  return season;
}
