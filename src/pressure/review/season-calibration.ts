import { mean } from '../../stats/mean.ts';
import { type Calibration, calibration } from '../../stats/scores.ts';
import { type Share, share } from '../../stats/share.ts';

/** Forecasts of about one size, and how often what they spoke of came. */
export interface CalibrationBin {
  /** Ends of the bin, 0 to 1. */
  readonly low: number;
  readonly high: number;
  /** Mean forecast; null in an empty bin. */
  readonly forecast: number | null;
  /** Snaps of one game are alike, so the interval is somewhat too narrow. */
  readonly came: Share;
}

/** A forecast of the first of two classes, and whether it came. */
export interface ForecastPair {
  readonly forecast: number;
  readonly came: 0 | 1;
}

/** Bins of the scale; fifths, common practice. */
const BINS = 5;

/** Fewer forecasts give no line; judgment: about two games. */
const LEAST_PAIRS = 100;

/** Sorts forecasts into fifths of the scale; empty fifths stay, with 0 of 0. */
export function calibrationBins(pairs: readonly ForecastPair[]): readonly CalibrationBin[] {
  return Array.from({ length: BINS }, (_, bin) => {
    const own = pairs.filter(({ forecast }) => Math.min(BINS - 1, Math.floor(forecast * BINS)) === bin);
    const forecast = own.length === 0 ? null : mean(own.map((pair) => pair.forecast));
    const came = share(own.filter((pair) => pair.came === 1).length, own.length);
    return { low: bin / BINS, high: (bin + 1) / BINS, forecast, came };
  });
}

/** The recalibration line over all pairs; nulls under a hundred of them. */
export function calibrationLine(pairs: readonly ForecastPair[]): Calibration {
  if (pairs.length < LEAST_PAIRS) return { intercept: null, slope: null, inTheLarge: null };
  return calibration(
    pairs.map(({ forecast }) => forecast),
    pairs.map(({ came }) => came),
  );
}
