import type { Film } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { mean, standardError } from '../../stats/mean.ts';
import { classifiedCodes } from '../forecast/classified-codes.ts';
import type { Forecast, ForecastChapter, Target } from '../forecast/forecast-result.ts';
import { TARGET_DEFINITIONS } from '../forecast/target.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { situationCodes } from '../snap/situation.ts';
import type { ForecastPair } from './season-calibration.ts';

/** Sunday's forecast of one target judged on the game: mean log loss a snap, lower is better. */
export interface TargetReview {
  readonly target: Target;
  /** Snaps of the game on which the target was charted. */
  readonly snaps: number;
  readonly model: number;
  /** The plain rate of their film, the same in every situation. */
  readonly plainRate: number;
  /** The raw rate of their film in the same situation. */
  readonly rawCell: number;
  /** Mean of model less plain rate; minus is better. Its standard error over snaps is null under two snaps. */
  readonly difference: number;
  readonly standardError: number | null;
  /** For targets of two classes: the forecast of the first class and whether it came, snap by snap. */
  readonly pairs: readonly ForecastPair[];
}

/** Added to every count of a plain rate, so that what was never seen is not called impossible (Jeffreys). */
const HALF = 0.5;

/** Every target charted in the game, scored snap by snap against the plain rates of the film. */
export function reviewScores(chapter: ForecastChapter, game: Film, cuts: SituationCuts): readonly TargetReview[] {
  const situations = situationCodes(game, cuts);
  return TARGET_DEFINITIONS.flatMap((definition) => {
    const { target } = definition;
    const all = chapter.forecasts.find((entry) => entry.target === target && entry.situation === 'all');
    if (!all) return [];
    const scored = [...classifiedCodes(definition, game, cuts)].flatMap((code, i) => {
      if (code === NOT_KNOWN || code >= all.classes.length) return [];
      const id = SITUATIONS[situations[i] ?? NOT_KNOWN]?.id ?? 'all';
      const here = chapter.forecasts.find((entry) => entry.target === target && entry.situation === id) ?? all;
      return [scoreSnap(here, all, code)];
    });
    return scored.length === 0 ? [] : [summaryOf(target, scored)];
  });
}

interface ScoredSnap {
  readonly model: number;
  readonly plain: number;
  readonly cell: number;
  readonly first: number;
  readonly came: 0 | 1;
  readonly classes: number;
}

function scoreSnap(here: Forecast, all: Forecast, code: number): ScoredSnap {
  return {
    model: here.classes[code]?.share ?? 0,
    plain: filmRate(all, code),
    cell: filmRate(here, code),
    first: here.classes[0]?.share ?? 0,
    came: code === 0 ? 1 : 0,
    classes: here.classes.length,
  };
}

function filmRate({ classes }: Forecast, code: number): number {
  const film = classes[code]?.film;
  return ((film?.count ?? 0) + HALF) / ((film?.trials ?? 0) + HALF * classes.length);
}

function summaryOf(target: Target, scored: readonly ScoredSnap[]): TargetReview {
  const losses = (of: (snap: ScoredSnap) => number) => scored.map((snap) => -Math.log(Math.max(of(snap), LEAST)));
  const model = losses((snap) => snap.model);
  const plain = losses((snap) => snap.plain);
  const differences = model.map((loss, i) => loss - (plain[i] as number));
  const two = scored[0]?.classes === 2;
  return {
    target,
    snaps: scored.length,
    model: mean(model),
    plainRate: mean(plain),
    rawCell: mean(losses((snap) => snap.cell)),
    difference: mean(differences),
    standardError: standardError(differences),
    pairs: two ? scored.map(({ first, came }) => ({ forecast: rounded(first), came })) : [],
  };
}

/** A share of 0 that comes all the same costs a large but finite loss. */
const LEAST = 1e-6;

/** Kept short: the pairs are stored for the season. */
function rounded(share: number): number {
  return Math.round(share * 1e4) / 1e4;
}
