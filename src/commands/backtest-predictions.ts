import { stat } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import type { Chart } from '../ingest/chart.ts';
import { type CsvCell, toCsv } from '../ingest/write-csv.ts';
import type { ReplayedGame } from '../pressure/forecast/backtest/backtest.ts';
import type { Predict } from '../pressure/forecast/backtest/forecast-method.ts';
import { NOT_KNOWN } from '../pressure/snap/not-known.ts';
import { CommandProblem } from './exit-code.ts';
import { writeFiles } from './write-files.ts';

/** What a backtest forecast, snap by snap, on its way to a file. */
export interface PredictionFile {
  readonly add: (game: ReplayedGame) => void;
  /** Writes all or nothing; returns the paths written. */
  readonly write: () => Promise<string[]>;
}

/** Columns of the file; the shares are those of the chains, with the archive where there is one. */
export const PREDICTION_COLUMNS = [
  'offense',
  'game',
  'file',
  'row',
  'target',
  'before_the_look',
  'with_the_look',
  'happened',
] as const;

/**
 * One line for every snap and target of the games forecast: the shares of both chains by class, and the class that came,
 * blank where it was not charted or the question did not arise.
 *
 * @throws CommandProblem when its folder is not there, before anything is worked out
 */
export async function predictionFile(path: string, chart: Chart): Promise<PredictionFile> {
  await requirePlace(path);
  const pieces = [toCsv([PREDICTION_COLUMNS])];
  return {
    add: (game) => void pieces.push(toCsv(gameRows(game, chart))),
    write: () => writeFiles(dirname(path), [{ name: basename(path), text: pieces.join('') }]),
  };
}

async function requirePlace(path: string): Promise<void> {
  const folder = await stat(dirname(path)).catch(() => null);
  if (!folder?.isDirectory())
    throw new CommandProblem('usage', `there is no folder ${dirname(path)} to write ${path} into`);
  const there = await stat(path).catch(() => null);
  if (there?.isDirectory()) throw new CommandProblem('usage', `${path} is a folder; name the file of the predictions`);
}

function gameRows({ definition, game, forecasts, charted }: ReplayedGame, chart: Chart): CsvCell[][] {
  const plan = forecasts.get('chain_plan_archive') ?? forecasts.get('chain_plan_own');
  const line = forecasts.get('chain_line_archive') ?? forecasts.get('chain_line_own');
  return game.rows.map((row) => {
    const came = charted.codes[row] ?? NOT_KNOWN;
    return [
      game.offense,
      game.game,
      chart.sources[chart.sourceOf[row] ?? 0],
      chart.rowOf[row],
      definition.target,
      shareWords(plan, row, definition.classes),
      shareWords(line, row, definition.classes),
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
