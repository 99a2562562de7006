import type { Level } from '../../game/call-library.ts';
import { type FieldPoint, HASH_TO_SIDELINE, insideField } from './field-size.ts';

/** The offense a call is drawn against: two receivers a side, a back beside the passer, ball on the left hash. */
export interface OffenseSet {
  readonly ball: FieldPoint;
  readonly line: readonly FieldPoint[];
  readonly passer: FieldPoint;
  readonly back: FieldPoint;
  /** Receivers to the field and to the boundary, outside first. */
  readonly field: readonly FieldPoint[];
  readonly boundary: readonly FieldPoint[];
}

/** The set at a level; the boundary is at the left. Distances from the ball are usual splits, judgment. */
export function offenseSet(level: Level): OffenseSet {
  const across = HASH_TO_SIDELINE[level];
  const spot = (lateral: number, past: number) => insideField({ across: across + lateral, past });
  return {
    ball: { across, past: 0 },
    line: [-2, -1, 0, 1, 2].map((place) => spot(place * 1.5, -0.9)),
    passer: spot(0, -5),
    back: spot(-2.6, -5),
    field: [spot(22, -0.9), spot(11, -1.6)],
    boundary: [spot(-13, -0.9), spot(-7, -1.6)],
  };
}
