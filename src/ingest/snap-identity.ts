import type { ColumnName } from '../game/columns.ts';
import type { SnapColumns } from './single-snap-checks.ts';

/** What a snap is known by within its game and offense: a whole number, or {@link NOT_SAID}. */
export type SnapIdentity = (index: number) => number;

/** The identity of a snap of which too little was charted to know it again. */
export const NOT_SAID = -1;

/** Snap numbers end at 9,999; identities by moment begin here, so that the two never meet. */
export const FIRST_MOMENT = 10_000;

/**
 * Knows a snap by its number, or, where snaps are not numbered, by quarter, clock, down, distance and ball position. The
 * arrays are looked up again on every call, so that columns may grow.
 */
export function createSnapIdentity(columns: SnapColumns): SnapIdentity {
  const read = (name: ColumnName) => {
    const column = columns[name];
    return (i: number) => (column?.kind === 'number' ? (column.numbers[i] ?? Number.NaN) : Number.NaN);
  };
  const [snap, quarter, clock] = [read('snap'), read('quarter'), read('clock')];
  const [down, toGo, ballOn] = [read('down'), read('to_go'), read('ball_on')];
  return (i) => {
    const number = snap(i);
    if (!Number.isNaN(number)) return number;
    const moment = quarter(i) * 901 + clock(i);
    if (Number.isNaN(moment)) return NOT_SAID;
    // Down is under 5, distance and ball position under 100, a quarter under 901 seconds; 0 stands for not charted.
    return FIRST_MOMENT + ((moment * 5 + (down(i) || 0)) * 100 + (toGo(i) || 0)) * 100 + (ballOn(i) || 0);
  };
}
