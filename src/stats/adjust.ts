import { StatsInputError } from './errors.ts';

/**
 * Benjamini-Hochberg adjusted p-values: calling everything at or below q keeps the expected share of false calls at q,
 * for independent or positively dependent tests.
 *
 * @param p - p-values of the tests shown, 0 to 1
 * @param m - number of tests looked at, shown or not; at least `p.length`, which is the default
 * @returns adjusted values in input order
 * @throws StatsInputError when a value is not a probability or `m` is too small
 * @see Benjamini and Hochberg 1995, Journal of the Royal Statistical Society B 57:289
 */
export function benjaminiHochberg(p: readonly number[], m: number = p.length): number[] {
  return stepUp(p, m, 1);
}

function stepUp(p: readonly number[], m: number, factor: number): number[] {
  requireTests(p, m);
  const order = p.map((_, i) => i).sort((i, j) => (p[j] as number) - (p[i] as number));
  const adjusted = new Array<number>(p.length);
  let least = 1;
  order.forEach((index, place) => {
    const rank = p.length - place;
    least = Math.min(least, ((p[index] as number) * m * factor) / rank);
    adjusted[index] = least;
  });
  return adjusted;
}

function requireTests(p: readonly number[], m: number): void {
  if (!(Number.isInteger(m) && m >= p.length)) {
    throw new StatsInputError(`the number of tests must be a whole number of at least ${p.length}, got ${m}`);
  }
  const wrong = p.find((value) => !(value >= 0 && value <= 1));
  if (wrong !== undefined) throw new StatsInputError(`a p-value must lie between 0 and 1, got ${wrong}`);
}
