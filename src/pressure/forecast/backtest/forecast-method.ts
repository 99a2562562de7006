import type { ChainKind } from '../forecast-film.ts';
import type { WindowFilm } from './window-film.ts';

/** The shares a method forecasts for a snap, class by class; positive, summing to 1. */
export type Predict = (row: number) => ArrayLike<number>;

/** A way to forecast, as one entry of the list that is judged. */
export interface ForecastMethod {
  /** Stable name in the JSON. */
  readonly id: string;
  /** What it is called in tables. */
  readonly words: string;
  /** Before the look is known (`plan`), or with it (`line`). */
  readonly knows: ChainKind;
  /** Ids of the plainer methods it is set against. */
  readonly against: readonly string[];
  /** Learns from a window's film; null where it has nothing to learn from, as an archive method without an archive. */
  readonly fit: (window: WindowFilm) => Predict | null;
}
