import { ANSWERS, type Answer } from '../../game/answers.ts';
import type { Film } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import type { Forecast, ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { answerCodes } from '../snap/answer.ts';
import { classifiedAnswers } from '../snap/classified-answers.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { offenseGames } from '../snap/offense-game.ts';
import { runOrPassCodes } from '../snap/run-or-pass.ts';
import { situationCodes } from '../snap/situation.ts';

/** Worth of an answer's snaps outside a situation against those in it, in snaps; judgment. */
export const OUTSIDE_WORTH = 12;

/** The expected snaps with one answer: how many of all by the forecast, and which film snaps show what they look like. */
export interface ExpectedPart {
  /** Dirichlet pseudo-count of the answer in the forecast. */
  readonly alpha: number;
  /** Null where snaps are only known as runs or passes. */
  readonly answer: Answer | null;
  /** Film snaps with the answer; empty where their film has not shown it. */
  readonly rows: readonly number[];
  /** Share of the part each row stands for; sums to 1 where there is a row. */
  readonly weights: readonly number[];
}

/** The snaps expected in a situation, as parts by answer. */
export interface ExpectedSnaps {
  /** Situation id, or `all`. */
  readonly situation: string;
  readonly parts: readonly ExpectedPart[];
  /** Film snaps of the situation. */
  readonly film: readonly number[];
}

/** What the expected snaps are made from. */
export interface ExpectedInput {
  readonly chart: Film;
  readonly forecast: ForecastChapter;
  readonly cuts: SituationCuts;
}

/**
 * The snaps expected in every situation, `all` first: how often each answer comes is the forecast's; what else is true
 * of such a snap is as their film shows it with that answer, the situation's own snaps first and twelve snaps' worth of
 * the rest. Looks, motion, the back and the throw stay together as they were charted. Where their film does not tell
 * passes apart, runs and passes take the place of the answers.
 */
export function expectedSnaps({ chart, forecast, cuts }: ExpectedInput): readonly ExpectedSnaps[] {
  const situations = situationCodes(chart, cuts);
  const runOrPass = runOrPassCodes(chart);
  const charted = classifiedAnswers(answerCodes(chart, cuts), runOrPass, offenseGames(chart));
  const byAnswer = charted.some((code) => code !== NOT_KNOWN);
  const codes = byAnswer ? charted : runOrPass;
  const rowsOf = ANSWERS.map((_, k) => rowsWith(codes, k));
  return ['all', ...SITUATIONS.map(({ id }) => id)].map((situation, place) => {
    const inside = (row: number) => place === 0 || situations[row] === place - 1;
    const cell = cellOf(forecast, situation, byAnswer ? 'answer' : 'run_or_pass');
    const parts = (cell?.classes ?? []).map(({ alpha }, k) => ({
      alpha,
      answer: byAnswer ? (ANSWERS[k] as Answer) : null,
      ...weighed(rowsOf[k] ?? [], inside),
    }));
    return { situation, parts, film: Array.from(situations.keys()).filter(inside) };
  });
}

function rowsWith(codes: Uint8Array, code: number): number[] {
  return Array.from(codes.keys()).filter((row) => codes[row] === code);
}

function cellOf({ forecasts }: ForecastChapter, situation: string, target: Target): Forecast | undefined {
  return forecasts.find((one) => one.target === target && one.situation === situation);
}

/** Rows with their weights: one for a snap of the situation, less for the rest where there are more than their worth. */
function weighed(rows: readonly number[], inside: (row: number) => boolean) {
  const outside = rows.filter((row) => !inside(row)).length;
  const worth = Math.min(1, OUTSIDE_WORTH / Math.max(1, outside));
  const raw = rows.map((row) => (inside(row) ? 1 : worth));
  const total = raw.reduce((sum, weight) => sum + weight, 0);
  return { rows, weights: raw.map((weight) => weight / total) };
}
