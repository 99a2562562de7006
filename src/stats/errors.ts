/** Misuse of a statistical function: impossible counts, a level outside 0 to 1, a table with rows of different length. */
export class StatsInputError extends Error {
  override readonly name = 'StatsInputError';
}
