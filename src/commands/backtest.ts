import { describeProblems } from '../ingest/row-problem.ts';
import { backtest as judge } from '../pressure/forecast/backtest/backtest.ts';
import { type BacktestFilm, backtestFilm, sameWeekTwice } from '../pressure/forecast/backtest/backtest-film.ts';
import { backtestWindows, type WindowRule } from '../pressure/forecast/backtest/backtest-window.ts';
import { UserProblem } from '../season/user-problem.ts';
import { type BacktestCharts, readBacktestCharts } from './backtest-charts.ts';
import { predictionFile } from './backtest-predictions.ts';
import { backtestText } from './backtest-text.ts';
import { EXIT } from './exit-code.ts';
import { progressBar } from './progress-bar.ts';
import { requireSeed } from './seed-option.ts';
import type { Terminal } from './terminal.ts';

/** Flags of the backtest command. */
export interface BacktestOptions {
  readonly profile?: string;
  readonly games?: string;
  readonly earlierSeasons?: boolean;
  readonly sample?: string;
  readonly seed?: string;
  readonly predictions?: string;
  readonly tells?: boolean;
  readonly json?: boolean;
}

/** Problems named before the rest is only counted. */
const NAMED = 12;

/** Forecasts past games of charted offenses and prints how every method did. */
export async function backtest(
  paths: readonly string[],
  options: BacktestOptions,
  terminal: Terminal,
): Promise<number> {
  const trainOn = requireGames(options.games ?? '4');
  const sample = requireSample(options);
  requireSeasons(paths, options);
  const charts = await readBacktestCharts(paths, options.profile);
  tellProblems(charts, terminal);
  const film = filmOf(charts, options, terminal);
  const archive = options.earlierSeasons ? 'earlier_seasons' : 'others';
  const rule: WindowRule = { trainOn, archive, offenses: charts.tested };
  requireWindows(film, rule);
  const file = options.predictions === undefined ? null : await predictionFile(options.predictions, charts.chart);
  const bar = progressBar('Forecasting past games', terminal);
  const tells = options.tells ? 'replay' : undefined;
  const result = judge({ film, rule, sample, tells, onProgress: bar.step, onGame: file?.add });
  bar.end();
  for (const path of (await file?.write()) ?? []) terminal.note(`Wrote ${path}`);
  terminal.out(
    options.json
      ? `${JSON.stringify({ paths, archive, ...result }, null, 2)}\n`
      : backtestText(result, archiveWords(result.withArchive, options)),
  );
  return charts.faults > 0 ? EXIT.faults : EXIT.fine;
}

function requireGames(text: string): number | 'all' {
  if (text === 'all') return 'all';
  if (/^[1-9]\d{0,2}$/.test(text)) return Number(text);
  throw new UserProblem('usage', `--games takes a whole number from 1 on, or "all"; got "${text}"`);
}

/** Seed of the sample when none is given. */
const DEFAULT_SEED = '1';

function requireSample({ sample, seed }: BacktestOptions) {
  if (sample === undefined) {
    if (seed !== undefined) throw new UserProblem('usage', '--seed decides which games --sample draws; give both');
    return undefined;
  }
  if (!/^[1-9]\d{0,6}$/.test(sample)) {
    throw new UserProblem('usage', `--sample takes a number of games from 1 on, got "${sample}"`);
  }
  return { games: Number(sample), seed: requireSeed(seed ?? DEFAULT_SEED) };
}

function requireSeasons(paths: readonly string[], options: BacktestOptions): void {
  if (!options.earlierSeasons || paths.length > 1) return;
  throw new UserProblem(
    'usage',
    'no column tells the season, so --earlier-seasons takes each path for one season, the earliest first; give two or more',
  );
}

function tellProblems({ problems, tallies }: BacktestCharts, terminal: Terminal): void {
  if (tallies > 0)
    terminal.note('Tallies of other offenses are not used here: they hold no snaps, only film is replayed');
  for (const line of describeProblems(problems, NAMED)) terminal.note(line);
}

function filmOf(charts: BacktestCharts, options: BacktestOptions, terminal: Terminal): BacktestFilm {
  if (options.earlierSeasons && charts.weeks) {
    throw new UserProblem(
      'usage',
      "--earlier-seasons takes sheets or folders of sheets: a week folder's archive does not say its season",
    );
  }
  const film = backtestFilm(charts.chart, charts.cuts, options.earlierSeasons ? charts.seasons : undefined);
  const [twice] = sameWeekTwice(film.games);
  if (twice) {
    terminal.note(
      `${twice.offense} has two games in week ${twice.week}: if these are seasons mixed up, give one path a season and --earlier-seasons`,
    );
  }
  return film;
}

function requireWindows({ games }: BacktestFilm, rule: WindowRule): void {
  if (backtestWindows(games, rule).length > 0) return;
  const found = games.length === 0 ? 'no usable snap was found' : 'no offense has two games';
  throw new UserProblem(
    'faults',
    `nothing can be judged: ${found}. A sheet names its games in the column "game" and its offenses in "offense"; a sheet that names none is one offense of its own.`,
  );
}

function archiveWords(withArchive: number, { earlierSeasons }: BacktestOptions): string {
  if (withArchive === 0) return 'Archive: none, there is no film of other offenses.';
  if (earlierSeasons) return 'Archive: film of other offenses in the paths named before; each path is one season.';
  return 'Archive: film of the other offenses, some of it from later in the season.';
}
