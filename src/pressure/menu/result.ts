/** One call on the menu with its mix. */
export interface MenuCall {
  readonly call: string;
  readonly family: string;
  readonly path: string;
  readonly coverage: string;
  /** Share of the snaps of each situation on which it is called. */
  readonly mix: readonly { readonly situation: string; readonly share: number }[];
  readonly expectedCalls: number;
  readonly reps: number;
  readonly why: string;
}

/** What one limit costs: points a game gained, by the plan's measure, if it were loosened by the stated step. */
export interface LimitPrice {
  readonly limit: string;
  readonly step: string;
  readonly points: number;
}

/** What the plan is worth in a situation when they always give one answer there. */
export interface WorstAnswer {
  readonly answer: string;
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
  readonly calls?: number;
  /** Largest share allowed of the path's calls beyond the uncounted ones. */
  readonly most?: number;
  /** Calls of the path a game that do not count, since our film hardly shows the path. */
  readonly uncounted?: number;
}

/** How far the menu is known to be the best. */
export interface MenuProof {
  /** True when no menu can be worth more than the one chosen. */
  readonly finished: boolean;
  /** True when the next-best menu is proved too, and not merely the best other one found. */
  readonly nextProved?: boolean;
  /** Points a game by which an unseen menu could be worth more at most, by the plan's measure. */
  readonly gap: number;
  /** Parts of the search looked at, and linear programs solved for sets of calls. */
  readonly parts: number;
  readonly programs: number;
}

/** The week's menu, or the limits that clash. */
export type MenuResult =
  | {
      readonly kind: 'menu';
      /** Pressures carried; the four-man base is always carried beside them and fills up every situation. */
      readonly calls: readonly MenuCall[];
      readonly situations: readonly {
        readonly id: string;
        readonly label: string;
        readonly expectedSnaps: number;
        readonly baseShare: number;
        /** Their answer that hurts this mix most there. */
        readonly worst?: WorstAnswer;
      }[];
      readonly reps: number;
      readonly repsAllowed: number;
      /** Points saved a game against always playing the base, by the forecast, and against their best answer. */
      readonly value: number;
      readonly worstValue: number;
      /** Trust times `value` plus the rest times `worstValue`: what menus are compared by. */
      readonly planValue?: number;
      /** The best menu of another set of calls: `value` by the forecast, `planValue` by what menus are compared by. */
      readonly nextBest: { readonly value: number; readonly difference: string; readonly planValue?: number };
      readonly prices: readonly LimitPrice[];
      readonly leftOut: readonly { readonly call: string; readonly why: string }[];
      readonly pairings: readonly MenuPairing[];
      readonly explosives: number;
      readonly proof?: MenuProof;
      /** What the reader must know of how this menu came about, in words. */
      readonly notes?: readonly string[];
    }
  | { readonly kind: 'infeasible'; readonly clashing: readonly string[]; readonly notes?: readonly string[] };
