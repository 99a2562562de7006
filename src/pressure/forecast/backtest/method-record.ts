import { clusteredMean } from '../../../stats/clustered-mean.ts';
import { reliabilityBins } from '../../../stats/reliability.ts';
import { calibration, multiclassBrier, multiclassLogLoss } from '../../../stats/scores.ts';
import type { MethodScore, PairedDifference } from './backtest-result.ts';
import type { ForecastMethod, Predict } from './forecast-method.ts';

/** How a method did in one game. */
export interface GameScore {
  readonly offense: string;
  readonly snaps: number;
  /** Mean of a snap, in nats. */
  readonly logLoss: number;
  readonly brier: number;
  readonly right: number;
}

/** What a method forecast in every game so far, for one target. */
export interface MethodRecord {
  readonly method: ForecastMethod;
  /** By number of the window; a window the method had nothing to learn from is absent. */
  readonly games: Map<number, GameScore>;
  /** Stated shares and whether the class came: of two classes the first only, else of every class. */
  readonly stated: number[];
  readonly came: number[];
}

/** The snaps of a game that can be scored. */
export interface ScoredSnaps {
  readonly window: number;
  readonly offense: string;
  readonly rows: readonly number[];
  readonly outcomes: readonly number[];
  readonly classes: number;
}

/** Scores a method's forecasts of a game and adds them to its record. */
export function recordGame(record: MethodRecord, predict: Predict, snaps: ScoredSnaps): void {
  const { rows, outcomes, offense } = snaps;
  const shares = rows.map((row) => predict(row));
  record.games.set(snaps.window, { offense, snaps: rows.length, ...scoresOf(shares, snaps) });
  const charted = snaps.classes === 2 ? 1 : snaps.classes;
  shares.forEach((share, i) => {
    for (let k = 0; k < charted; k++) {
      record.stated.push(share[k] as number);
      record.came.push(outcomes[i] === k ? 1 : 0);
    }
  });
}

/** A method's record as what the backtest says of it; null when it could forecast no game. */
export function methodScore(
  record: MethodRecord,
  others: readonly MethodRecord[],
  classes: number,
): MethodScore | null {
  const { method, games, stated, came } = record;
  const scores = [...games.values()];
  if (scores.length === 0) return null;
  return {
    id: method.id,
    knows: method.knows,
    games: scores.length,
    snaps: total(scores.map(({ snaps }) => snaps)),
    logLoss: total(scores.map(({ logLoss }) => logLoss)) / scores.length,
    brier: total(scores.map(({ brier }) => brier)) / scores.length,
    right: total(scores.map(({ right }) => right)),
    calibration: classes === 2 ? lineOf(stated, came) : null,
    reliability: reliabilityBins(stated, came),
    against: method.against.flatMap((id) => {
      const other = others.find((candidate) => candidate.method.id === id);
      return other ? pairedDifference(games, other) : [];
    }),
  };
}

/** Offenses from which on they, and not their games, are the unit of a standard error. */
const LEAST_OFFENSES = 3;
/** Fewer units give no standard error. */
const LEAST_UNITS = 3;

function pairedDifference(games: MethodRecord['games'], other: MethodRecord): PairedDifference[] {
  const pairs = [...games].flatMap(([window, mine]) => {
    const theirs = other.games.get(window);
    return theirs ? [{ window, offense: mine.offense, difference: mine.logLoss - theirs.logLoss }] : [];
  });
  if (pairs.length === 0) return [];
  const unit = new Set(pairs.map(({ offense }) => offense)).size < LEAST_OFFENSES ? 'game' : 'offense';
  const { mean, standardError, clusters } = clusteredMean(
    pairs.map(({ difference }) => difference),
    pairs.map((pair) => (unit === 'game' ? pair.window : pair.offense)),
  );
  return [
    {
      id: other.method.id,
      games: pairs.length,
      won: pairs.filter(({ difference }) => difference < 0).length,
      difference: mean ?? 0,
      standardError: clusters < LEAST_UNITS ? null : standardError,
      unit,
    },
  ];
}

function scoresOf(shares: readonly ArrayLike<number>[], { outcomes, classes }: ScoredSnaps) {
  const brier = multiclassBrier(shares, outcomes);
  return {
    logLoss: multiclassLogLoss(shares, outcomes),
    brier: classes === 2 ? brier / 2 : brier,
    right: shares.filter((share, i) => mostLikely(share) === outcomes[i]).length,
  };
}

function mostLikely(shares: ArrayLike<number>): number {
  let best = 0;
  for (let k = 1; k < shares.length; k++) if ((shares[k] as number) > (shares[best] as number)) best = k;
  return best;
}

function lineOf(stated: readonly number[], came: readonly number[]) {
  const { slope, intercept } = calibration(stated, came);
  return { slope, intercept };
}

function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0);
}
