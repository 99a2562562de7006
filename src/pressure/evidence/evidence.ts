import { ANSWERS, FAMILIES } from '../../game/vocabulary.ts';
import type { WeekSettings } from '../../game/week-settings.ts';
import { OUTCOME_KINDS } from '../snap/outcome.ts';
import { CELL_COUNT, cellIndex } from './evidence-cell.ts';
import type { OwnFilmCounts } from './evidence-own-film.ts';
import { answerMark, judgementShare, pointShift } from './judgement.ts';
import type { AnswerHabits } from './judgement-habits.ts';
import { baseShares, openEvidence } from './open-data.ts';

/** What is joined: the coach's weights, our own film, and how their screens and runs split. */
export interface EvidenceInput {
  readonly settings: WeekSettings;
  readonly ownFilm: OwnFilmCounts;
  readonly habits: AnswerHabits;
}

/** The joined evidence of every family against every answer, by cell. */
export interface JoinedEvidence {
  /** Dirichlet pseudo-counts at `cell * 5 + kind`. */
  readonly alphas: Float64Array;
  /** Worth of each kind of evidence in each cell, in our own snaps. */
  readonly judgement: Float64Array;
  readonly openData: Float64Array;
  readonly ownFilm: Float64Array;
}

/** Fewest snaps' worth in a cell: where nothing speaks, the base's outcomes stand in for one snap. */
export const LEAST_EVIDENCE = 1;

/** Snaps' worth of judgement that always stays, far below any digit: what our film has not seen is not impossible. */
const LEAST_JUDGEMENT = 1e-12;

/**
 * Joins the three kinds of evidence as Dirichlet pseudo-counts, cell by cell: the trade's judgement as the base's
 * outcome shares shifted by the sheet's mark, worth the coach's `judgement_snaps`; open data as its own shares, worth
 * what its size rule says at this level; our own film as counts, every snap one. The multipliers are the coach's.
 */
export function joinEvidence(input: EvidenceInput): JoinedEvidence {
  const kinds = OUTCOME_KINDS.length;
  const joined = {
    alphas: new Float64Array(CELL_COUNT * kinds),
    judgement: new Float64Array(CELL_COUNT),
    openData: new Float64Array(CELL_COUNT),
    ownFilm: new Float64Array(CELL_COUNT),
  };
  for (let f = 0; f < FAMILIES.length; f++) {
    for (let a = 0; a < ANSWERS.length; a++) {
      const cell = cellIndex(f, a);
      const { alphas, judgement, openData, ownFilm } = joinCell(input, f, a);
      joined.alphas.set(alphas, cell * kinds);
      joined.judgement[cell] = judgement;
      joined.openData[cell] = openData;
      joined.ownFilm[cell] = ownFilm;
    }
  }
  return joined;
}

/** Worth of all evidence in a cell, in our own snaps. */
export function cellWorth(evidence: JoinedEvidence, cell: number): number {
  return (evidence.judgement[cell] ?? 0) + (evidence.openData[cell] ?? 0) + (evidence.ownFilm[cell] ?? 0);
}

/** Mean shares of the outcome kinds in a cell, written over the given five places. */
export function meanOutcomes(evidence: JoinedEvidence, cell: number): Float64Array {
  const kinds = OUTCOME_KINDS.length;
  const worth = cellWorth(evidence, cell);
  return evidence.alphas.slice(cell * kinds, (cell + 1) * kinds).map((alpha) => alpha / worth);
}

function joinCell({ settings, ownFilm, habits }: EvidenceInput, f: number, a: number) {
  const [family, answer] = [FAMILIES[f] ?? 'base', ANSWERS[a] ?? 'run'];
  const { weights, level } = settings;
  const open = openEvidence(family, answer, level);
  const openData = weights.open_data * (open?.size ?? 0);
  const own = ownCell(ownFilm.counts, cellIndex(f, a), weights.own_film);
  const ownWorth = own.reduce((sum, count) => sum + count, 0);
  const judgement = Math.max(weights.judgement_snaps, LEAST_EVIDENCE - openData - ownWorth, LEAST_JUDGEMENT);
  const base = baseShares(answer);
  const shift = pointShift(base);
  // The mark's effect on the joined cell is the judgement's share of a typical cell, however much this one holds.
  const points = (answerMark(family, answer, habits) * judgementShare(settings) * (judgement + openData)) / judgement;
  const alphas = base.map((share, kind) => {
    const judged = judgement === 0 ? 0 : judgement * share + judgement * points * (shift[kind] ?? 0);
    return judged + openData * (open?.shares[kind] ?? 0) + (own[kind] ?? 0);
  });
  return { alphas, judgement, openData, ownFilm: ownWorth };
}

function ownCell(counts: Float64Array, cell: number, weight: number): Float64Array {
  const kinds = OUTCOME_KINDS.length;
  return counts.slice(cell * kinds, (cell + 1) * kinds).map((count) => weight * count);
}
