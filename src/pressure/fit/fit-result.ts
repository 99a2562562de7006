import type { GivenUp } from '../../game/call-library.ts';
import type { Family } from '../../game/families.ts';
import type { FitRule } from '../../game/fit-rules.ts';
import type { Share } from '../../stats/share.ts';
import type { Spread } from '../../stats/spread.ts';

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

/** A family in a situation. */
export interface FamilyFit extends FitShares {
  readonly family: Family;
  /** Situation id, or `all`. */
  readonly situation: string;
  /** By falling share. */
  readonly rules: readonly RuleFired[];
}

/** A call in a situation: its family's rules, and what this call gives up on purpose counted as wrong. */
export interface CallFit extends FitShares {
  readonly call: string;
  readonly family: Family;
  readonly situation: string;
}

/** Where a family turns from right to wrong, in the share of snaps on which some of its rules speak. */
export interface FitBreakEven {
  readonly family: Family;
  /** The family it is measured against; null where right is measured against wrong. */
  readonly against: Family | null;
  readonly situation: string;
  /** The rules counted together. */
  readonly rules: readonly string[];
  /** Share of the expected snaps they show, with its 95% interval. */
  readonly shown: Spread;
  /** Share at which it turns; null when it never turns between 0 and 1. */
  readonly turnsAt: number | null;
  /** True where the family is right, or ahead, below that share; false where above. */
  readonly rightBelow: boolean;
}

/** What charting one column would do for the choice among the pressures. */
export interface FitCharting {
  readonly column: string;
  /** The family of which it leaves most open, and on what share of all expected snaps. */
  readonly family: Family;
  readonly share: number;
  /** Chance that another family has most right less wrong over all their snaps once the column is charted, 0 to 1. */
  readonly chanceChoiceChanges: number;
}

/** Things an offense shows before the snap that a call must answer. */
export const FIT_LOOKS = ['heavy', 'two_backs', 'empty', 'trips', 'fast_motion', 'fast_tempo', 'checked'] as const;
/** One word of {@link FIT_LOOKS}. */
export type FitLook = (typeof FIT_LOOKS)[number];

/** What becomes of a call when the look shows. */
export interface LookCall {
  readonly call: string;
  /** Right less wrong on such snaps, -1 to 1. */
  readonly net: number;
  /** `stays`; `swaps` to a call of the same path that is not wrong there; `leaves` where there is none. */
  readonly does: 'stays' | 'swaps' | 'leaves';
  /** The call to swap to, of the same path. */
  readonly swapTo: string | null;
}

/** One look against this opponent: how often it comes, and what gives way. */
export interface FitAdjustment {
  readonly look: FitLook;
  /** Film snaps that show it. */
  readonly count: number;
  /** Film snaps on which it was charted. */
  readonly trials: number;
  /** Our calls on such snaps; empty where their film shows none. */
  readonly calls: readonly LookCall[];
}

/** How often this opponent meets one thing that calls give up on purpose. */
export interface HoleMet {
  readonly hole: GivenUp;
  /** Of their film snaps on which it is known. */
  readonly met: Share;
  /** Share of all expected snaps, 0 to 1. */
  readonly share: number;
  /** Share of the expected snaps of each situation. */
  readonly situations: readonly { readonly situation: string; readonly share: number }[];
}

/** Chapter of the report on when each theory is right against this opponent. */
export interface FitChapter {
  /** The rules used: the defaults with the coach's changes. */
  readonly rules: readonly FitRule[];
  /** Every family in every situation, in the order of the situations (`all` first) and the vocabulary. */
  readonly families: readonly FamilyFit[];
  readonly calls: readonly CallFit[];
  readonly breakEvens: readonly FitBreakEven[];
  /** By falling chance that the choice changes, then by share. */
  readonly charting: readonly FitCharting[];
  /** In the order of the looks. */
  readonly adjustments: readonly FitAdjustment[];
  /** What our calls give up on purpose. */
  readonly holes: readonly HoleMet[];
}
