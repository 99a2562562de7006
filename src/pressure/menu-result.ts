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
  /** Share of posterior draws in which the call makes the menu. */
  readonly inDraws: number;
  readonly why: string;
}

/** What one limit costs: points a game gained if it were loosened by the stated step. */
export interface LimitPrice {
  readonly limit: string;
  readonly step: string;
  readonly points: number;
}

/** The week's menu, or the limits that clash. */
export type MenuResult =
  | {
      readonly kind: 'menu';
      readonly calls: readonly MenuCall[];
      readonly situations: readonly {
        readonly id: string;
        readonly label: string;
        readonly expectedSnaps: number;
        readonly baseShare: number;
      }[];
      readonly reps: number;
      readonly repsAllowed: number;
      /** Points saved a game against always playing the base, by the forecast, and against their best answer. */
      readonly value: number;
      readonly worstValue: number;
      readonly nextBest: { readonly value: number; readonly difference: string };
      readonly prices: readonly LimitPrice[];
      readonly leftOut: readonly { readonly call: string; readonly why: string }[];
      readonly pairings: readonly { readonly path: string; readonly coverage: string; readonly share: number }[];
      readonly explosives: number;
    }
  | { readonly kind: 'infeasible'; readonly clashing: readonly string[] };
