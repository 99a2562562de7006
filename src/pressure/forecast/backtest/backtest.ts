import { createRandom } from '../../../stats/random.ts';
import { NOT_KNOWN } from '../../snap/not-known.ts';
import { runOrPassCodes } from '../../snap/run-or-pass.ts';
import type { TargetCodes } from '../chain-tally.ts';
import { RUN_OR_PASS, TARGET_DEFINITIONS, type TargetDefinition } from '../target.ts';
import { archiveTallies } from './archive-tallies.ts';
import { type BacktestFilm, type BacktestGame, chartedCodes, codesWithoutGame } from './backtest-film.ts';
import type { BacktestResult, TargetScore } from './backtest-result.ts';
import { type BacktestWindow, backtestWindows, byOffense, type WindowRule } from './backtest-window.ts';
import { type CountCheck, countChecks, coverageOf } from './count-coverage.ts';
import type { ForecastMethod, Predict } from './forecast-method.ts';
import { FORECAST_METHODS } from './forecast-methods.ts';
import { type MethodRecord, methodScore, recordGame, type ScoredSnaps } from './method-record.ts';
import { tellRecord } from './tell-record.ts';
import { replayTells } from './tell-replay.ts';
import { type WindowFilm, windowFilm } from './window-film.ts';

/** What is judged, and how. */
export interface BacktestInput {
  readonly film: BacktestFilm;
  readonly rule: WindowRule;
  /** {@link FORECAST_METHODS} when absent. */
  readonly methods?: readonly ForecastMethod[] | undefined;
  /** Every target of the report when absent. */
  readonly targets?: readonly TargetDefinition[] | undefined;
  /** Judge only so many games, drawn at random. */
  readonly sample?: { readonly games: number; readonly seed: number } | undefined;
  /** Whether to look for tells before every game as well, and for what became of them: about as long as all the rest. */
  readonly tells?: 'replay' | undefined;
  /** Called with how many of how many steps are done. */
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
  /** Given every game of every target as it is forecast. */
  readonly onGame?: ((game: ReplayedGame) => void) | undefined;
}

/** A game forecast for one target, with what happened. */
export interface ReplayedGame {
  readonly definition: TargetDefinition;
  readonly game: BacktestGame;
  /** By method id; a method that had nothing to learn from is absent. */
  readonly forecasts: ReadonlyMap<string, Predict>;
  /** Class of every snap of the film as charted; 255 where it is not known. */
  readonly charted: TargetCodes;
}

/**
 * Forecasts past games from the games a staff would have had and scores what every method said. A game left out is
 * left out of everything: of the counts, of the archive, and of how a file's words are read.
 */
export function backtest(input: BacktestInput): BacktestResult {
  const { film, rule, targets = TARGET_DEFINITIONS } = input;
  const windows = sampled(backtestWindows(film.games, rule), input.sample);
  const parts = targets.length + (input.tells === undefined ? 0 : 1);
  const progress = stepper(windows.length * parts, input.onProgress);
  const judged = byOffense(film.games).filter(([first]) => first && (rule.offenses?.has(first.offense) ?? true));
  return {
    offenses: new Set(windows.map(({ test }) => test.offense)).size,
    games: windows.length,
    snaps: windows.reduce((sum, { test }) => sum + test.rows.length, 0),
    trainedOn: rule.trainOn,
    leftOneOut: windows.filter(({ kind }) => kind === 'left_one_out').length,
    singleGames: judged.filter((games) => games.length === 1).length,
    withArchive: windows.filter(({ archive }) => archive.length > 0).length,
    targets: targets.map((definition) => judgeTarget({ ...input, windows, definition, progress })),
    tells: input.tells === undefined ? null : tellRecord(replayTells(film, windows, progress), windows.length),
  };
}

function sampled(windows: readonly BacktestWindow[], sample: BacktestInput['sample']): readonly BacktestWindow[] {
  if (sample === undefined || sample.games >= windows.length) return windows;
  const numbers = createRandom(sample.seed).shuffle(windows.map((_, i) => i));
  const chosen = new Set(numbers.slice(0, sample.games));
  return windows.filter((_, i) => chosen.has(i));
}

function stepper(total: number, onProgress: BacktestInput['onProgress']): () => void {
  let done = 0;
  return () => onProgress?.(++done, total);
}

interface TargetTask extends BacktestInput {
  readonly windows: readonly BacktestWindow[];
  readonly definition: TargetDefinition;
  readonly progress: () => void;
}

function judgeTarget(task: TargetTask): TargetScore {
  const { film, windows, definition, methods = FORECAST_METHODS } = task;
  const charted = chartedCodes(film, definition);
  const records = methods.map((method): MethodRecord => ({ method, games: new Map(), stated: [], came: [] }));
  const checks: CountCheck[] = [];
  const filmOf = windowReader(film, { definition, charted });
  const runOrPassOf = definition.runs && windowReader(film, askedOf(film, RUN_OR_PASS));
  windows.forEach((window, at) => {
    const snaps = scoredSnaps(charted, window, at);
    if (snaps.rows.length > 0) {
      const unseen = filmOf(window, runOrPassOf?.(window));
      const forecasts = forecastGame(unseen, records, snaps);
      checks.push(...countChecks(unseen, snaps));
      task.onGame?.({ definition, game: window.test, forecasts, charted });
    }
    task.progress();
  });
  return {
    ...blanks(film, { definition, windows, charted }),
    methods: records.flatMap((record) => methodScore(record, records, charted.classes) ?? []),
    coverage: coverageOf(checks),
  };
}

interface AskedTarget {
  readonly definition: TargetDefinition;
  readonly charted: TargetCodes;
}

function askedOf(film: BacktestFilm, definition: TargetDefinition): AskedTarget {
  return { definition, charted: chartedCodes(film, definition) };
}

/** Reads windows for a target; windows that share an archive, read alike, share its tally. */
function windowReader(film: BacktestFilm, { definition, charted }: AskedTarget) {
  const shared = archiveTallies(film, definition.target, charted);
  return (window: BacktestWindow, runOrPass?: WindowFilm): WindowFilm => {
    const target = codesWithoutGame(film, { definition, charted }, window.test);
    const archive = readAlike(charted, target, window) ? shared : archiveTallies(film, definition.target, target);
    return windowFilm({ film, window, definition, target, archive, ...(runOrPass && { runOrPass }) });
  };
}

function forecastGame(window: WindowFilm, records: readonly MethodRecord[], snaps: ScoredSnaps) {
  const forecasts = new Map<string, Predict>();
  for (const record of records) {
    const predict = record.method.fit(window);
    if (predict === null) continue;
    forecasts.set(record.method.id, predict);
    recordGame(record, predict, snaps);
  }
  return forecasts;
}

function scoredSnaps({ codes, classes }: TargetCodes, { test }: BacktestWindow, window: number): ScoredSnaps {
  const rows = test.rows.filter((row) => codes[row] !== NOT_KNOWN);
  return { window, offense: test.offense, rows, outcomes: rows.map((row) => codes[row] as number), classes };
}

/** Whether the archive's snaps are read as they would be without the game. */
function readAlike(charted: TargetCodes, known: TargetCodes, { archive }: BacktestWindow): boolean {
  return archive.every(({ rows }) => rows.every((row) => charted.codes[row] === known.codes[row]));
}

interface JudgedTarget {
  readonly definition: TargetDefinition;
  readonly windows: readonly BacktestWindow[];
  readonly charted: TargetCodes;
}

const RUN = 0;

/** How many snaps were judged, and on how many the question may arise that nobody charted. */
function blanks(film: BacktestFilm, { definition, windows, charted }: JudgedTarget) {
  const runOrPass = runOrPassCodes(film.chart);
  const rows = windows.flatMap(({ test }) => test.rows);
  const known = (row: number) => charted.codes[row] !== NOT_KNOWN;
  const asked = (row: number) => definition.per === 'snap' || runOrPass[row] !== RUN;
  return {
    target: definition.target,
    classes: definition.classes,
    snaps: rows.filter(known).length,
    notCharted: rows.filter((row) => !known(row) && asked(row)).length,
    games: windows.filter(({ test }) => test.rows.some(known)).length,
  };
}
