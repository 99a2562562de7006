import { ANSWERS } from '../../game/answers.ts';
import { SITUATION_IDS, type SituationId } from '../../game/situations.ts';
import { type ByAnswer, eachAnswer } from '../evidence/by-answer.ts';
import type { Forecast, ForecastChapter } from '../forecast/forecast-result.ts';

/** What the offense will do in a situation: Dirichlet pseudo-counts of the seven answers, and how often it comes up. */
export interface SituationAnswers {
  readonly id: SituationId;
  /** 1 to 4, read from the situation. */
  readonly down: number;
  /** Snaps expected on Friday. */
  readonly expectedSnaps: number;
  readonly alphas: ByAnswer;
  /** Expected shares of the answers. */
  readonly shares: ByAnswer;
  /** False where the answers replace uncharted ones. */
  readonly known: boolean;
}

/**
 * The answers of an ordinary high-school offense, for a week on which no answer is known; judgment. They weigh
 * ten snaps, so what is said on them is said with a wide interval.
 */
const STAND_IN: ByAnswer = {
  run: 4.2,
  quarterback_run: 0.8,
  screen: 0.7,
  quick: 1.4,
  dropback: 1.9,
  deep_shot: 0.5,
  movement: 0.5,
};

/**
 * The answer forecast of every situation. A situation without one takes that of all snaps; where no answer is known at
 * all an ordinary offense takes their place and is marked as not known.
 */
export function situationAnswers(forecast: ForecastChapter): readonly SituationAnswers[] {
  const overall = alphasOf(find(forecast, 'all', 'answer'));
  return SITUATION_IDS.map((id) => {
    const own = find(forecast, id, 'answer');
    const known = alphasOf(own) ?? overall;
    const alphas = known ?? STAND_IN;
    const total = ANSWERS.reduce((sum, answer) => sum + alphas[answer], 0);
    return {
      id,
      down: DOWNS.findIndex((word) => id.startsWith(word)) + 1,
      expectedSnaps: Math.max(0, own?.nextSnaps ?? find(forecast, id, 'run_or_pass')?.nextSnaps ?? 0),
      alphas,
      shares: eachAnswer((answer) => alphas[answer] / total),
      known: known !== null,
    };
  });
}

const DOWNS = ['first', 'second', 'third', 'fourth'];

function find({ forecasts }: ForecastChapter, situation: string, target: Forecast['target']): Forecast | undefined {
  return forecasts.find((entry) => entry.target === target && entry.situation === situation);
}

function alphasOf(forecast: Forecast | undefined): ByAnswer | null {
  if (!forecast) return null;
  const alphas = eachAnswer((answer) => Math.max(0, forecast.classes.find(({ name }) => name === answer)?.alpha ?? 0));
  return ANSWERS.some((answer) => alphas[answer] > 0) ? alphas : null;
}
