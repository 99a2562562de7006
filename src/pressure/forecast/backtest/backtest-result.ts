import type { ReliabilityBin } from '../../../stats/reliability.ts';
import type { ChainKind } from '../forecast-film.ts';
import type { Target } from '../forecast-result.ts';
import type { MethodId } from './forecast-method.ts';
import type { TellRecord } from './tell-record.ts';

/** What one way to forecast scored on the games it had not seen. Losses are means over games of the mean of a snap. */
export interface MethodScore {
  readonly id: MethodId;
  /** Before the look is known (`plan`), or with it (`line`). */
  readonly knows: ChainKind;
  readonly games: number;
  readonly snaps: number;
  /** Nats a snap, lower is better. */
  readonly logLoss: number;
  /** Mean squared error: (p - y)² for two classes, summed over the classes for more. */
  readonly brier: number;
  /** Snaps on which the most likely class came. */
  readonly right: number;
  /** Line of the outcome's logit on the forecast's, for targets of two classes; ideal is slope 1, intercept 0. */
  readonly calibration: { readonly slope: number | null; readonly intercept: number | null } | null;
  /** Stated shares against what came: of the first class for two, of every class for more. */
  readonly reliability: readonly ReliabilityBin[];
  /** This method against plainer ones, on the games both could forecast. */
  readonly against: readonly PairedDifference[];
}

/** One method's loss less another's, paired by game. */
export interface PairedDifference {
  readonly id: MethodId;
  readonly games: number;
  /** Games in which this method had the lower loss. */
  readonly won: number;
  /** Mean over games; below 0 this method is better. */
  readonly difference: number;
  /** With the offense as unit where there are three or more, else with the game; null under three units. */
  readonly standardError: number | null;
  readonly unit: 'offense' | 'game';
}

/** Sizes by which count intervals are separated: snaps of the bucket in the game that was forecast. */
export const BUCKET_SIZES = [
  { id: 'under_5', least: 1, most: 4 },
  { id: 'from_5', least: 5, most: 9 },
  { id: 'from_10', least: 10, most: 19 },
  { id: 'from_20', least: 20, most: Number.POSITIVE_INFINITY },
] as const;

/** One of {@link BUCKET_SIZES}, or `game` for all snaps of a game. */
export type CountSize = (typeof BUCKET_SIZES)[number]['id'] | 'game';

/** How often the 95% intervals for the next game's counts held the count that came. */
export interface CountCoverage {
  readonly size: CountSize;
  /** Intervals: one per bucket, game and class, of two classes the first only. */
  readonly intervals: number;
  readonly covered: number;
  /** Mean width as a share of the bucket's snaps; null without an interval. */
  readonly width: number | null;
  /** Share they would cover if the forecast were right: counts are whole, so above 0.95; null without an interval. */
  readonly due: number | null;
}

/** One target judged. */
export interface TargetScore {
  readonly target: Target;
  readonly classes: readonly string[];
  /** Snaps of the games forecast on which the question arises and was charted. */
  readonly snaps: number;
  /** Snaps on which it may arise but was not charted: they are in no score. */
  readonly notCharted: number;
  readonly games: number;
  readonly methods: readonly MethodScore[];
  /** Of the forecast on the page: the chain before the look, with the archive where there is one. */
  readonly coverage: readonly CountCoverage[];
}

/** Everything a backtest says. */
export interface BacktestResult {
  readonly offenses: number;
  /** Games forecast. */
  readonly games: number;
  readonly snaps: number;
  /** Games before the one forecast that it was forecast from. */
  readonly trainedOn: number | 'all';
  /** Games forecast from all other games of an offense with fewer than five, later ones too. */
  readonly leftOneOut: number;
  /** Offenses with a single game, which can be neither forecast nor learned from alone. */
  readonly singleGames: number;
  /** Games forecast with other offenses' film behind them. */
  readonly withArchive: number;
  readonly targets: readonly TargetScore[];
  /** What became of the tells; null when they were not asked for. */
  readonly tells: TellRecord | null;
}
