/** Down, distance and ball of a snap; NaN where it is not known. */
export interface DownDistanceBall {
  readonly down: number;
  readonly toGo: number;
  /** Yards to the opponent's goal line. */
  readonly ballOn: number;
}

/** The down after one that fell short; after a fourth down the drive is over. */
const LATER_DOWN: Readonly<Record<number, number>> = { 1: 2, 2: 3, 3: 4 };

/**
 * What a gain leaves for the next snap of the drive. After a first down the distance is not known from the gain alone;
 * after a fourth down that fell short no down is.
 */
export function leftAfter({ down, toGo, ballOn }: DownDistanceBall, gain: number): DownDistanceBall {
  const left = toGo - gain;
  if (left <= 0) return { down: 1, toGo: Number.NaN, ballOn: ballOn - gain };
  return { down: LATER_DOWN[down] ?? Number.NaN, toGo: left, ballOn: ballOn - gain };
}
