import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from './program.ts';

const season = mkdtempSync(join(tmpdir(), 'run-or-pass-'));
const week = join(season, 's', 'week-01');
const put = (rows: readonly string[]) => writeFileSync(join(week, 'opponent.csv'), `${rows.join('\n')}\n`);

/** Invented: 60 runs and 80 passes on first and ten, and not a word on which passes. */
const FILM = [
  'game,snap,down,to_go,ball_on,play_kind,gain',
  ...Array.from({ length: 140 }, (_, i) => `w1,${i + 1},1,10,own 30,${i % 7 < 3 ? 'run' : 'pass'},4`),
];

beforeAll(() => {
  expect(run(['new', join(season, 's')]).code).toBe(0);
});
afterAll(() => rmSync(season, { recursive: true, force: true }));

describe('a film that says run or pass and no more', () => {
  it('is never said to run only, and the first screen says what is not known', () => {
    put(FILM);
    expect(run(['report', week]).code).toBe(0);
    const page = readFileSync(join(week, 'out/report.html'), 'utf8');
    const first = /<section class="first".*?<\/section>/s.exec(page)?.[0] ?? '';
    expect(first).toContain('They pass on 80 of 140 (57%). What kind of pass was not charted: the plan has to guess.');
    expect(first).toContain('Too little is charted to look for tendencies.');
    expect(first).not.toMatch(/Of their next \d+ snaps expect/);
    const rows = [...page.matchAll(/<tr[^>]*>[\s\S]*?<\/tr>/g)].map(([row]) => row.replace(/<[^>]+>/g, ' '));
    const shown = rows.filter((row) => /All situations/.test(row)).map((row) => row.replace(/\s+/g, ' '));
    expect(shown.some((row) => /Any run .*60 of 140 \(43%/.test(row))).toBe(true);
    // What the film cannot tell has no row of its own.
    const situations = rows.filter((row) => /^\s*(All situations|\d\w\w and )/.test(row));
    expect(
      situations.filter((row) => /\s(QB run|Screen|Quick|Dropback|Deep shot|Movement)\s+(under )?\d+%/.test(row)),
    ).toEqual([]);
  });

  it('calls a guess what it guesses: points against one kind of play, and what fits them', () => {
    put(FILM);
    expect(run(['report', week]).code).toBe(0);
    const page = readFileSync(join(week, 'out/report.html'), 'utf8');
    expect(page).toContain('Points against one kind, a screen for example, are a guess.');
    const shares = [...page.matchAll(/Most of it comes against [^(]*\(([^)]*)\)/g)].map(([, share = '']) => share);
    expect(shares.length).toBeGreaterThan(2);
    for (const share of shares) expect(share).toMatch(/^a guess of \d+% of their snaps$/);
    expect(page).toContain('No rule of fit can be judged on what is charted');
    expect(page).not.toContain('Right less wrong, of 10 snaps');
    const rows = [...page.matchAll(/<tr[^>]*>.*?<\/tr>/gs)].map(([row]) =>
      row.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' '),
    );
    const runs = rows.find((row) => /^ All situations Any run .*all their snaps/.test(row));
    expect(runs).toMatch(/\d+ to \d+ of about 60/);
  });

  it('is asked how often they run, and not how often they screen', () => {
    put(FILM);
    expect(run(['tendency', week, '--of', 'run']).out).toMatch(/all +60 of 140 \(43%\)/);
    expect(run(['tendency', week, '--of', 'screen']).out).toMatch(/all +no snaps +140/);
    expect(run(['tendency', week, '--of', 'quarterback_run']).out).toMatch(/all +no snaps +140/);
  });
});

it('a sheet of foreign headers is answered with the command that drafts its profile', () => {
  put(['alpha,beta', '1,2']);
  const said = run(['check', week]);
  expect(said.code).toBe(1);
  expect(said.note).toContain(`"pressure-plan adopt ${join(week, 'opponent.csv')}" drafts it from the values`);
});
