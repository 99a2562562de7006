import type { Film } from '../../../game/film.ts';
import type { SituationCuts } from '../../../game/week-settings.ts';
import { clusteredMean } from '../../../stats/clustered-mean.ts';
import { multiclassLogLoss } from '../../../stats/scores.ts';
import { NOT_KNOWN } from '../../snap/not-known.ts';
import { fitChain } from '../chain.ts';
import type { ChainFit } from '../chain-fit.ts';
import { nodesOfFirst } from '../chain-nodes.ts';
import { type ChainTally, tallyGames } from '../chain-tally.ts';
import { classifiedCodes } from '../classified-codes.ts';
import type { FittedTarget, ForecastFilm } from '../forecast-film.ts';
import type { BacktestTarget, BacktestVerdict } from '../forecast-result.ts';
import { splitByRunOrPass } from '../split-by-run-or-pass.ts';
import { TARGET_STRENGTHS } from '../target-strengths.ts';
import { type BacktestWindow, backtestWindows } from './backtest-window.ts';
import type { Predict } from './forecast-method.ts';
import { plainShares } from './plain-shares.ts';
import { withoutOutcome } from './without-outcome.ts';

/** The opponent's film as the forecast read it, and the forecast to be judged. */
export interface VerdictInput {
  readonly film: ForecastFilm;
  /** The opponent's chart of that film. */
  readonly chart: Film;
  readonly cuts: SituationCuts;
  /** The chains before the look, as fitted to all of it. */
  readonly fitted: readonly FittedTarget[];
}

/**
 * Judges the page's forecast on the opponent's own games, each forecast from the others (from the fifth game on: from
 * the ones before it) and the archive, against three plainer ways to guess. Null when nothing was charted in two games.
 */
export function backtestVerdict(input: VerdictInput): BacktestVerdict | null {
  const games = input.film.ownGames.map((game) => ({ ...game, offense: '', season: 0 }));
  const windows = backtestWindows(games, { trainOn: 'all', archive: 'others' });
  const targets = input.fitted.flatMap((fitted) => judge(input, fitted, windows));
  return targets.length === 0 ? null : { targets };
}

interface Losses {
  readonly snaps: number;
  readonly model: number;
  readonly plainRate: number;
  readonly downAndDistance: number;
  readonly rawCell: number;
}

/** Fewer games give no standard error. */
const LEAST_FOR_ERROR = 3;

function judge(input: VerdictInput, fitted: FittedTarget, windows: readonly BacktestWindow[]): BacktestTarget[] {
  const games = windows.flatMap((window) => gameLosses(input, fitted, window));
  if (games.length === 0) return [];
  const differences = games.map(({ model, plainRate }) => model - plainRate);
  const { mean, standardError } = clusteredMean(
    differences,
    differences.map((_, i) => i),
  );
  const meanOf = (loss: (game: Losses) => number) => games.reduce((sum, game) => sum + loss(game), 0) / games.length;
  return [
    {
      target: fitted.definition.target,
      games: games.length,
      snaps: games.reduce((sum, { snaps }) => sum + snaps, 0),
      model: meanOf(({ model }) => model),
      plainRate: meanOf(({ plainRate }) => plainRate),
      downAndDistance: meanOf(({ downAndDistance }) => downAndDistance),
      rawCell: meanOf(({ rawCell }) => rawCell),
      gamesWon: differences.filter((difference) => difference < 0).length,
      difference: mean ?? 0,
      standardError: games.length < LEAST_FOR_ERROR ? null : standardError,
    },
  ];
}

type Games = Pick<BacktestWindow, 'test' | 'own'>;

/** The own games as they would be read had nothing of the game to be forecast been charted. */
function tallyWithout({ chart, cuts }: VerdictInput, { definition, tree, target }: FittedTarget, { test, own }: Games) {
  const codes = classifiedCodes(definition, withoutOutcome(chart, test.rows), cuts);
  const games = own.map((game) => game.rows);
  return tallyGames(tree, { codes, classes: target.classes }, games);
}

interface TalliedGames {
  readonly own: ChainTally;
  readonly games: Games;
}

/** The page's forecast of a game it has not seen: answers follow run or pass there too. */
function pageForecast(input: VerdictInput, fitted: FittedTarget, { own, games }: TalliedGames): ChainFit {
  const { definition, tree, archive, base } = fitted;
  const strengths = TARGET_STRENGTHS[definition.target].plan;
  const nodes = nodesOfFirst(tree, input.film.ownSize);
  const fit = fitChain({ tree, own, archive, strengths, nodes, ...(base && { base }) });
  const runOrPass = input.fitted.find((other) => other.definition.target === 'run_or_pass');
  if (definition.runs === undefined || runOrPass === undefined) return fit;
  const charted = tallyWithout(input, runOrPass, games);
  return splitByRunOrPass(fit, pageForecast(input, runOrPass, { own: charted, games }), definition);
}

/** None where the target was not charted in the game, or in none of the games it would be forecast from. */
function gameLosses(input: VerdictInput, fitted: FittedTarget, { test, own }: Games): Losses[] {
  const { tree, target } = fitted;
  const { classes } = target;
  const rows = test.rows.filter((row) => target.codes[row] !== NOT_KNOWN);
  const tally = tallyWithout(input, fitted, { test, own });
  if (rows.length === 0 || tally.games[0] === 0) return [];
  const { shares } = pageForecast(input, fitted, { own: tally, games: { test, own } });
  const outcomes = rows.map((row) => target.codes[row] as number);
  const lossOf = (predict: Predict) => multiclassLogLoss(rows.map(predict), outcomes);
  const plainLoss = (depth: number) => lossOf(plainShares({ tree, tally, depth }));
  const nodeShares = (node: number) => shares.subarray(node * classes, (node + 1) * classes);
  return [
    {
      snaps: rows.length,
      model: lossOf((row) => nodeShares(tree.nodeOf[row] as number)),
      plainRate: plainLoss(0),
      downAndDistance: plainLoss(1),
      rawCell: plainLoss(Number.POSITIVE_INFINITY),
    },
  ];
}
