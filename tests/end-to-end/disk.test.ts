import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, describe, expect, it } from 'vitest';
import { run } from './program.ts';

const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

/** A week of forty snaps and nothing else: small, and yet a whole report. */
function smallWeek(): string {
  const season = mkdtempSync(join(tmpdir(), 'disk-'));
  made.push(season);
  const week = join(season, 'week-01');
  mkdirSync(week);
  const sheet = readFileSync('data/demo/season/week-09/opponent-latest.csv', 'utf8');
  writeFileSync(join(week, 'opponent.csv'), `${sheet.split('\n').slice(0, 41).join('\n')}\n`);
  return week;
}

const program = resolve('dist/cli.js');
const REPORT = ['call-sheet.html', 'report.html', 'report.json', 'tip-sheet.html', 'wristband.csv', 'wristband.html'];
const names = (folder: string) => (existsSync(folder) ? readdirSync(folder).sort() : []);
const env = { ...process.env, SOURCE_DATE_EPOCH: '1792800000' };
const report = (week: string, seed: string) =>
  spawn(process.execPath, [program, 'report', week, '--seed', seed], { stdio: 'ignore', env });
const ended = (child: ReturnType<typeof spawn>) =>
  new Promise<number | null>((done) => child.once('exit', (code) => done(code)));

/** Puts a small disk of its own in place of a folder; false where this user may not. */
function smallDisk(folder: string): boolean {
  mkdirSync(folder, { recursive: true });
  return spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', folder]).status === 0;
}

function mayMount(): boolean {
  const folder = mkdtempSync(join(tmpdir(), 'disk-'));
  made.push(folder);
  const mounted = smallDisk(folder);
  if (mounted) execFileSync('umount', [folder]);
  return mounted;
}

describe.skipIf(process.platform === 'win32')('a disk that takes no more', () => {
  it('leaves nothing behind when a file may not grow as large as the report', () => {
    const week = smallWeek();
    const limited = spawnSync('bash', ['-c', `ulimit -f 16; "${process.execPath}" "${program}" report "${week}"`], {
      encoding: 'utf8',
      env,
    });
    expect(limited.stderr).toMatch(/larger than this account may write.*Nothing was written/s);
    expect(limited.status).toBe(1);
    expect(names(join(week, 'out'))).toEqual([]);
  });

  it.skipIf(!mayMount())('keeps the report of before when the disk is full (where a disk may be mounted)', () => {
    const week = smallWeek();
    const out = join(week, 'out');
    expect(smallDisk(out)).toBe(true);
    try {
      writeFileSync(join(out, 'report.html'), 'before');
      const full = run(['report', week]);
      expect(full.note).toMatch(/the disk is full.*Nothing was written/s);
      expect(full.code).toBe(1);
      expect(names(out)).toEqual(['report.html']);
      expect(readFileSync(join(out, 'report.html'), 'utf8')).toBe('before');
    } finally {
      execFileSync('umount', [out]);
    }
  });

  it.skipIf(!existsSync('/dev/full'))('says so when the result itself cannot be written', () => {
    const full = spawnSync('bash', ['-c', `"${process.execPath}" "${program}" dictionary --json > /dev/full`], {
      encoding: 'utf8',
    });
    expect(full.stderr).toContain('cannot write the result: the disk is full');
    expect(full.status).toBe(1);
  });

  // A file that may grow no more takes the first part without a complaint, as a nearly full disk does.
  it.each([
    ['dictionary --json'],
    ['counts data/demo/season/week-09'],
    ['check data/demo/season/week-09 --json'],
    ['--help'],
  ])('never ends with 0 when the result of %s is cut off', (args) => {
    const folder = mkdtempSync(join(tmpdir(), 'cut-'));
    made.push(folder);
    const result = join(folder, 'result.txt');
    const cut = spawnSync('bash', ['-c', `ulimit -f 1; "${process.execPath}" "${program}" ${args} > "${result}"`], {
      encoding: 'utf8',
      env,
    });
    expect(readFileSync(result).length).toBe(1024);
    expect(cut.stderr).toContain('cannot write the result: the file would be larger than this account may write');
    expect(cut.status).toBe(1);
  });

  it.skipIf(!existsSync('/dev/full'))(
    'says so for every command that prints, when the disk is full from the start',
    () => {
      const week = 'data/demo/season/week-09';
      for (const args of [`check ${week}`, `counts ${week}`, `tendency ${week} --of screen`, 'dictionary']) {
        const full = spawnSync('bash', ['-c', `"${process.execPath}" "${program}" ${args} > /dev/full`], {
          encoding: 'utf8',
          env,
        });
        expect(full.stderr, args).toContain('cannot write the result: the disk is full');
        expect(full.status, args).toBe(1);
      }
    },
  );

  it('ends in peace when the reader has seen enough', () => {
    const cut = spawnSync('bash', ['-c', `set -o pipefail; "${process.execPath}" "${program}" dictionary | head -1`], {
      encoding: 'utf8',
    });
    expect([cut.status, cut.stderr]).toEqual([0, '']);
  });
});

describe('a run that is stopped', () => {
  // The lock of another run holds it where its files are written and not yet in place.
  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
    ['SIGHUP', 129],
  ] as const)('by %s ends with %i and leaves what was there', async (signal, code) => {
    const week = smallWeek();
    const out = join(week, 'out');
    mkdirSync(out);
    writeFileSync(join(out, 'report.html'), 'before');
    writeFileSync(join(out, '.writing'), '');
    const child = report(week, '1');
    const stopped = ended(child);
    const waiting = () => names(out).filter((name) => /\.writing-/.test(name)).length;
    // The lock counts as left behind after some seconds: it is kept fresh.
    while (waiting() < REPORT.length && child.exitCode === null) {
      writeFileSync(join(out, '.writing'), '');
      await setTimeout(20);
    }
    child.kill(signal);
    expect(await stopped).toBe(code);
    expect(names(out)).toEqual(['.writing', 'report.html']);
    expect(readFileSync(join(out, 'report.html'), 'utf8')).toBe('before');
  });
});

describe('two runs at once on one folder', () => {
  it('leave the files of one of them, never of both', async () => {
    const week = smallWeek();
    const codes = await Promise.all([report(week, '1'), report(week, '2')].map(ended));
    expect(codes).toEqual([0, 0]);
    expect(names(join(week, 'out'))).toEqual(REPORT);
    const seed = String(JSON.parse(readFileSync(join(week, 'out/report.json'), 'utf8')).seed);
    expect(['1', '2']).toContain(seed);
    expect(run(['report', week, '--seed', seed, '--output', join(week, 'again')]).code).toBe(0);
    for (const name of REPORT)
      expect(readFileSync(join(week, 'out', name)).equals(readFileSync(join(week, 'again', name))), name).toBe(true);
  });
});
