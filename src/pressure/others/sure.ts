/**
 * How sure a statement is, after correcting for everything looked at beside it: at least 95, 80 and 65 chances in 100
 * that it is real, or no difference.
 */
export const SURE = ['clear', 'likely', 'lean', 'none'] as const;
/** One word of {@link SURE}. */
export type Sure = (typeof SURE)[number];

/** Share of false statements allowed among those called so. */
const MOST_FALSE: readonly (readonly [Sure, number])[] = [
  ['clear', 0.05],
  ['likely', 0.2],
  ['lean', 0.35],
];

/**
 * How sure a statement is by its adjusted p-value: among all statements adjusted to at most .05, at most one in twenty
 * is false.
 *
 * @see Benjamini and Hochberg 1995, Journal of the Royal Statistical Society B 57:289; Storey 2003, Annals of Statistics
 * 31:2013, the reading as a chance
 */
export function sureOf(adjusted: number): Sure {
  return MOST_FALSE.find(([, most]) => adjusted <= most)?.[0] ?? 'none';
}
