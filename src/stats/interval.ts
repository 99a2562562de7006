/** A closed interval on the real line; `low` never exceeds `high`. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}
