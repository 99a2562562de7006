/**
 * The variance of a weighted sum of Dirichlet shares.
 *
 * @param alphas - pseudo-counts, above 0 in sum
 * @param weights - one per share
 * @see Johnson, Kotz and Balakrishnan 1997, Discrete Multivariate Distributions, the moments of the Dirichlet
 * @example dirichletVariance([2, 2], [1, 0]) // 0.05, that of Beta(2, 2)
 */
export function dirichletVariance(alphas: readonly number[], weights: readonly number[]): number {
  const total = alphas.reduce((sum, alpha) => sum + alpha, 0);
  const mean = alphas.reduce((sum, alpha, i) => sum + (alpha / total) * (weights[i] as number), 0);
  const square = alphas.reduce((sum, alpha, i) => sum + (alpha / total) * (weights[i] as number) ** 2, 0);
  return Math.max(0, square - mean * mean) / (total + 1);
}
