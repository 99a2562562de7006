/** A mean with a central interval; the owner states its level (80% for scores). */
export interface Spread {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}
