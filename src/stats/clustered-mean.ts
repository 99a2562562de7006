import { StatsInputError } from './errors.ts';

/** A mean of observations that come in clusters. */
export interface ClusteredMean {
  /** Mean over observations; null when there are none. */
  readonly mean: number | null;
  /** Standard error with the cluster as the unit; null under two clusters. */
  readonly standardError: number | null;
  readonly clusters: number;
}

/**
 * Mean of observations and its standard error when those of one cluster are alike. With one observation a cluster it is
 * the usual standard error of a mean; with clusters of one size, that of the clusters' means.
 *
 * @param values - one number per observation
 * @param clusterOf - the cluster of each observation
 * @throws StatsInputError when the lengths differ or a value is not finite
 * @see Cameron and Miller 2015, Journal of Human Resources 50:317, cluster-robust variance with the factor G / (G - 1)
 */
export function clusteredMean(values: readonly number[], clusterOf: readonly (string | number)[]): ClusteredMean {
  requireObservations(values, clusterOf);
  if (values.length === 0) return { mean: null, standardError: null, clusters: 0 };
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const sums = new Map<string | number, number>();
  values.forEach((value, i) => {
    const cluster = clusterOf[i] as string | number;
    sums.set(cluster, (sums.get(cluster) ?? 0) + value - mean);
  });
  const clusters = sums.size;
  if (clusters < 2) return { mean, standardError: null, clusters };
  const squares = [...sums.values()].reduce((total, sum) => total + sum * sum, 0);
  return { mean, standardError: Math.sqrt((clusters / (clusters - 1)) * squares) / values.length, clusters };
}

function requireObservations(values: readonly number[], clusterOf: readonly unknown[]): void {
  if (values.length !== clusterOf.length) {
    throw new StatsInputError(
      `clusteredMean requires one cluster per value, got ${clusterOf.length} for ${values.length}`,
    );
  }
  const wrong = values.find((value) => !Number.isFinite(value));
  if (wrong !== undefined) throw new StatsInputError(`a value must be finite, got ${wrong}`);
}
