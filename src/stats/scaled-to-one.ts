/** Chances from their logarithms, of any scale. */
export function scaledToOne(logs: Float64Array): Float64Array {
  const top = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weights = logs.map((log) => Math.exp(log - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}
