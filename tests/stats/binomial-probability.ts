/** Probability of exactly `x` successes in `n` trials, factor by factor: slow, and of no other code. */
export function binomialProbability(x: number, n: number, p: number): number {
  let probability = 1;
  for (let k = 1; k <= x; k += 1) probability *= ((n - x + k) / k) * p;
  for (let k = 0; k < n - x; k += 1) probability *= 1 - p;
  return probability;
}
