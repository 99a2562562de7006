/** One row of an interval chart, in the unit of its axis. */
export interface IntervalRow {
  /** Unique within the chart. */
  readonly id: string;
  readonly label: string;
  /** Written at the right, such as the count. */
  readonly note: string;
  /** `none` draws a hatched row instead of a mark. */
  readonly state: 'solid' | 'thin' | 'none';
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Drawn as an open diamond; null where there is none. */
  readonly second: number | null;
  /** The same figure of each offense of the archive, drawn as gray ticks. */
  readonly others?: readonly number[];
}

/** A rule across all rows, such as zero or the chance level. */
export interface ReferenceRule {
  readonly at: number;
  readonly label: string;
}

/** What an interval chart needs beside its rows. */
export interface IntervalAxis {
  readonly title: string;
  /** Both ends of the axis. */
  readonly domain: readonly [number, number];
  readonly format: 'percent' | 'points';
  readonly reference: ReferenceRule | null;
}
