import { StatsInputError } from './errors.ts';
import { requireNonNegative } from './require-counts.ts';

/** The survival curve just after one event time. */
export interface SurvivalStep {
  readonly time: number;
  /** Observations not yet ended before this time. */
  readonly atRisk: number;
  readonly events: number;
  /** Estimated share that lasts longer than this time. */
  readonly survival: number;
  /** Greenwood's standard error of `survival`. */
  readonly standardError: number;
}

/** A Kaplan-Meier curve. */
export interface SurvivalCurve {
  /** One step per time at which an event happened, in order. */
  readonly steps: readonly SurvivalStep[];
  /** First time at which at most half last longer; null when the curve does not fall that far. */
  readonly median: number | null;
}

/**
 * Survival curve from times some of which are only known to be exceeded.
 *
 * @param times - time of the event, or of the end of watching
 * @param events - whether the event happened then; false means it was still to come (censored)
 * @returns events count before endings at the same time
 * @throws StatsInputError when the lengths differ or a time is negative or not finite
 * @see Kaplan and Meier 1958, Journal of the American Statistical Association 53:457; Greenwood 1926
 */
export function kaplanMeier(times: readonly number[], events: readonly boolean[]): SurvivalCurve {
  if (times.length !== events.length) {
    throw new StatsInputError(`kaplanMeier requires one event mark per time, got ${events.length} for ${times.length}`);
  }
  for (const time of times) requireNonNegative(time, 'a time');
  const eventTimes = [...new Set(times.filter((_, i) => events[i]))].sort((a, b) => a - b);
  const steps = eventTimes.reduce<SurvivalStep[]>((done, time) => {
    const atRisk = times.filter((other) => other >= time).length;
    const count = times.filter((other, i) => other === time && events[i]).length;
    done.push(nextStep(done.at(-1), { time, atRisk, events: count }));
    return done;
  }, []);
  return { steps, median: steps.find((step) => step.survival <= 0.5 + ROUNDING)?.time ?? null };
}

const ROUNDING = 1e-12; // a product of fractions this close to one half is one half

function nextStep(
  before: SurvivalStep | undefined,
  now: Pick<SurvivalStep, 'time' | 'atRisk' | 'events'>,
): SurvivalStep {
  const { survival: share, standardError: error } = before ?? { survival: 1, standardError: 0 };
  const left = now.atRisk - now.events;
  const survival = (share * left) / now.atRisk;
  if (left === 0) return { ...now, survival: 0, standardError: 0 };
  const relative = (error / share) ** 2 + now.events / (now.atRisk * left);
  return { ...now, survival, standardError: survival * Math.sqrt(relative) };
}
