import { stat } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import type { Film } from '../game/film.ts';
import { type CsvCell, toCsv } from '../ingest/write-csv.ts';
import type { ReplayedGame } from '../pressure/forecast/backtest/backtest.ts';
import type { Predict } from '../pressure/forecast/backtest/forecast-method.ts';
import { NOT_KNOWN } from '../pressure/snap/not-known.ts';
import { UserProblem } from '../season/user-problem.ts';
import { writeFiles } from './write-files.ts';

/** What a backtest forecast, snap by snap, on its way to a file. */
export interface PredictionFile {
  /** Takes down one game of one target. */
  readonly add: (game: ReplayedGame) => void;
  /** Writes all or nothing; returns the paths written. */
  readonly write: () => Promise<string[]>;
}

/** A column of forecasts, and the methods that may fill it: the first that could forecast the game does. */
interface ShareColumn {
  readonly header: string;
  readonly methods: readonly string[];
}

/** The chains, with the archive where there is one. */
const CHAIN_COLUMNS: readonly ShareColumn[] = [
  { header: 'before_the_look', methods: ['chain_plan_archive', 'chain_plan_own'] },
  { header: 'with_the_look', methods: ['chain_line_archive', 'chain_line_own'] },
];

/**
 * One line for every snap and target of the games forecast: the shares of both chains by class, and the class that came,
 * blank where it was not charted or the question did not arise.
 *
 * @throws UserProblem when its folder is not there, before anything is worked out
 */
export async function predictionFile(path: string, chart: Film): Promise<PredictionFile> {
  await requirePlace(path);
  const headers = CHAIN_COLUMNS.map(({ header }) => header);
  const pieces = [toCsv([['offense', 'game', 'file', 'row', 'target', ...headers, 'happened']])];
  return {
    add: (game) => void pieces.push(toCsv(gameRows(game, chart))),
    write: () => writeFiles(dirname(path), [{ name: basename(path), text: pieces.join('') }]),
  };
}

async function requirePlace(path: string): Promise<void> {
  const folder = await stat(dirname(path)).catch(() => null);
  if (!folder?.isDirectory())
    throw new UserProblem('usage', `there is no folder ${dirname(path)} to write ${path} into`);
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory()) throw new UserProblem('usage', `${path} is a folder; name the file of the predictions`);
}

function gameRows(replayed: ReplayedGame, chart: Film): CsvCell[][] {
  const { definition, game, forecasts, charted } = replayed;
  const known = CHAIN_COLUMNS.map(({ methods }) => methods.flatMap((id) => forecasts.get(id) ?? [])[0]);
  return game.rows.map((row) => {
    const came = charted.codes[row] ?? NOT_KNOWN;
    return [
      game.offense,
      game.game,
      chart.sources[chart.sourceOf[row] as number],
      chart.rowOf[row],
      definition.target,
      ...known.map((predict) => shareWords(predict, row, definition.classes)),
      came === NOT_KNOWN ? undefined : definition.classes[came],
    ];
  });
}

/** @example "run=0.412345 pass=0.587655" */
function shareWords(predict: Predict | undefined, row: number, classes: readonly string[]): string | undefined {
  if (predict === undefined) return undefined;
  const shares = predict(row);
  return classes.map((name, k) => `${name}=${(shares[k] as number).toFixed(6)}`).join(' ');
}
