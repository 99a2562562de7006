import { type Share, share } from '../../stats/share.ts';
import { type CountCheck, RANGE_LEVELS } from './count-range.ts';

/** How many counts fell into ranges of one level, beside how many should have. */
export interface RangeHits {
  /** Level asked for, 0 to 1. */
  readonly level: number;
  /** Counts overlap (a situation's are part of all snaps'), so the interval is too narrow and no test. */
  readonly hits: Share;
  /** Share of hits to expect if the forecasts are right; null without counts. */
  readonly expected: number | null;
  /** Mean width of the ranges as a share of their snaps; null without counts. */
  readonly width: number | null;
}

/** Hits of the 95% ranges and of the central halves. */
export interface RangeReview {
  readonly outer: RangeHits;
  readonly inner: RangeHits;
}

/** Sums up count checks, of one game or of many. */
export function rangeHits(checks: readonly CountCheck[]): RangeReview {
  return { outer: hitsOf(checks, 'outer'), inner: hitsOf(checks, 'inner') };
}

function hitsOf(checks: readonly CountCheck[], which: 'outer' | 'inner'): RangeHits {
  const ranges = checks.map((check) => ({ ...check[which], snaps: check.snaps }));
  const mean = (of: (range: (typeof ranges)[number]) => number) =>
    ranges.length === 0 ? null : ranges.reduce((sum, range) => sum + of(range), 0) / ranges.length;
  return {
    level: RANGE_LEVELS[which],
    hits: share(ranges.filter(({ hit }) => hit).length, ranges.length),
    expected: mean(({ chance }) => chance),
    width: mean(({ low, high, snaps }) => (high - low) / snaps),
  };
}
