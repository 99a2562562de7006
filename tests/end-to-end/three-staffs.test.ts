import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from './program.ts';
import { bareWorkbook, endOf, middlingTsv, richCsv, trueSnaps } from './three-staffs.ts';

const SNAPS = trueSnaps(17);
const root = mkdtempSync(join(tmpdir(), 'staffs-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

type Test = (snap: (typeof SNAPS)[number]) => boolean;
const countOf = (test: Test) => SNAPS.filter(test).length;
const isKind =
  (...kinds: readonly string[]): Test =>
  ({ play }) =>
    kinds.includes(play.kind);
const isRun = isKind('run', 'quarterback_run');
const isPass: Test = (snap) => !isRun(snap);

/** A season with one staff's sheet, adopted with these answers. */
function adopted(name: string, sheet: string | Uint8Array, answers: Readonly<Record<string, string>>) {
  const week = join(root, name.replace('.', '-'), 'week-01');
  mkdirSync(week, { recursive: true });
  const file = join(week, name);
  writeFileSync(file, sheet);
  writeFileSync(join(week, 'week.yaml'), 'opponent: Cinder Vale\ninvented: true\n');
  const said = run([
    'adopt',
    file,
    ...Object.entries(answers).flatMap(([key, text]) => ['--answer', `${key}=${text}`]),
  ]);
  expect(said.code).toBe(0);
  return { week, said: said.out };
}

/** Count and denominator of the row of all snaps. */
function share(week: string, of: string, ...when: readonly string[]): readonly number[] {
  const asked = when.flatMap((condition) => ['--when', condition]);
  const said = run(['tendency', week, '--of', of, ...asked, '--by', 'down', '--json']);
  expect(said.note).toBe('');
  const { total } = JSON.parse(said.out);
  return [total.share.count, total.share.trials];
}

/** The film's counts in the report's forecast over all situations. */
function filmOf(week: string, target: string): Record<string, readonly number[]> {
  expect(run(['report', week]).code).toBe(0);
  const { forecast } = JSON.parse(readFileSync(join(week, 'out', 'report.json'), 'utf8'));
  const all = forecast.forecasts.find(
    (one: { target: string; situation: string }) => one.target === target && one.situation === 'all',
  );
  return Object.fromEntries(
    all.classes.map(({ name, film }: { name: string; film: { count: number; trials: number } }) => [
      name,
      [film.count, film.trials],
    ]),
  );
}

describe('a staff with a bare workbook', () => {
  let staff = { week: '', said: '' };
  beforeAll(() => {
    staff = adopted('opponent.xlsx', bareWorkbook(SNAPS), { 'find/ball_on': 'not charted', 'all/game': 'scout' });
  });

  it('may say that it charts no yard line, and hears what then is not known', () => {
    expect(staff.said).not.toContain('find/ball_on');
    const check = run(['check', staff.week]);
    expect(check.code).toBe(0);
    expect(check.out).toContain(
      'no column holds ball_on; without it backed up, red zone, goal line and first and goal are not known',
    );
  });

  it('reads every snap, with the results of its passes, and every page agrees with the truth', () => {
    expect(share(staff.week, 'pass')).toEqual([countOf(isPass), 182]);
    expect(share(staff.week, 'pass', 'down=3')).toEqual([
      countOf((snap) => isPass(snap) && snap.down === 3),
      countOf(({ down }) => down === 3),
    ]);
    for (const [code, word] of [
      ['C', 'complete'],
      ['X', 'incomplete'],
      ['SK', 'sack'],
      ['INT', 'interception'],
    ] as const) {
      expect(share(staff.week, `result=${word}`)).toEqual([countOf((snap) => endOf(snap) === code), 182]);
    }
    expect(filmOf(staff.week, 'run_or_pass')).toEqual({ run: [countOf(isRun), 182], pass: [countOf(isPass), 182] });
  });
});

describe('a staff with a middling sheet of tabs', () => {
  let asked = '';
  let open = { week: '', said: '' };
  let staff = { week: '', said: '' };
  beforeAll(() => {
    const sheet = middlingTsv(SNAPS);
    open = adopted('opponent-asked.tsv', sheet, {});
    asked = open.said;
    staff = adopted('opponent.tsv', sheet, {
      side: 'strength',
      'all/game': 'Scout A, Scout B',
      'motion/Y': 'across',
    });
  });

  it('is asked whether numbering that starts again is a new game, what a side is, and what a motion is', () => {
    expect(asked).toContain('starts again at snap 92 of the sheet, so it holds 2 games');
    expect(asked).toMatch(
      /Column "Side" .* fits none of our columns for sure[\s\S]*One of: formation, hash, strength, concept, slide, not read/,
    );
    expect(asked).toContain('In motion (movement before the snap), what does "Y" mean?');
  });

  it('has no kind of motion counted before it says what a yes means, nor none where it says no', () => {
    for (const kind of ['none', 'shift', 'short', 'across', 'fast', 'back_out']) {
      const said = run(['tendency', open.week, '--of', `motion=${kind}`, '--by', 'down']);
      expect([said.code, said.note]).toEqual([2, expect.stringContaining('asks for motion, which is not charted')]);
    }
  });

  it('checks without a fault, every snap read', () => {
    const check = run(['check', staff.week]);
    expect([check.code, check.out]).toEqual([0, expect.stringContaining('Cinder Vale snaps read: 182; rows kept out')]);
  });

  it('keeps both games, with goal to go from the yard line', () => {
    expect(share(staff.week, 'pass', 'game=scout b')).toEqual([
      countOf((snap) => isPass(snap) && snap.game === 2),
      countOf(({ game }) => game === 2),
    ]);
    const goal: Test = ({ down, isGoal }) => down === 1 && isGoal;
    expect(countOf(goal)).toBeGreaterThan(3);
    expect(share(staff.week, 'any_run', 'first_goal')).toEqual([
      countOf((snap) => goal(snap) && isRun(snap)),
      countOf(goal),
    ]);
    expect(share(staff.week, 'strength=left')).toEqual([countOf(({ strength }) => strength === 'Lt'), 182]);
    expect(share(staff.week, 'motion=across')).toEqual([countOf(({ moved }) => moved), 182]);
  });

  it('gets a report that counts as the sheet does', () => {
    const film = filmOf(staff.week, 'answer');
    for (const kind of ['run', 'quarterback_run', 'screen', 'quick', 'dropback']) {
      expect([kind, film[kind]]).toEqual([kind, [countOf(isKind(kind)), 182]]);
    }
  });
});

describe('a staff with a rich sheet', () => {
  let asked = '';
  let staff = { week: '', said: '' };
  beforeAll(() => {
    asked = adopted('opponent-asked.csv', richCsv(SNAPS), {}).said;
    staff = adopted('opponent.csv', richCsv(SNAPS), { RB: 'back_action' });
  });

  it("answers the back's column by our column's name", () => {
    expect(asked).toContain('RB');
    expect(share(staff.week, 'back_action=blocks')).toEqual([
      countOf((snap) => isPass(snap) && snap.back === 'stays'),
      countOf(isPass),
    ]);
    expect(share(staff.week, 'back_action=releases_inside', 'quick')).toEqual([
      countOf((snap) => isKind('quick')(snap) && snap.back === 'thru'),
      countOf(isKind('quick')),
    ]);
  });

  it('checks without a fault, every snap read', () => {
    const check = run(['check', staff.week]);
    expect([check.code, check.out]).toEqual([0, expect.stringContaining('Cinder Vale snaps read: 182; rows kept out')]);
  });

  it('loses no snap to a word nobody knows, and is asked what it means', () => {
    const sideways = countOf(({ number }) => number % 9 === 0);
    expect(staff.said).toContain('what does "sideways" mean?');
    expect(share(staff.week, 'pass')).toEqual([countOf(isPass), 182]);
    expect(share(staff.week, 'motion=none')).toEqual([
      countOf(({ number, moved }) => number % 9 !== 0 && !moved),
      182 - sideways,
    ]);
  });

  it('gets a report that counts as the sheet does', () => {
    const film = filmOf(staff.week, 'back_job');
    expect(film['blocks']).toEqual([countOf((snap) => isPass(snap) && snap.back === 'stays'), countOf(isPass)]);
    expect(filmOf(staff.week, 'screen')['screen']).toEqual([countOf(isKind('screen')), countOf(isPass)]);
  });
});
