import { join } from 'node:path';
import { agree } from '../../src/commands/agree.ts';
import { backtest } from '../../src/commands/backtest.ts';
import { calls } from '../../src/commands/calls.ts';
import { tendency } from '../../src/commands/tendency.ts';
import type { Random } from '../../src/stats/random.ts';
import { type Tried, tryCommand } from './command-trial.ts';
import { NASTY_TEXTS } from './nasty-text.ts';
import { smallSeason, withSeason } from './small-season.ts';
import { pick, spoiltSheet, spoiltYaml } from './spoilt.ts';

const season = smallSeason();
const WEEK = 'week-09';
const opponent = season['week-09/opponent.csv']!;
const own = season['ours.csv']!;

export async function attemptAgree(random: Random): Promise<Tried> {
  const game = pick([opponent, own, season['week-09/live.csv']!], random);
  const sheets = [0, 1].map((i) =>
    random.uniform() < 0.6 ? { what: `chart ${i}`, bytes: game } : spoiltSheet(game, random),
  );
  const files = { 'a.csv': sheets[0]!.bytes, 'b.csv': random.uniform() < 0.2 ? opponent : sheets[1]!.bytes };
  const outcome = await withSeason(files, (folder) =>
    tryCommand({
      season: folder,
      into: [],
      run: (terminal) => agree({ first: join(folder, 'a.csv'), second: join(folder, 'b.csv') }, {}, terminal),
    }),
  );
  return { what: sheets.map(({ what }) => what).join(' / '), outcome };
}

const TARGETS = ['screen', 'run', 'pass', 'any_run', 'slide=left', 'motion=across', 'gain=3', 'result=sack'];
const CONDITIONS = ['third_long', 'down=3', 'red_zone', 'formation=gun', 'quick', 'ball_on=own 35', 'clock=12:00'];
const SPLITS = ['receivers', 'situation', 'coverage', 'down', 'rushers', 'hash', 'game', 'personnel'];

/** A sound question, of which every third has a word in it that may mean nothing. */
export async function attemptTendency(random: Random): Promise<Tried> {
  const odd = () => pick(NASTY_TEXTS, random) + pick(['', '=', '=1', '=left'], random);
  const word = (words: readonly string[]) => (random.uniform() < 0.12 ? odd() : pick(words, random));
  const when = Array.from({ length: random.integer(3) }, () => word(CONDITIONS));
  const question = { of: word(TARGETS), when, by: word(SPLITS) };
  const json = random.uniform() < 0.3;
  const outcome = await withSeason(season, (folder) =>
    tryCommand({
      season: folder,
      into: [],
      run: (terminal) => tendency(join(folder, WEEK), { ...question, json }, terminal),
    }),
  );
  return { what: JSON.stringify(question).slice(0, 200), outcome };
}

/** A spoilt defense.yaml drawn as a page. */
export async function attemptCalls(random: Random): Promise<Tried> {
  const { what, bytes } = spoiltYaml(String(Buffer.from(season['defense.yaml']!)), random);
  const files = { ...season, 'defense.yaml': bytes };
  const outcome = await withSeason(files, (folder) =>
    tryCommand({ season: folder, into: ['out/'], run: (terminal) => calls(folder, {}, terminal) }),
  );
  return { what, outcome };
}

/** Games replayed from a spoilt sheet, alone or with its season. */
export async function attemptBacktest(random: Random): Promise<Tried> {
  const name = pick(['archive/one.csv', 'week-09/opponent.csv'], random);
  const { what, bytes } = spoiltSheet(season[name]!, random);
  const outcome = await withSeason({ ...season, [name]: bytes }, (folder) => {
    const paths = [join(folder, pick([name, WEEK, 'archive'], random))];
    return tryCommand({
      season: folder,
      into: [],
      run: (terminal) => backtest(paths, { games: '1', json: true }, terminal),
    });
  });
  return { what: `${name}: ${what}`, outcome };
}
