import { StatsInputError } from './errors.ts';

/** Forecasts of about the same size, and how often what they forecast happened. */
export interface ReliabilityBin {
  /** Forecasts of at least this, */
  readonly low: number;
  /** and below this; the last bin holds 1 as well. */
  readonly high: number;
  readonly forecasts: number;
  /** Mean forecast of the bin; null when it is empty. */
  readonly said: number | null;
  readonly happened: number;
}

/**
 * Forecasts of a yes-or-no outcome sorted into bins of equal width: a calibrated forecaster's `said` is
 * `happened / forecasts` in each.
 *
 * @param forecasts - probabilities of 1
 * @param outcomes - 0 or 1 each
 * @param bins - how many, at least 1; 10 when absent
 * @throws StatsInputError when the lengths differ, a forecast is not a probability or there is no bin
 * @see Murphy and Winkler 1977, Applied Statistics 26:41
 */
export function reliabilityBins(
  forecasts: ArrayLike<number>,
  outcomes: ArrayLike<number>,
  bins = 10,
): readonly ReliabilityBin[] {
  requireForecasts(forecasts, outcomes, bins);
  const [counts, sums, hits] = [new Float64Array(bins), new Float64Array(bins), new Float64Array(bins)];
  for (let i = 0; i < forecasts.length; i += 1) {
    const p = forecasts[i] as number;
    const bin = Math.min(bins - 1, Math.floor(p * bins));
    counts[bin] = (counts[bin] as number) + 1;
    sums[bin] = (sums[bin] as number) + p;
    hits[bin] = (hits[bin] as number) + (outcomes[i] as number);
  }
  return Array.from({ length: bins }, (_, bin) => {
    const count = counts[bin] as number;
    const said = count === 0 ? null : (sums[bin] as number) / count;
    return { low: bin / bins, high: (bin + 1) / bins, forecasts: count, said, happened: hits[bin] as number };
  });
}

function requireForecasts(forecasts: ArrayLike<number>, outcomes: ArrayLike<number>, bins: number): void {
  if (!(Number.isInteger(bins) && bins >= 1))
    throw new StatsInputError(`a reliability table requires bins, got ${bins}`);
  if (forecasts.length !== outcomes.length) {
    throw new StatsInputError(
      `reliabilityBins requires one outcome per forecast, got ${outcomes.length} for ${forecasts.length}`,
    );
  }
  for (let i = 0; i < forecasts.length; i += 1) {
    const p = forecasts[i] as number;
    if (!(p >= 0 && p <= 1)) throw new StatsInputError(`a forecast must lie between 0 and 1, got ${p}`);
  }
}
