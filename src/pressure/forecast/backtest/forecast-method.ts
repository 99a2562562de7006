import type { ChainKind } from '../forecast-film.ts';
import type { WindowFilm } from './window-film.ts';

/** The shares a method forecasts for a snap, class by class; positive, summing to 1. */
export type Predict = (row: number) => ArrayLike<number>;

/** The name of a way to forecast, stable in the JSON. */
export type MethodId =
  | 'own_rate'
  | 'own_down_distance'
  | 'raw_cell'
  | 'raw_cell_look'
  | 'archive_rate'
  | 'archive_down_distance'
  | `chain_${ChainKind}_${'own' | 'archive'}`;

/** A way to forecast, as one entry of the list that is judged. */
export interface ForecastMethod {
  readonly id: MethodId;
  /** Before the look is known (`plan`), or with it (`line`). */
  readonly knows: ChainKind;
  /** Ids of the plainer methods it is set against. */
  readonly against: readonly MethodId[];
  /** Learns from a window's film; null where it has nothing to learn from, as an archive method without an archive. */
  readonly fit: (window: WindowFilm) => Predict | null;
}
