import { digamma } from './beta.ts';
import { totalCount } from './require-counts.ts';

/**
 * Ways to estimate entropy from counts. The plug-in is biased down in small samples; the others mend that in part.
 */
export const ENTROPY_ESTIMATORS = [
  'plug-in',
  'miller-madow',
  'chao-shen',
  'grassberger-2003',
  'grassberger-1988',
  'jackknife',
] as const;

/** One of {@link ENTROPY_ESTIMATORS}. */
export type EntropyEstimator = (typeof ENTROPY_ESTIMATORS)[number];

/** Units of information: natural logarithm or logarithm to base 2. */
export const INFORMATION_UNITS = ['nats', 'bits'] as const;

/** One of {@link INFORMATION_UNITS}. */
export type InformationUnit = (typeof INFORMATION_UNITS)[number];

/**
 * Entropy of the distribution behind category counts.
 *
 * @param counts - one number of at least 0 per category
 * @param estimator - all but the plug-in may exceed the logarithm of the number of categories
 * @param unit - of the result
 * @returns null when nothing was counted, 0 when a single category was
 * @throws StatsInputError when there is no category or a count is impossible
 * @see Miller 1955; Chao and Shen 2003, Environmental and Ecological Statistics 10:429; Grassberger 1988, Physics
 * Letters A 128:369, and 2003, arXiv physics/0307138; Zahl 1977, Ecology 58:907 (jackknife)
 * @example entropy([16, 8, 4, 4], 'plug-in', 'bits') // 1.75
 */
export function entropy(
  counts: readonly number[],
  estimator: EntropyEstimator = 'plug-in',
  unit: InformationUnit = 'nats',
): number | null {
  const total = totalCount(counts);
  const seen = counts.filter((count) => count > 0);
  if (total === 0) return null;
  return seen.length === 1 ? 0 : inUnit(estimate(seen, total, estimator), unit);
}

/** Converts nats to the unit asked for. */
export function inUnit(nats: number, unit: InformationUnit): number {
  return unit === 'bits' ? nats / Math.LN2 : nats;
}

function estimate(seen: readonly number[], total: number, estimator: EntropyEstimator): number {
  switch (estimator) {
    case 'plug-in':
      return plugIn(seen, total);
    case 'miller-madow':
      return plugIn(seen, total) + (seen.length - 1) / (2 * total);
    case 'chao-shen':
      return chaoShen(seen, total);
    case 'grassberger-2003':
      return sumOver(seen, (count) => (count / total) * (Math.log(total) - alternatingDigamma(count)));
    case 'grassberger-1988':
      return sumOver(
        seen,
        (count) => (count / total) * (Math.log(total) - digamma(count) - sign(count) / (count * (count + 1))),
      );
    case 'jackknife':
      return jackknife(seen, total);
    default:
      return estimator satisfies never;
  }
}

function plugIn(seen: readonly number[], total: number): number {
  return sumOver(seen, (count) => (count === 0 ? 0 : -(count / total) * Math.log(count / total)));
}

/** Horvitz-Thompson weights over shares discounted by the part of the distribution not yet seen. */
function chaoShen(seen: readonly number[], total: number): number {
  const singles = seen.filter((count) => count === 1).length;
  const coverage = 1 - (singles === total ? total - 1 : singles) / total;
  return sumOver(seen, (count) => {
    const share = (coverage * count) / total;
    return (-share * Math.log(share)) / (1 - (1 - share) ** total);
  });
}

function alternatingDigamma(count: number): number {
  return digamma(count) + 0.5 * sign(count) * (digamma((count + 1) / 2) - digamma(count / 2));
}

function sign(count: number): number {
  return count % 2 === 0 ? 1 : -1;
}

function jackknife(seen: readonly number[], total: number): number {
  const leftOut = sumOver(seen, (count, i) => count * plugIn(seen.with(i, count - 1), total - 1));
  return total * plugIn(seen, total) - ((total - 1) / total) * leftOut;
}

function sumOver(seen: readonly number[], term: (count: number, i: number) => number): number {
  return seen.reduce((sum, count, i) => sum + term(count, i), 0);
}
