import type { Answer } from '../../game/answers.ts';
import type { GivenUp } from '../../game/call-library.ts';
import type { CoverJob } from '../../game/cover-jobs.ts';
import type { Family, TheoryName } from '../../game/families.ts';
import type { LeftOutReason } from './left-out.ts';
import type { MenuRule, RuleKind } from './rule.ts';

/** One call on the menu with its mix. */
export interface MenuCall {
  readonly call: string;
  readonly family: Family;
  readonly path: string;
  readonly coverage: string;
  /** Share of the snaps of each situation on which it is called. */
  readonly mix: readonly { readonly situation: string; readonly share: number }[];
  readonly expectedCalls: number;
  readonly reps: number;
  readonly isNew: boolean;
  /** Where it is called, on what share of those snaps its theory is expected to be right and wrong. */
  readonly right: number;
  readonly wrong: number;
}

/** One step by which a limit could be loosened. */
export type LimitStep = { readonly kind: 'more'; readonly by: number } | { readonly kind: 'lift' };

/**
 * What one limit costs: snaps a game on which the theory is right rather than wrong, less the price of reps, gained if it
 * were loosened by the step. A limit that does not bind costs nothing.
 */
export interface LimitPrice {
  readonly limit: RuleKind | 'regret';
  /** The theory or call, where the kind has several. */
  readonly of?: string;
  readonly step: LimitStep;
  readonly gain: number;
  /** Calls that would come in and go out. */
  readonly added: readonly string[];
  readonly dropped: readonly string[];
}

/** What the plan is worth in a situation when they always give one answer there. */
export interface WorstAnswer {
  readonly answer: Answer;
  /** Points saved per ten snaps against the base. */
  readonly points: number;
}

/** What follows a path if the mix is kept. */
export interface MenuPairing {
  readonly path: string;
  readonly coverage: string;
  /** Share of the path's calls, 0 to 1. */
  readonly share: number;
  /** Calls of the path a game. */
  readonly calls: number;
  /** Largest share allowed of the path's calls beyond the uncounted ones; 1 for no limit. */
  readonly most: number;
  /** Calls of the path a game that do not count, since our film hardly shows the path. */
  readonly uncounted: number;
}

/** How far the plan can be read by one who knows what follows each path most. */
export interface PlanRead {
  /** Share of the planned pressures on which he is right, and who knows no more than what we play most. */
  readonly share: number;
  readonly blind: number;
  /** Share the pairing cap allows. */
  readonly most: number;
  /** Paths that come with one coverage alone, more often than goes unread. */
  readonly lone: readonly LonePath[];
}

/** A path with one coverage, its calls a game, and what else could be taught behind it. */
export interface LonePath {
  readonly path: string;
  readonly coverage: string;
  readonly calls: number;
  readonly others: readonly SecondWord[];
}

/** A coverage that is sound behind a path it is not taught with yet. */
export interface SecondWord {
  readonly coverage: string;
  readonly family: Family;
  /** Right less wrong of its family on all their expected snaps, -1 to 1. */
  readonly net: number;
  readonly men: readonly { readonly role: string; readonly job: CoverJob }[];
}

/** How far a menu is known to be the best: proved, or no more than a gap short of any other. */
export type MenuProof = { readonly proved: true } | { readonly proved: false; readonly gap: number };

/** Another menu beside the chosen one. */
export interface OtherMenu {
  readonly added: readonly string[];
  readonly dropped: readonly string[];
  /** Worth less than the menu by so many snaps a game, and points a game more (plus) or less. */
  readonly less: number;
  readonly points: number;
  readonly proved: boolean;
}

/** Something a reader must know of how the menu came about. */
export type MenuNote =
  | { readonly kind: 'no_theory'; readonly theory: TheoryName }
  | { readonly kind: 'uncounted_paths'; readonly paths: readonly string[] }
  | { readonly kind: 'no_own_rate'; readonly rate: number }
  | { readonly kind: 'short'; readonly sent: number; readonly planned: number }
  /** A carried call that stays at home where they do what it gives up on purpose. */
  | { readonly kind: 'closed'; readonly call: string; readonly hole: GivenUp; readonly situations: readonly string[] };

/** A situation as the menu plans it. */
export interface MenuSituation {
  readonly id: string;
  readonly expectedSnaps: number;
  /** Share of the snaps with five or more, planned; `baseShare` is the rest. */
  readonly rate: number;
  readonly baseShare: number;
  /** Their answer that hurts this mix most there. */
  readonly worst: WorstAnswer;
}

/** The week's menu, or the limits that clash. */
export type MenuResult =
  | {
      readonly kind: 'menu';
      /** Pressures carried, most called first; the four-man base is always carried beside them. */
      readonly calls: readonly MenuCall[];
      readonly situations: readonly MenuSituation[];
      readonly reps: number;
      readonly repsAllowed: number;
      /** Our own film's share of five or more, which the rates bend around; null without it. */
      readonly ownRate: number | null;
      /** Snaps a game on which the called theories are expected right, and wrong. */
      readonly right: number;
      readonly wrong: number;
      /** Points saved a game against always playing the base, by the forecast, and against their worst answer for us. */
      readonly value: number;
      readonly worstValue: number;
      /** Points a game given up where points tell calls apart, what may be given up, and what the limits force on top. */
      readonly regret: { readonly points: number; readonly allowed: number; readonly forced: number };
      readonly nextBest: OtherMenu | null;
      readonly prices: readonly LimitPrice[];
      readonly leftOut: readonly { readonly call: string; readonly why: LeftOutReason }[];
      readonly pairings: readonly MenuPairing[];
      /** How far the path gives the coverage away. */
      readonly read: PlanRead;
      /** Share of our pressures on each path, largest first. */
      readonly paths: readonly { readonly path: string; readonly share: number; readonly calls: number }[];
      readonly explosives: number;
      readonly proof: MenuProof;
      readonly notes: readonly MenuNote[];
    }
  | {
      readonly kind: 'infeasible';
      readonly clashing: readonly (MenuRule | ImpossibleMust)[];
      readonly notes: readonly MenuNote[];
    };

/** A call that must be carried and cannot be. */
export interface ImpossibleMust {
  readonly kind: 'impossible_must';
  readonly of: string;
  /** Why the call is out; null when the library has no such call. */
  readonly why: LeftOutReason | null;
}
