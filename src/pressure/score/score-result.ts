import type { Answer, Family } from '../../game/vocabulary.ts';

/** A mean with a central interval whose level the owner states (80% for scores). */
export interface Spread {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** What one answer adds to a family's score in a situation, in points saved per ten snaps. */
export interface AnswerPart {
  readonly answer: Answer;
  readonly share: number;
  readonly points: number;
}

/** How much each kind of evidence weighs in a score; the three sum to one. */
export interface EvidenceWeights {
  readonly judgement: number;
  readonly openData: number;
  readonly ownFilm: number;
}

/** The quantity that decides for or against a family, and where it turns. */
export interface BreakEven {
  readonly quantity: string;
  readonly shown: number;
  readonly low: number;
  readonly high: number;
  /** Share at which the family is worth as much as what it is measured against; null when it never turns in 0 to 1. */
  readonly turnsAt: number | null;
  /** What the family is measured against there; the base where not said. */
  readonly against?: Family;
  readonly words: string;
}

/** A pressure family in a situation against the four-man base. */
export interface FamilyScore {
  readonly family: Family;
  readonly situation: string;
  /** Points saved per ten snaps, 80% interval. */
  readonly points: Spread;
  /** Explosive plays per hundred snaps, 80% interval. */
  readonly explosives: Spread;
  readonly chanceBest: number;
  readonly chanceBetterThanBase: number;
  readonly answers: readonly AnswerPart[];
  readonly weights: EvidenceWeights;
  readonly ownSnaps: number;
  readonly verdict: 'ahead of base' | 'behind base' | 'no clear difference';
  /** Whether the family fits their protection, back and answers, by the trade's sheet alone. */
  readonly fit: 'sound here' | 'mixed' | 'poor fit';
  readonly reasons: readonly string[];
  readonly breakEven: BreakEven | null;
}

/** A call in a situation: its family's score moved by its own race and side. */
export interface CallScore {
  readonly call: string;
  readonly family: Family;
  readonly situation: string;
  readonly points: Spread;
  readonly explosives: Spread;
  readonly chanceBest: number;
  /** Points saved per ten snaps against each answer alone. */
  readonly byAnswer: readonly { readonly answer: Answer; readonly points: number }[];
}

/** How much the scores would sharpen if one more column were charted for the next game. */
export interface ChartingValue {
  readonly column: string;
  readonly chartedShare: number;
  readonly words: string;
}

/**
 * What the back's release does to the families in a situation: what to add to the points against each answer, per ten
 * snaps, were he always in or always out.
 */
export interface BackRelease {
  /** Situation id, or `all`. */
  readonly situation: string;
  /** Share of passes on which he is planned to get out, 0 to 1. */
  readonly out: number;
  /** By family and answer of the vocabularies. */
  readonly whenIn: readonly (readonly number[])[];
  readonly whenOut: readonly (readonly number[])[];
}

/** Chapter of the report that ranks the families. */
export interface ScoreChapter {
  readonly situations: readonly { readonly id: string; readonly label: string; readonly expectedSnaps: number }[];
  readonly families: readonly FamilyScore[];
  readonly calls: readonly CallScore[];
  readonly charting: readonly ChartingValue[];
  /** Empty where the back's job was not charted. */
  readonly backRelease: readonly BackRelease[];
  /** Where the open data and the trade disagree, in words. */
  readonly disagreements: readonly string[];
  /** What the scores could not be made from, in words: answers not charted, no four-man film of ours, runs. */
  readonly notes?: readonly string[];
}
