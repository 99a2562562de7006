import { sum } from 'simple-statistics';
import { digamma, logBeta, logGamma } from './beta.ts';
import { StatsInputError } from './errors.ts';
import { type Minimum, minimize, type Objective } from './minimize.ts';
import { requireNonNegative } from './require-counts.ts';

/** A Dirichlet distribution of category shares fitted to many groups. */
export interface DirichletFit {
  /** One parameter per category, above 0; next to nothing for a category that no group ever showed. */
  readonly alpha: readonly number[];
  /** Log likelihood of all groups, multinomial coefficients included. */
  readonly logLikelihood: number;
  /** The groups differ no more than chance: the fit ran to the cap on the sum of the parameters. */
  readonly completePooling: boolean;
}

/**
 * The Dirichlet distribution under which the category counts of many groups are most likely. When a single category
 * was ever seen no distribution is most likely; the answer is then the pooled shares with half a count added to each
 * category, at the cap.
 *
 * @param groups - one array of category counts per group; groups without counts are ignored
 * @param cap - largest sum of parameters considered
 * @throws StatsInputError when the groups differ in length, a count is impossible or nothing was counted
 * @see Mosimann 1962, Biometrika 49:65; Minka 2000, Estimating a Dirichlet distribution
 */
export function fitDirichlet(groups: readonly (readonly number[])[], cap = DEFAULT_CAP): DirichletFit {
  const { counts, totals, shares } = poolGroups(groups);
  const seen = shares.map((_, j) => j).filter((j) => (shares[j] as number) > 0);
  if (seen.length === 0) throw new StatsInputError('fitDirichlet requires at least one count');
  if (seen.length === 1) return pooledFit(shares, totals, cap);
  const used = counts.map((row) => seen.map((j) => row[j] as number));
  const best = mostLikely(
    used,
    seen.map((j) => shares[j] as number),
    cap,
  );
  const fitted = parametersAt(best.point, cap);
  const alpha = shares.map((_, j) => fitted[seen.indexOf(j)] ?? LEAST_PARAMETER);
  const coefficients = used.reduce((sum, row) => sum + logArrangements(row), 0);
  return { alpha, logLikelihood: coefficients - best.value, completePooling: sumOf(alpha) > cap * AT_CAP };
}

/** Everything fell in one category, so the logarithms of arrangements are 0. */
function pooledFit(shares: readonly number[], totals: readonly number[], cap: number): DirichletFit {
  const all = sumOf(totals);
  const alpha = shares.map((share) => (cap * (share * all + HALF)) / (all + HALF * shares.length));
  const main = Math.max(...alpha);
  const logLikelihood = totals.reduce((sum, n) => sum + logBeta(main + n, cap - main) - logBeta(main, cap - main), 0);
  return { alpha, logLikelihood, completePooling: true };
}

const HALF = 0.5; // Jeffreys' prior

function mostLikely(groups: readonly (readonly number[])[], shares: readonly number[], cap: number): Minimum {
  const objective = negativeLogLikelihood(groups, cap);
  return STARTING_SIZES.map((size) =>
    minimize({ objective, start: Float64Array.of(...shares.map(Math.log), sizeLogit(size, cap)) }),
  ).reduce((a, b) => (b.value < a.value ? b : a));
}

const DEFAULT_CAP = 2000; // judgement: groups of a few dozen counts cannot tell larger sums apart
const STARTING_SIZES = [1, 10, 100]; // judgement: loose, middling and tight agreement between groups
const AT_CAP = 0.99;
const LEAST_PARAMETER = 1e-8; // keeps logarithms finite where the likelihood is long flat

function sizeLogit(size: number, cap: number): number {
  return Math.log(size / Math.max(cap - size, size / 100));
}

/** The search runs over log shares and the logit of sum / cap, so that the cap is never passed. */
function parametersAt(point: Float64Array, cap: number): Float64Array {
  const logs = point.subarray(0, -1);
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const total = sumOf(weights);
  const size = cap / (1 + Math.exp(-(point.at(-1) as number)));
  return weights.map((weight) => Math.max((size * weight) / total, LEAST_PARAMETER));
}

function negativeLogLikelihood(groups: readonly (readonly number[])[], cap: number): Objective {
  return (point, gradient) => {
    const alpha = parametersAt(point, cap);
    const size = sumOf(alpha);
    const slopes = new Float64Array(alpha.length);
    const value = groups.reduce((sum, row) => sum + groupLoss(row, { alpha, size, slopes }), 0);
    const along = slopes.reduce((sum, slope, j) => sum + slope * (alpha[j] as number), 0);
    slopes.forEach((slope, j) => {
      gradient[j] = (alpha[j] as number) * (slope - along / size);
    });
    gradient[alpha.length] = along * (1 - size / cap);
    return value;
  };
}

interface Parameters {
  readonly alpha: Float64Array;
  readonly size: number;
  /** The group's slopes along the parameters are added here. */
  readonly slopes: Float64Array;
}

function groupLoss(row: readonly number[], { alpha, size, slopes }: Parameters): number {
  const total = sumOf(row);
  const shared = digamma(total + size) - digamma(size);
  let loss = logGamma(total + size) - logGamma(size);
  row.forEach((count, j) => {
    const a = alpha[j] as number;
    loss -= logGamma(count + a) - logGamma(a);
    slopes[j] = (slopes[j] as number) + shared - (digamma(count + a) - digamma(a));
  });
  return loss;
}

function logArrangements(row: readonly number[]): number {
  const total = sumOf(row);
  return row.reduce((sum, count) => sum - logGamma(count + 1), logGamma(total + 1));
}

/** How much groups differ in their category shares. */
export interface DirichletMoments {
  /** Share of the spread between single counts that lies between groups, 0 to 1. */
  readonly correlation: number;
  /** Share of each category over all counts. */
  readonly shares: readonly number[];
  /** Sum of the Dirichlet parameters; null (infinite) when the groups differ no more than chance. */
  readonly size: number | null;
}

/**
 * Moment estimate of how much groups differ in their category shares, by the analysis of variance.
 *
 * @param groups - one array of category counts per group; groups without counts are ignored
 * @returns correlation 0 and size null when the groups differ no more than chance
 * @throws StatsInputError when the groups differ in length, a count is impossible, fewer than two groups have
 * counts, or none has more than one
 * @see Weir and Hill 2002, Annual Review of Genetics 36:721
 */
export function dirichletMoments(groups: readonly (readonly number[])[]): DirichletMoments {
  const { counts, totals, all, shares } = poolGroups(groups);
  if (counts.length < 2 || all <= counts.length) {
    throw new StatsInputError('a moment estimate requires two groups and more counts than groups');
  }
  const typical = (all - totals.reduce((sum, n) => sum + n * n, 0) / all) / (counts.length - 1);
  const { between, within } = meanSquares(counts, totals, shares);
  const spread = between + (typical - 1) * within;
  const correlation = spread > 0 ? Math.max(0, (between - within) / spread) : 0;
  return { correlation, shares, size: correlation === 0 ? null : 1 / correlation - 1 };
}

function meanSquares(counts: readonly (readonly number[])[], totals: readonly number[], shares: readonly number[]) {
  const all = sumOf(totals);
  let [between, within] = [0, 0];
  counts.forEach((row, i) => {
    const total = totals[i] as number;
    row.forEach((count, j) => {
      const share = count / total;
      between += (total * (share - (shares[j] as number)) ** 2) / (counts.length - 1);
      within += (total * share * (1 - share)) / (all - counts.length);
    });
  });
  return { between, within };
}

function poolGroups(groups: readonly (readonly number[])[]) {
  const width = groups[0]?.length ?? 0;
  for (const row of groups) {
    if (row.length !== width) throw new StatsInputError('groups require the same categories');
    for (const count of row) requireNonNegative(count, 'a category count');
  }
  const counts = groups.filter((row) => row.some((count) => count > 0));
  const totals = counts.map(sumOf);
  const all = sumOf(totals);
  const shares = Array.from(
    { length: width },
    (_, j) => counts.reduce((sum, row) => sum + (row[j] as number), 0) / all,
  );
  return { counts, totals, all, shares };
}

function sumOf(numbers: Float64Array | readonly number[]): number {
  return sum(numbers as readonly number[]);
}
