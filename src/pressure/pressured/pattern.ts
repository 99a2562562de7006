import { SITUATIONS } from '../../game/situations.ts';
import type { Forecast } from '../forecast/forecast-result.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { PressuredDefinition } from './pressured-target.ts';

/** Shares of a question's classes by situation code; the last row, and code 255, are all snaps. */
export type Pattern = readonly (readonly number[])[];

/** Rows of a pattern: the situations, and all snaps. */
export const PATTERN_ROWS = SITUATIONS.length + 1;

/** The row of a situation code. */
export function patternRow(situation: number): number {
  return situation === NOT_KNOWN ? SITUATIONS.length : situation;
}

/** What the forecast expects of a question in each situation; where nothing forecasts it every situation is alike. */
export function forecastPattern(forecasts: readonly Forecast[], definition: PressuredDefinition): Pattern {
  if (definition.forecast === null) return flatPattern(definition.classes.length);
  const rows = [...SITUATIONS.map(({ id }) => id as string), 'all'].map((situation) => {
    const found = forecasts.find((f) => f.target === definition.forecast && f.situation === situation);
    const shares = definition.classes.map((name) => found?.classes.find((one) => one.name === name)?.share ?? 0);
    const total = shares.reduce((sum, share) => sum + share, 0);
    return total > 0 ? shares.map((share) => share / total) : null;
  });
  const all = rows.at(-1);
  return all ? rows.map((row) => row ?? all) : flatPattern(definition.classes.length);
}

/** The same share of every class in every situation: nothing is known but their own level. */
function flatPattern(classes: number): Pattern {
  return Array.from({ length: PATTERN_ROWS }, () => Array.from({ length: classes }, () => 1 / classes));
}

/** Snaps all situations are worth in the share of one; the figure changes little between 10 and 100. */
const SITUATION_STRENGTH = 30;

/**
 * What the offenses of an archive do in each situation, all together.
 *
 * @param counts - snaps of situation row s and class k at `s * classes + k`
 */
export function countedPattern(counts: Float64Array, classes: number): Pattern {
  const all = Array.from({ length: classes }, (_, k) => 0.5 + columnSum(counts, classes, k));
  const total = all.reduce((sum, count) => sum + count, 0);
  const shares = all.map((count) => count / total);
  return Array.from({ length: PATTERN_ROWS }, (_, row) => {
    if (row === PATTERN_ROWS - 1) return shares;
    const own = counts.subarray(row * classes, (row + 1) * classes);
    const snaps = own.reduce((sum, count) => sum + count, 0);
    return shares.map((share, k) => ((own[k] as number) + SITUATION_STRENGTH * share) / (snaps + SITUATION_STRENGTH));
  });
}

function columnSum(counts: Float64Array, classes: number, k: number): number {
  let sum = 0;
  for (let i = k; i < counts.length; i += classes) sum += counts[i] as number;
  return sum;
}
