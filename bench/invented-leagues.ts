// Next-game forecasts in invented leagues, where it is known how much offenses differ: run or pass and the answers, mean log
// loss, slope of calibration, and how often the 95% range of the whole game's count held, for the league's rate, own film
// alone and the forecast. Usage: npx tsx bench/invented-leagues.ts [LEAGUES_EACH]
import { filmFromRecords } from '../src/game/film.ts';
import { weekSettingsSchema } from '../src/game/week-settings.ts';
import { backtest } from '../src/pressure/forecast/backtest/backtest.ts';
import { backtestFilm } from '../src/pressure/forecast/backtest/backtest-film.ts';
import { FORECAST_METHODS } from '../src/pressure/forecast/backtest/forecast-methods.ts';
import { TARGET_DEFINITIONS, type TargetDefinition } from '../src/pressure/forecast/target.ts';
import { calibration } from '../src/stats/scores.ts';
import { type InventedLeague, inventedLeague } from './invented-league.ts';

const each = Number(process.argv[2] ?? 20);
const cuts = weekSettingsSchema.parse({ opponent: 'x' }).situations;
const METHODS = ['archive_rate', 'chain_plan_own', 'chain_plan_archive'];
const methods = FORECAST_METHODS.filter(({ id }) => METHODS.includes(id));
const asked = TARGET_DEFINITIONS.filter(({ target }) => target === 'run_or_pass' || target === 'answer');
const OPPONENTS = { average: 'average', option: 0.89, 'air raid': 0.16 } as const;

for (const gameToGame of [36, 18]) for (const spread of [0.05, 0.1, 0.18]) sweep(spread, gameToGame);

function sweep(spread: number, gameToGame: number): void {
  console.log(
    `\nrun-share spread ${spread}, one game worth ${gameToGame} snaps (log loss; slope; game ranges that held)`,
  );
  for (const [name, opponent] of Object.entries(OPPONENTS)) {
    for (const archive of [0, 2, 4, 8]) console.log(lineOf(name, { spread, gameToGame, opponent, archive, seed: '' }));
    const flat = { spread, gameToGame, opponent, archive: 8, seed: '', ignoresSituations: true };
    if (name === 'average') console.log(lineOf('ignores down and distance', flat));
  }
}

function lineOf(name: string, league: InventedLeague): string {
  const sums = asked.map(() => newSums());
  for (let i = 0; i < each; i++) {
    const chart = filmFromRecords(inventedLeague({ ...league, seed: `league ${i}` }));
    asked.forEach((definition, t) => {
      judge(chart, definition, sums[t] as Sums);
    });
  }
  const told = asked.map(({ target }, t) => `${target}: ${words(sums[t] as Sums, league.archive)}`);
  return `${name}, archive ${league.archive}: ${told.join(' || ')}`;
}

interface Sums {
  readonly losses: Map<string, number[]>;
  readonly stated: number[];
  readonly came: number[];
  held: number;
  ranges: number;
}

function newSums(): Sums {
  return { losses: new Map(METHODS.map((id) => [id, []])), stated: [], came: [], held: 0, ranges: 0 };
}

function judge(chart: ReturnType<typeof filmFromRecords>, definition: TargetDefinition, sums: Sums): void {
  const { targets } = backtest({
    film: backtestFilm(chart, cuts),
    rule: { trainOn: 4, archive: 'others', offenses: new Set(['Opponent']) },
    methods,
    targets: [definition],
    onGame: ({ game, forecasts, charted }) => {
      const predict = forecasts.get('chain_plan_archive') ?? forecasts.get('chain_plan_own');
      for (const row of predict ? game.rows : []) {
        sums.stated.push(predict?.(row)[0] ?? 0);
        sums.came.push(charted.codes[row] === 0 ? 1 : 0);
      }
    },
  });
  for (const { id, logLoss } of targets[0]?.methods ?? []) sums.losses.get(id)?.push(logLoss);
  const game = targets[0]?.coverage.find(({ size }) => size === 'game');
  sums.held += game?.covered ?? 0;
  sums.ranges += game?.intervals ?? 0;
}

function words({ losses, stated, came, held, ranges }: Sums, archive: number): string {
  const told = (id: string) => {
    const all = losses.get(id) ?? [];
    return all.length === 0 ? '-' : (all.reduce((sum, loss) => sum + loss, 0) / all.length).toFixed(4);
  };
  const forecast = told(archive === 0 ? 'chain_plan_own' : 'chain_plan_archive');
  const slope = calibration(stated, came).slope?.toFixed(2);
  return `league ${told('archive_rate')}, own film ${told('chain_plan_own')}, forecast ${forecast} (slope ${slope}), ranges ${(held / ranges).toFixed(3)}`;
}
