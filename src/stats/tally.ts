/** Successes out of trials in one group. */
export interface Tally {
  readonly successes: number;
  readonly trials: number;
}
