import { type Film, numberAt } from '../../game/film.ts';
import { BACK_SPOTS } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { gameStateCodes } from './game-state.ts';
import { lookCodes, receiverCodes } from './look.ts';
import { NOT_KNOWN } from './not-known.ts';
import { situationCodes } from './situation.ts';
import { wordClasses } from './word-classes.ts';

/** What the forecast knows of every snap before the ball is snapped, as codes; 255 where it was not charted. */
export interface SnapCells {
  readonly size: number;
  /** Index into the situations. */
  readonly situation: Uint8Array;
  /** Game state, kept apart for more than ten yards to go after first down: `state * 2 + beyond`. */
  readonly moment: Uint8Array;
  /** Index into the looks. */
  readonly look: Uint8Array;
  /** Index into the receivers' looks. */
  readonly receivers: Uint8Array;
  /** Index into the vocabulary's back spots. */
  readonly backSpot: Uint8Array;
}

/**
 * The cells of a chart. The codes mean the same in every chart, so that cells of two charts can be put together.
 *
 * @param cuts - the staff's cut-offs
 */
export function snapCells(chart: Film, cuts: SituationCuts): SnapCells {
  return {
    size: chart.size,
    situation: situationCodes(chart, cuts),
    moment: momentCodes(chart),
    look: lookCodes(chart),
    receivers: receiverCodes(chart),
    backSpot: backSpotCodes(chart),
  };
}

/** The cells of `first`, then those of `second`. */
export function joinCells(first: SnapCells, second: SnapCells): SnapCells {
  return {
    size: first.size + second.size,
    situation: joinCodes(first.situation, second.situation),
    moment: joinCodes(first.moment, second.moment),
    look: joinCodes(first.look, second.look),
    receivers: joinCodes(first.receivers, second.receivers),
    backSpot: joinCodes(first.backSpot, second.backSpot),
  };
}

/** Levels of the chain for the plan, made before the look is known. */
export function planLevels(cells: SnapCells): readonly Uint8Array[] {
  return [cells.situation, cells.moment];
}

/** Levels of the chain for the line of scrimmage; receivers and back come last, so that a blank there costs nothing. */
export function lineLevels(cells: SnapCells): readonly Uint8Array[] {
  return [cells.look, cells.situation, cells.moment, cells.receivers, cells.backSpot];
}

/** Two code columns as one. */
export function joinCodes(first: Uint8Array, second: Uint8Array): Uint8Array {
  const joined = new Uint8Array(first.length + second.length);
  joined.set(first);
  joined.set(second, first.length);
  return joined;
}

function momentCodes(chart: Film): Uint8Array {
  return gameStateCodes(chart).map((state, i) => {
    const beyond = (numberAt(chart, 'down', i) ?? 1) > 1 && (numberAt(chart, 'to_go', i) ?? 0) > 10;
    return state === NOT_KNOWN ? NOT_KNOWN : state * 2 + Number(beyond);
  });
}

function backSpotCodes(chart: Film): Uint8Array {
  const spotAt = wordClasses(chart, 'back_spot', (spot = '') => {
    const code = (BACK_SPOTS as readonly string[]).indexOf(spot);
    return code === -1 ? NOT_KNOWN : code;
  });
  return codesBySnap(chart.size, spotAt);
}
