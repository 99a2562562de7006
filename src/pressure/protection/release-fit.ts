import { normalCdf } from '../../stats/normal.ts';

/** What was seen of one answer's release: times of throws, and balls held longer than a known time. */
export interface ReleaseTimes {
  /** Logarithms of seconds from snap to release. */
  readonly logTimes: readonly number[];
  /** Balls that were still held when the sack came. */
  readonly held: number;
  /** Logarithm of the seconds they were held at least. */
  readonly heldPast: number;
}

/** A release curve and how well its middle is known. */
export interface ReleaseFit {
  /** Mean and standard deviation of the logarithm of the release time. */
  readonly mu: number;
  readonly sigma: number;
  /** The mean lies between these with 80% probability. */
  readonly muLow: number;
  readonly muHigh: number;
}

/** A curve to shrink to, worth `worth` throws. */
export interface ReleasePrior {
  readonly mu: number;
  readonly sigma: number;
  readonly worth: number;
}

/**
 * The release curve of an offense from its timed throws, shrunk to a prior curve. Sacks carry no time: each says only
 * that the ball was held past `heldPast`, so an offense that is sacked a lot is not taken for one that throws fast.
 *
 * @see Kalbfleisch and Prentice 2002, The Statistical Analysis of Failure Time Data, chapter 3, for right-censored times
 */
export function fitRelease(seen: ReleaseTimes, prior: ReleasePrior): ReleaseFit {
  const sigma = pooledSigma(seen.logTimes, prior.sigma);
  if (seen.logTimes.length + seen.held === 0) return quantilesOf(gridAround(prior), (mu) => logPrior(mu, prior), sigma);
  const middle = meanOf(seen.logTimes);
  const logWeight = (mu: number) =>
    logPrior(mu, prior) - (seen.logTimes.length * ((middle - mu) / sigma) ** 2) / 2 + heldLikelihood(mu, sigma, seen);
  return quantilesOf(gridAround(prior), logWeight, sigma);
}

/** Throws the prior's spread is worth; judgment: a spread needs more throws than a mean to be separated. */
const SIGMA_WORTH = 30;

/** Spread around the throws' own mean, so that a slower passer is not taken for a less steady one. */
function pooledSigma(logTimes: readonly number[], prior: number): number {
  const n = logTimes.length;
  if (n < 2) return prior;
  const mean = meanOf(logTimes);
  const squares = logTimes.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  return Math.sqrt((SIGMA_WORTH * prior ** 2 + squares) / (SIGMA_WORTH + n - 1));
}

const GRID_POINTS = 401;

/** Where the mean can lie: prior standard deviations either side of the prior. */
const GRID_REACH = 8;

function gridAround({ mu, sigma, worth }: ReleasePrior): Float64Array {
  const reach = (GRID_REACH * sigma) / Math.sqrt(worth);
  return Float64Array.from({ length: GRID_POINTS }, (_, i) => mu + reach * ((2 * i) / (GRID_POINTS - 1) - 1));
}

function logPrior(mu: number, prior: ReleasePrior): number {
  return (-prior.worth * ((mu - prior.mu) / prior.sigma) ** 2) / 2;
}

/** Logarithm of the chance that the held balls were out later than they were seen held. */
function heldLikelihood(mu: number, sigma: number, { held, heldPast }: ReleaseTimes): number {
  return held === 0 ? 0 : held * Math.log(Math.max(1e-300, normalCdf((mu - heldPast) / sigma)));
}

function meanOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, x) => sum + x, 0) / values.length;
}

function quantilesOf(grid: Float64Array, logWeight: (mu: number) => number, sigma: number): ReleaseFit {
  const logs = grid.map(logWeight);
  const most = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((a, b) => a + b, 0);
  const mean = weights.reduce((sum, weight, i) => sum + weight * (grid[i] as number), 0) / total;
  return {
    mu: mean,
    sigma,
    muLow: quantileOn(grid, weights, 0.1 * total),
    muHigh: quantileOn(grid, weights, 0.9 * total),
  };
}

/** Where the summed weight passes `target`, taking each weight as spread evenly over its cell. */
function quantileOn(grid: Float64Array, weights: Float64Array, target: number): number {
  const step = (grid[1] as number) - (grid[0] as number);
  let before = 0;
  for (let i = 0; i < grid.length; i += 1) {
    const weight = weights[i] as number;
    if (before + weight >= target) return (grid[i] as number) + step * ((target - before) / weight - 0.5);
    before += weight;
  }
  return grid.at(-1) ?? 0;
}
