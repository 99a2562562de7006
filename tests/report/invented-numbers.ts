/** A stand-in for chance in invented plans: a number in [0, 1) that depends only on the words given. */
export function wobble(...words: readonly (string | number)[]): number {
  let hash = 2166136261;
  for (const character of words.join('|')) {
    hash = Math.imul(hash ^ character.charCodeAt(0), 16777619) >>> 0;
  }
  return (Math.imul(hash ^ (hash >>> 15), 2246822519) >>> 0) / 2 ** 32;
}

/** Shares that sum to one, from positive weights. */
export function normalized(weights: readonly number[]): number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}
