import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { smallSeason } from '../fuzz/small-season.ts';
import { run } from './program.ts';

const program = resolve('dist/cli.js');
const env = { ...process.env, SOURCE_DATE_EPOCH: '1792800000', NO_COLOR: '1' };
const home = mkdtempSync(join(tmpdir(), 'writers-'));
afterAll(() => rmSync(home, { recursive: true, force: true }));

interface Writer {
  readonly command: string;
  readonly args: (season: string) => readonly string[];
  /** The folder it writes into. */
  readonly into: (season: string) => string;
}

const onWeek = (command: string): Writer => ({
  command,
  args: (season) => [command, join(season, 'week-09')],
  into: (season) => join(season, 'week-09/out'),
});

/** Every command that writes files. */
const WRITERS: readonly Writer[] = [
  ...['report', 'halftime', 'script', 'review'].map(onWeek),
  {
    command: 'adopt',
    args: (season) => ['adopt', join(season, 'ours.csv'), '--output', join(season, 'made')],
    into: (season) => join(season, 'made'),
  },
  { command: 'new', args: (season) => ['new', join(season, 'next')], into: (season) => join(season, 'next') },
  {
    command: 'demo',
    args: (season) => ['demo', '--output', join(season, 'demo')],
    into: (season) => join(season, 'demo'),
  },
  {
    command: 'backtest',
    args: (season) => [
      ...['backtest', resolve('data/demo/season/archive'), '--games', '1', '--sample', '2'],
      ...['--predictions', join(season, 'made/all.csv')],
    ],
    into: (season) => join(season, 'made'),
  },
];

/** A copy of the small season with its saved plan. */
function season(): string {
  const folder = mkdtempSync(join(home, 'season-'));
  cpSync(join(home, 'planned'), folder, { recursive: true });
  chmodSync(folder, 0o755);
  return folder;
}

beforeAll(() => {
  for (const [path, bytes] of Object.entries(smallSeason())) {
    mkdirSync(dirname(join(home, 'planned', path)), { recursive: true });
    writeFileSync(join(home, 'planned', path), bytes);
  }
  mkdirSync(join(home, 'planned/made'));
  chmodSync(home, 0o755);
  expect(run(['report', join(home, 'planned/week-09')]).code).toBe(0);
});

const files = (folder: string) =>
  (readdirSync(folder, { recursive: true }) as string[]).filter((name) => statSync(join(folder, name)).isFile()).sort();
const contents = (folder: string) => files(folder).map((name) => [name, readFileSync(join(folder, name), 'latin1')]);

describe.skipIf(process.platform === 'win32').each(WRITERS)('$command', ({ args, into }) => {
  it('leaves everything as it was when no file may be written', () => {
    const folder = season();
    const before = contents(folder);
    const line = [process.execPath, program, ...args(folder)].map((part) => `"${part}"`).join(' ');
    const ended = spawnSync('bash', ['-c', `ulimit -f 0; ${line}`], { encoding: 'utf8', env });
    expect(ended.stderr).toMatch(/cannot write into .*larger than this account may write.*Nothing was written/s);
    expect(ended.status).toBe(1);
    expect(contents(folder)).toEqual(before);
  });

  it('says so when this user may not write there', () => {
    const folder = season();
    mkdirSync(into(folder), { recursive: true });
    chmodSync(into(folder), 0o555);
    const before = contents(folder);
    // Who may do everything is not refused: the program runs as nobody (65534) then.
    const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
    const ended = spawnSync(process.execPath, [program, ...args(folder)], { encoding: 'utf8', env, ...nobody });
    chmodSync(into(folder), 0o755);
    expect(ended.stderr).toMatch(/may not write there. Nothing was written/);
    expect(ended.status).toBe(1);
    expect(contents(folder)).toEqual(before);
  });

  it('says so when a file stands where its folder belongs', () => {
    const folder = season();
    rmSync(into(folder), { recursive: true, force: true });
    writeFileSync(into(folder), 'in the way');
    const ended = run(args(folder));
    expect(ended.note).toMatch(/cannot write into|is not empty|is a file|there is no folder/);
    expect([1, 2]).toContain(ended.code);
    expect(readFileSync(into(folder), 'utf8')).toBe('in the way');
  });

  it('ends with 130 when it is interrupted before its files are in place, and leaves nothing of them', async () => {
    const folder = season();
    const out = into(folder);
    mkdirSync(out, { recursive: true });
    const lock = join(out, '.writing');
    writeFileSync(lock, '');
    const before = contents(folder);
    const child = spawn(process.execPath, [program, ...args(folder)], { stdio: 'ignore', env });
    const ended = new Promise<number | null>((done) => child.once('exit', done));
    const waits = () => files(out).some((name) => name.includes('.writing-'));
    while (!waits() && child.exitCode === null) {
      if (existsSync(lock)) utimesSync(lock, new Date(), new Date());
      await setTimeout(5);
    }
    if (args(folder)[0] === 'new') expect(await ended).toBe(2);
    else {
      await setTimeout(50);
      child.kill('SIGINT');
      expect(await ended).toBe(130);
    }
    expect(contents(folder)).toEqual(before);
  });

  it('run twice at once leaves what one run leaves', async () => {
    const [alone, both] = [season(), season()];
    expect(run(args(alone)).code).toBeLessThan(2);
    const codes = await Promise.all(
      [0, 1].map(() => {
        const child = spawn(process.execPath, [program, ...args(both)], { stdio: 'ignore', env });
        return new Promise<number | null>((done) => child.once('exit', done));
      }),
    );
    for (const code of codes) expect([0, 1, 2]).toContain(code);
    const plain = (folder: string) =>
      contents(folder).map(([name, text]) => [name, text?.replaceAll(folder, 'season')]);
    expect(plain(both)).toEqual(plain(alone));
  });
});
