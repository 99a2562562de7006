import type { Share } from '../../stats/share.ts';
import type { SeenValue } from './tell-feature.ts';

/** The questions the tool forecasts; each has its own classes. */
export const TARGETS = [
  'answer',
  'run_or_pass',
  'screen',
  'quick_release',
  'motion',
  'protectors',
  'slide_to_back',
  'slide_to_field',
  'slide_to_strength',
  'back_job',
] as const;
/** One word of {@link TARGETS}. */
export type Target = (typeof TARGETS)[number];

/** One class of a forecast: the posterior share, its interval, and the plain count on film beside it. */
export interface ForecastClass {
  readonly name: string;
  /** Posterior mean, 0 to 1. */
  readonly share: number;
  /** 95% interval of the long-run share. */
  readonly low: number;
  readonly high: number;
  /** Dirichlet pseudo-count of the class; the classes' sum is the forecast's concentration. */
  readonly alpha: number;
  /** What the opponent's own film shows in this situation, with its Wilson interval. */
  readonly film: Share;
}

/** How many of the next `snaps` snaps will be of one class, as a central 95% range (game-to-game spread included). */
export interface ExpectedCount {
  readonly name: string;
  readonly low: number;
  readonly high: number;
}

/** What a target will be in a situation, where that statement mostly comes from, and how much film stands behind it. */
export interface Forecast {
  readonly target: Target;
  /** Situation id, or `all`. */
  readonly situation: string;
  readonly classes: readonly ForecastClass[];
  /** Opponent snaps of this situation on which the target was charted. */
  readonly ownSnaps: number;
  /** Level of the chain the share mostly comes from: their snaps here, all their snaps, or other offenses. */
  readonly mostlyFrom: 'here' | 'all_their_snaps' | 'archive' | 'nothing';
  /**
   * How much of the share is their own film, here and in all their snaps, 0 to 1; the rest is other offenses. 1 without
   * other offenses' film.
   */
  readonly ownShare: number;
  /** Snaps of this situation expected on Friday. */
  readonly nextSnaps: number;
  /** Empty when fewer than five such snaps are expected: a count forecast says nothing then. */
  readonly expected: readonly ExpectedCount[];
  /** True when the opponent's own snaps of the situation are fewer than 20. */
  readonly thin: boolean;
}

/** What follows when they line up in a certain way, of all such snaps or of one down and distance. */
export interface LineForecast {
  /** `look`: by where the quarterback stands, or an empty backfield. `receivers`: by how the receivers stand. */
  readonly kind: 'look' | 'receivers';
  /** Id of the look or of the receivers' look. */
  readonly look: string;
  /** Situation id, or `all`. */
  readonly situation: string;
  /** Their snaps that look so. */
  readonly snaps: number;
  /** One a target. */
  readonly forecasts: readonly Forecast[];
}

/** A habit that goes beyond what the forecast expected there. */
export interface Tell {
  readonly id: string;
  /** What is seen before the snap, one thing a feature. */
  readonly seen: readonly SeenValue[];
  readonly target: Target;
  /** The class that follows more often than expected. */
  readonly follows: string;
  readonly film: Share;
  /** Share the forecast expected on those snaps. */
  readonly expected: number;
  /**
   * `plan_with`: it showed in most games, and tells of its kind held in backtests. `so_far`: it came so on film, and is
   * no reason to expect it again.
   */
  readonly standing: 'plan_with' | 'so_far';
  /** Share to plan with: what the forecast expected, and the part of the excess that such tells kept; no part so far. */
  readonly planWith: number;
  readonly p: number;
  readonly adjusted: number;
  readonly games: readonly { readonly game: string; readonly count: number; readonly trials: number }[];
  /** Games in which it came more often than expected. */
  readonly gamesShown: number;
  readonly oneGameOnly: boolean;
  /** Indices into the opponent chart of the snaps counted. */
  readonly snaps: readonly number[];
}

/** All habits looked for, and those that passed the correction over everything looked at. */
export interface TellSearch {
  readonly looked: number;
  readonly discoveryRate: number;
  readonly tells: readonly Tell[];
}

/** The forecast judged on the user's own film for one target: mean log loss a snap, lower is better. */
export interface BacktestTarget {
  readonly target: Target;
  readonly games: number;
  readonly snaps: number;
  readonly model: number;
  readonly plainRate: number;
  readonly downAndDistance: number;
  readonly rawCell: number;
  /** Games in which the model beat the plain rate. */
  readonly gamesWon: number;
  /** Mean of model less plain rate over games, and its standard error (null under three games). */
  readonly difference: number;
  readonly standardError: number | null;
}

/** The forecast judged on their own games. */
export interface BacktestVerdict {
  readonly targets: readonly BacktestTarget[];
}

/** Chapter of the report on what they will do. */
export interface ForecastChapter {
  readonly forecasts: readonly Forecast[];
  /** Pass, screen and quick release with the look known. */
  readonly line: readonly LineForecast[];
  readonly tells: TellSearch;
  readonly backtest: BacktestVerdict | null;
  /** Whether other offenses' film or tallies had a part in it. */
  readonly archive: { readonly used: boolean };
}
