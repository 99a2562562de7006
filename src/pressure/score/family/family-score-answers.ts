import { ANSWERS } from '../../../game/vocabulary.ts';
import type { Forecast, ForecastChapter } from '../../forecast/forecast-result.ts';
import { SITUATIONS } from '../../snap/situation.ts';

/** What the offense will do in a situation: Dirichlet pseudo-counts of the seven answers, and how often it comes up. */
export interface SituationAnswers {
  readonly id: string;
  readonly label: string;
  /** 1 to 4, told by the situation. */
  readonly down: number;
  /** Snaps expected on Friday. */
  readonly expectedSnaps: number;
  readonly alphas: Float64Array;
  /** False where the answers stand in for uncharted ones. */
  readonly known: boolean;
}

/**
 * The answers of an ordinary high-school offense, for a week on which no answer could be told; judgement. They weigh
 * ten snaps, so what is said on them is said with a wide interval.
 */
const STAND_IN = [4.2, 0.8, 0.7, 1.4, 1.9, 0.5, 0.5] as const;

/**
 * The answer forecast of every situation. A situation without one takes that of all snaps; where no answer is known at
 * all an ordinary offense stands in and is marked as not known.
 */
export function situationAnswers(forecast: ForecastChapter): readonly SituationAnswers[] {
  const overall = alphasOf(find(forecast, 'all', 'answer'));
  return SITUATIONS.map(({ id, label }) => {
    const own = find(forecast, id, 'answer');
    const alphas = alphasOf(own) ?? overall;
    return {
      id,
      label,
      down: DOWNS.findIndex((word) => id.startsWith(word)) + 1,
      expectedSnaps: Math.max(0, own?.nextSnaps ?? find(forecast, id, 'run_or_pass')?.nextSnaps ?? 0),
      alphas: alphas ?? Float64Array.from(STAND_IN),
      known: alphas !== null,
    };
  });
}

/** Weights of the situations in the overall score: their expected snaps, or all alike when none are expected. */
export function situationWeights(situations: readonly SituationAnswers[]): Float64Array {
  const total = situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  return Float64Array.from(situations, ({ expectedSnaps }) =>
    total === 0 ? 1 / situations.length : expectedSnaps / total,
  );
}

const DOWNS = ['first', 'second', 'third', 'fourth'];

function find({ forecasts }: ForecastChapter, situation: string, target: Forecast['target']): Forecast | undefined {
  return forecasts.find((entry) => entry.target === target && entry.situation === situation);
}

function alphasOf(forecast: Forecast | undefined): Float64Array | null {
  if (!forecast) return null;
  const alphas = Float64Array.from(ANSWERS, (answer) => {
    const found = forecast.classes.find(({ name }) => name === answer);
    return Math.max(0, found?.alpha ?? 0);
  });
  return alphas.some((alpha) => alpha > 0) ? alphas : null;
}
