import { ANSWERS, FAMILIES } from '../../../game/vocabulary.ts';
import { createRandom } from '../../../stats/random.ts';
import { meanOutcomes } from '../../evidence/evidence.ts';
import { CELL_COUNT, cellIndex } from '../../evidence/evidence-cell.ts';
import { OUTCOME_KINDS } from '../../snap/outcome.ts';
import { answerNoise, lookNoise } from './family-score-look-noise.ts';
import { cellValues } from './family-score-means.ts';
import type { ScoreModel } from './family-score-model.ts';

/** Draws behind every interval and chance; their own error is a fortieth of an interval's half width. */
export const DRAW_COUNT = 4000;

/** Spread of what a sheet point is worth, as the shape of a gamma with mean 1: shape 4 is a coefficient of 0.5. */
const MARK_WORTH_SHAPE = 4; // judgement

/** Seeded draws of everything that is not known; one set, shared by all families and situations. */
export interface SharedDraws {
  readonly count: number;
  /** What the offense gains a snap, by cell and down: `cost[cell * 4 + down - 1][draw]`. */
  readonly cost: readonly Float64Array[];
  /** Explosive share by cell. */
  readonly explosives: readonly Float64Array[];
  /** Answer shares by situation, at `answer * count + draw`. */
  readonly answers: readonly Float64Array[];
  /** How far the looks' marks are from their means, by answer and family. */
  readonly lookNoise: readonly (readonly Float64Array[])[];
  /** What a mark is worth, mean 1. */
  readonly markWorth: Float64Array;
  /** How far their release is from what is expected, in standard deviations, at `answer * count + draw`. */
  readonly release: Float64Array;
}

/**
 * Draws the answer shares of every situation, the outcome shares of every cell, the looks, the worth of a mark and the
 * release. Every cell has a stream of its own, so a change in one leaves the others' numbers as they were.
 *
 * A family's outcomes are drawn from all its evidence. The base is the yardstick: that professional figures may not hold
 * at this level is as true of it as of every pressure and cancels in the difference, so it is drawn only as far as our
 * own film moved it.
 */
export function sharedDraws(model: ScoreModel, count: number = DRAW_COUNT): SharedDraws {
  const outcomes = new Float64Array(count * OUTCOME_KINDS.length);
  const cells = Array.from({ length: CELL_COUNT }, (_, cell) => cellDraws(model, cell, outcomes));
  const worth = createRandom(`${model.seed}/worth`);
  const release = createRandom(`${model.seed}/release`);
  return {
    count,
    cost: cells.flatMap(({ cost }) => cost),
    explosives: cells.map(({ explosives }) => explosives),
    answers: model.situations.map(({ id, alphas }) => answerDraws(`${model.seed}/answers/${id}`, alphas, count)),
    lookNoise: answerNoise(lookNoise(model, count)),
    markWorth: filled(count, () => worth.gamma(MARK_WORTH_SHAPE) / MARK_WORTH_SHAPE),
    release: filled(count * ANSWERS.length, release.normal),
  };
}

/** @param outcomes - room for the cell's outcome shares, at `draw * 5 + kind` */
function cellDraws(model: ScoreModel, cell: number, outcomes: Float64Array) {
  const [f, a] = [Math.floor(cell / ANSWERS.length), cell % ANSWERS.length];
  const [family, answer] = [FAMILIES[f] ?? 'base', ANSWERS[a] ?? 'run'];
  const alphas = drawnAlphas(model, cell);
  if (alphas) createRandom(`${model.seed}/outcomes/${family}/${answer}`).dirichlets(alphas, outcomes);
  else repeat(meanOutcomes(model.evidence, cell), outcomes);
  return {
    cost: DOWNS.map((down) => worthOf(outcomes, Float64Array.from(cellValues(family, answer, down)))),
    explosives: strided(outcomes, EXPLOSIVE, OUTCOME_KINDS.length),
  };
}

const DOWNS = [1, 2, 3, 4] as const;
const EXPLOSIVE = OUTCOME_KINDS.indexOf('explosive');

/** The pseudo-counts a cell is drawn from; null for a base cell our own film says nothing of. */
function drawnAlphas({ evidence }: ScoreModel, cell: number): Float64Array | null {
  const kinds = OUTCOME_KINDS.length;
  const alphas = evidence.alphas.slice(cell * kinds, (cell + 1) * kinds);
  if (cell >= cellIndex(1, 0)) return alphas;
  const own = evidence.ownFilm[cell] ?? 0;
  if (own === 0) return null;
  const worth = alphas.reduce((sum, alpha) => sum + alpha, 0);
  // Own snaps carry own / worth of the mean, so their sampling error alone is that of worth squared over own snaps.
  return alphas.map((alpha) => (alpha * worth) / own);
}

function repeat(shares: Float64Array, draws: Float64Array): void {
  for (let i = 0; i < draws.length; i++) draws[i] = shares[i % shares.length] as number;
}

/** What each draw of outcome shares is worth at the given values. */
function worthOf(outcomes: Float64Array, values: Float64Array): Float64Array {
  const worth = new Float64Array(outcomes.length / values.length);
  for (let i = 0, at = 0; i < worth.length; i++) {
    let sum = 0;
    for (let kind = 0; kind < values.length; kind++, at++) sum += (outcomes[at] as number) * (values[kind] as number);
    worth[i] = sum;
  }
  return worth;
}

/** Every `step`th number from `first` on. */
function strided(numbers: Float64Array, first: number, step: number): Float64Array {
  const taken = new Float64Array(numbers.length / step);
  for (let i = 0, at = first; i < taken.length; i++, at += step) taken[i] = numbers[at] as number;
  return taken;
}

function answerDraws(seed: string, alphas: Float64Array, count: number): Float64Array {
  const shares = createRandom(seed).dirichlets(alphas, new Float64Array(alphas.length * count));
  const draws = new Float64Array(shares.length);
  for (let a = 0; a < alphas.length; a++) draws.set(strided(shares, a, alphas.length), a * count);
  return draws;
}

function filled(length: number, next: () => number): Float64Array {
  const numbers = new Float64Array(length);
  for (let i = 0; i < length; i++) numbers[i] = next();
  return numbers;
}
