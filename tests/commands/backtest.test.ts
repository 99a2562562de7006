import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BacktestOptions, backtest } from '../../src/commands/backtest.ts';
import type { Terminal } from '../../src/commands/terminal.ts';
import { toCsv } from '../../src/ingest/write-csv.ts';
import { UserProblem } from '../../src/season/user-problem.ts';
import { type InventedOffense, inventedFilm } from '../pressure/forecast/backtest/invented-film.ts';

const folder = mkdtempSync(join(tmpdir(), 'backtest-'));
const at = (name: string) => join(folder, name);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const HEADERS = [
  'offense',
  'game',
  'week',
  'snap',
  'down',
  'to_go',
  'ball_on',
  'quarterback_depth',
  'play_kind',
] as const;

function sheet(name: string, offenses: readonly InventedOffense[], seed = name): string {
  const film = inventedFilm(offenses, seed);
  const rows = film.map((record, i) =>
    HEADERS.map((header) => ({ ...record, snap: i + 1, ball_on: 'own 35' })[header]),
  );
  writeFileSync(at(name), toCsv([HEADERS, ...rows]));
  return at(name);
}

async function run(paths: readonly string[], options: BacktestOptions = {}) {
  const said = { out: '', note: '' };
  const terminal: Terminal = {
    out: (text) => {
      said.out += text;
    },
    note: (line) => {
      said.note += `${line}\n`;
    },
    progress: () => undefined,
    today: '2026-10-23',
  };
  const code = await backtest(paths, options, terminal);
  return { code, ...said };
}

async function problemOf(paths: readonly string[], options: BacktestOptions = {}): Promise<UserProblem> {
  const problem = await run(paths, options).then(
    () => undefined,
    (error: unknown) => error,
  );
  if (!(problem instanceof UserProblem)) throw new Error(`no problem was told: ${String(problem)}`);
  return problem;
}

const offense = (name: string, games: number): InventedOffense => ({ name, games, snaps: 30, runs: 0.5 });
let two = '';
beforeAll(() => {
  two = sheet('two.csv', [offense('Ash Grove', 6), offense('=Birch Hill', 3)]);
});

describe('backtest', () => {
  it('prints a table of every charted target and says which were never charted', async () => {
    const { code, out } = await run([two]);
    expect(code).toBe(0);
    expect(out).toContain('5 games of 2 offenses forecast, 150 snaps in all.');
    expect(out).toContain('2 games, of each offense the fifth on: forecast from up to 4 games before it.');
    expect(out).toContain('3 games of offenses with fewer than five: each from all their others, later ones too.');
    expect(out).toMatch(/^Pass: 150 snaps in 5 games; not charted or not told on 0$/m);
    expect(out).toMatch(/^the chain before the look, with the archive {2,}0\.\d{4} /m);
    expect(out).toMatch(/^Motion or shift: not charted on any of 150 snaps$/m);
  });

  it('writes one line for every snap and target, with the log loss that is printed', async () => {
    const { out } = await run([two], { predictions: at('said.csv'), json: true });
    const { data } = Papa.parse<Record<string, string>>(readFileSync(at('said.csv'), 'utf8'), {
      header: true,
      skipEmptyLines: true,
    });
    const result = JSON.parse(out);
    const judged = result.targets.filter((target: { snaps: number }) => target.snaps > 0);
    expect(data).toHaveLength(150 * judged.length);
    const lines = data.filter((line) => line['target'] === 'run_or_pass');
    const lossOf = (line: Record<string, string>) =>
      -Math.log(Number(new RegExp(`${line['happened']}=([.\\d]+)`).exec(line['before_the_look'] ?? '')?.[1]));
    const names = new Set(lines.map((line) => line['game']));
    const games = [...names].map((name) => lines.filter((line) => line['game'] === name));
    const means = games.map((game) => game.reduce((sum, line) => sum + lossOf(line), 0) / game.length);
    const method = judged
      .find((target: { target: string }) => target.target === 'run_or_pass')
      .methods.find(({ id }: { id: string }) => id === 'chain_plan_archive');
    expect(means).toHaveLength(5);
    expect(means.reduce((sum, mean) => sum + mean, 0) / 5).toBeCloseTo(method.logLoss, 5);
  });

  it('says what became of the tells when asked to', async () => {
    expect((await run([two])).out).not.toContain('Tells:');
    expect((await run([two], { tells: true, sample: '2' })).out).toMatch(/^Tells: found before \d of 2 games, /m);
  });

  it('writes no cell that a spreadsheet would run', async () => {
    await run([two], { predictions: at('safe.csv') });
    const { data } = Papa.parse<string[]>(readFileSync(at('safe.csv'), 'utf8'), { skipEmptyLines: true });
    expect(data.flat().filter((cell) => /^[=+@\t\r-]/.test(cell))).toEqual([]);
    expect(data.flat()).toContain("'=Birch Hill");
  });

  it('leaves blank what did not happen or was not charted', async () => {
    await run([two], { predictions: at('blank.csv') });
    const lines = readFileSync(at('blank.csv'), 'utf8').split('\r\n');
    const ran = lines.filter((line) => line.includes(',run_or_pass,') && line.endsWith(',run')).length;
    const notAsked = lines.filter((line) => line.includes(',screen,') && line.endsWith(',')).length;
    expect(notAsked).toBeGreaterThanOrEqual(ran);
    expect(ran).toBeGreaterThan(20);
  });

  it('is the same in every run, and of a sample by its seed', async () => {
    expect(await run([two])).toEqual(await run([two]));
    const sampled = (seed: string) => run([two], { sample: '2', seed });
    expect(await sampled('3')).toEqual(await sampled('3'));
    expect((await sampled('3')).out).toContain('2 games of');
  });

  it('tests the opponent of a week folder against the archive of its season', async () => {
    const { code, out } = await run(['data/demo/season/week-09']);
    expect(code).toBe(0);
    expect(out).toContain('4 games of 1 offense forecast');
    expect(out).toContain('Archive: film of the other offenses');
    expect(out).toContain('with the archive');
  });

  it('reads of a folder only sheets of other offenses', async () => {
    mkdirSync(at('season'), { recursive: true });
    writeFileSync(at('season/film.csv'), readFileSync(two));
    for (const name of ['ours.csv', 'live.csv', 'league-counts.csv'])
      writeFileSync(at(`season/${name}`), 'no,snaps\r\n1,2\r\n');
    expect(await run([at('season')])).toEqual({ ...(await run([two])), note: '' });
  });

  it('counts a sheet once that is named twice', async () => {
    expect((await run([two, two])).out).toBe((await run([two])).out);
  });

  it('takes the earlier paths for the archive when each is a season', async () => {
    const last = sheet('last.csv', [offense('Ash Grove', 5), offense('Dunmore', 5)]);
    const { out } = await run([last, two], { earlierSeasons: true, json: true });
    expect(JSON.parse(out)).toMatchObject({ games: 1 + 1 + 2 + 3, withArchive: 5, archive: 'earlier_seasons' });
  });

  it('warns of seasons mixed up', async () => {
    const last = sheet('mixed.csv', [offense('Ash Grove', 5)]);
    const other = readFileSync(last, 'utf8').replaceAll('Ash Grove week', 'last year week');
    writeFileSync(last, other);
    expect((await run([two, last])).note).toContain('Ash Grove has two games in week 1');
  });

  it('reads foreign sheets by a profile', async () => {
    const foreign = readFileSync(two, 'utf8').replace('quarterback_depth,play_kind', 'where,what');
    writeFileSync(at('foreign.csv'), foreign);
    const columns = HEADERS.map((name) => {
      const header = name === 'play_kind' ? 'what' : name === 'quarterback_depth' ? 'where' : name;
      return `  ${name}: ${header}`;
    });
    writeFileSync(at('profile.yaml'), `columns:\n${columns.join('\n')}\n`);
    const { out } = await run([at('foreign.csv')], { profile: at('profile.yaml') });
    expect(out).toBe((await run([two])).out);
  });

  it('ends with 1 when rows had to be left out, and says which', async () => {
    writeFileSync(at('faulty.csv'), `${readFileSync(two, 'utf8')}Ash Grove,last,9,999,7,10,own 35,shotgun,run\r\n`);
    const { code, note } = await run([at('faulty.csv')]);
    expect(code).toBe(1);
    expect(note).toMatch(/down.*"7"/);
  });
});

describe('a backtest that cannot be made', () => {
  it('names a path, profile or predictions folder that is not there', async () => {
    expect(await problemOf([at('nowhere.csv')])).toMatchObject({
      kind: 'usage',
      message: `there is no file or folder ${at('nowhere.csv')}`,
    });
    expect((await problemOf([two], { profile: at('none.yaml') })).message).toContain('there is no profile');
    const problem = await problemOf([two], { predictions: join(folder, 'no', 'such', 'file.csv') });
    expect(problem).toMatchObject({ kind: 'usage' });
    expect(problem.message).toContain('there is no folder');
    mkdirSync(at('taken'), { recursive: true });
    expect((await problemOf([two], { predictions: at('taken') })).message).toContain('is a folder');
  });

  it('says that a single game, or none, can be judged by nothing', async () => {
    const one = sheet('one.csv', [offense('Ash Grove', 1)]);
    expect(await problemOf([one])).toMatchObject({ kind: 'faults' });
    expect((await problemOf([one])).message).toContain('no offense has two games');
    writeFileSync(at('empty.csv'), `${HEADERS.join(',')}\r\n`);
    expect((await problemOf([at('empty.csv')])).message).toContain('no usable snap');
    mkdirSync(at('bare'), { recursive: true });
    expect((await problemOf([at('bare')])).message).toContain('holds no sheet');
  });

  it.each([
    [{ games: '0' }, /--games takes/],
    [{ games: 'many' }, /--games takes/],
    [{ sample: '-1' }, /--sample takes/],
    [{ sample: '2', seed: 'x' }, /--seed takes/],
    [{ seed: '4' }, /give both/],
    [{ earlierSeasons: true }, /no column tells the season/],
  ])('refuses %j as wrong usage', async (options, said) => {
    const problem = await problemOf([two], options);
    expect(problem.kind).toBe('usage');
    expect(problem.message).toMatch(said);
  });

  it('refuses earlier seasons of a week folder', async () => {
    const problem = await problemOf([two, 'data/demo/season/week-09'], { earlierSeasons: true });
    expect(problem.message).toContain('does not say its season');
  });
});
