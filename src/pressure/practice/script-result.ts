import type { Family } from '../../game/families.ts';
import type { LookKind } from '../../game/look-kinds.ts';
import type { ContactLoad } from './contact.ts';
import type { LookCard } from './look-card.ts';
import type { RepReason } from './rep-look.ts';
import type { RepPeriod } from './rep-period.ts';

/** One repetition of the script. */
export interface ScriptRep {
  readonly number: number;
  readonly day: string;
  readonly period: string;
  readonly contact: string;
  readonly call: string;
  readonly path: string;
  readonly family: Family;
  readonly coverage: string;
  readonly sentFrom: string;
  readonly isNew: boolean;
  readonly situation: string;
  readonly hash: string;
  readonly card: number;
  readonly look: LookKind;
  readonly reasons: readonly RepReason[];
}

/** How often a call is repped, and against what. */
export interface ScriptCall {
  readonly call: string;
  readonly family: Family;
  readonly isNew: boolean;
  readonly reps: number;
  readonly asked: number;
  readonly looks: readonly {
    readonly look: LookKind;
    readonly reps: number;
    readonly reasons: readonly RepReason[];
  }[];
}

/** The practice week on paper: repetitions in order, scout cards, and what could not be fitted in. */
export interface PracticeScript {
  readonly reps: readonly ScriptRep[];
  readonly periods: readonly RepPeriod[];
  readonly cards: readonly LookCard[];
  readonly calls: readonly ScriptCall[];
  readonly contact: ContactLoad;
  /** Calls against looks that must be seen, for which the periods hold no repetition. */
  readonly unmet: readonly { readonly call: string; readonly look: LookKind }[];
}
