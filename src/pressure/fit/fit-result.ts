import type { FitFeature, FitRule } from '../../game/fit-rules.ts';
import type { Family } from '../../game/vocabulary.ts';
import type { Spread } from '../score/score-result.ts';

/**
 * On what share of the expected snaps a theory is right, neutral, wrong, or cannot be judged. The four means sum to 1.
 * Each interval is 95%: it follows from the forecast's posterior, and what cannot be judged counts as no at its low end
 * and as yes at its high end.
 */
export interface FitShares {
  readonly right: Spread;
  readonly neutral: Spread;
  readonly wrong: Spread;
  /** Share of the expected snaps on which a trigger that decides was not charted, 0 to 1. */
  readonly unknown: number;
  /** Right less wrong, -1 to 1: what families and calls are ordered by. */
  readonly net: Spread;
}

/** One rule on the expected snaps of a situation. */
export interface RuleFired {
  readonly rule: string;
  readonly says: FitRule['says'];
  /** Share of the situation's expected snaps on which its trigger is met. */
  readonly share: number;
  /** Of their film snaps in the situation on which its trigger was charted, those that met it. */
  readonly count: number;
  readonly trials: number;
}

/** What cannot be judged for want of one thing charted. */
export interface UnknownFeature {
  readonly feature: FitFeature;
  /** Column of the film to chart. */
  readonly column: string;
  /** Share of the expected snaps that this thing leaves open, alone or with others. */
  readonly share: number;
}

/** A family in a situation. */
export interface FamilyFit extends FitShares {
  readonly family: Family;
  /** Situation id, or `all`. */
  readonly situation: string;
  /** By falling share. */
  readonly rules: readonly RuleFired[];
  /** By falling share; empty where everything was charted. */
  readonly notCharted: readonly UnknownFeature[];
}

/** A call in a situation: its family's rules, and what this call gives up on purpose counted as wrong. */
export interface CallFit extends FitShares {
  readonly call: string;
  readonly family: Family;
  readonly situation: string;
}

/** Chapter of the report on when each theory is right against this opponent. */
export interface FitChapter {
  /** The rules used: the defaults with the coach's changes. */
  readonly rules: readonly FitRule[];
  /** Every family in every situation, in the order of the situations (`all` first) and the vocabulary. */
  readonly families: readonly FamilyFit[];
  readonly calls: readonly CallFit[];
}
