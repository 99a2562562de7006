import { type Film, numberAt } from '../../game/film.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';

/**
 * What score and clock ask of an offense, in order of precedence. The cuts (2 and 5 minutes, 9 and 17 points, the
 * 3-yard line) are the ones with which this partition was measured on open professional play data, seasons 2022-23.
 */
export const GAME_STATES = [
  { id: 'at_the_goal', label: 'inside the 3-yard line' },
  { id: 'two_minute', label: 'last two minutes of a half' },
  { id: 'holding_lead', label: 'leading in the last five minutes' },
  { id: 'well_ahead', label: 'well ahead in the second half' },
  { id: 'chasing', label: 'behind late' },
  { id: 'far_behind', label: 'far behind in the third quarter' },
  { id: 'normal', label: 'no pressure from score or clock' },
] as const;
/** The id of one of {@link GAME_STATES}. */
export type GameStateId = (typeof GAME_STATES)[number]['id'];

/** What can be known of score and clock; whatever was not charted is left out. */
export interface ScoreAndClock {
  /** 1 to 4; 5 and up are overtime. */
  readonly quarter?: number | undefined;
  /** Seconds left in the quarter. */
  readonly clock?: number | undefined;
  /** The offense's score less the defense's. */
  readonly margin?: number | undefined;
  readonly yardsToGoal?: number | undefined;
}

/**
 * The game state of a snap, or undefined where what it depends on was not charted. The first quarter needs no score
 * and no clock, the second no score, the third no clock.
 */
export function gameStateOf(snap: ScoreAndClock): GameStateId | undefined {
  if (snap.yardsToGoal !== undefined && snap.yardsToGoal <= 3) return 'at_the_goal';
  if (snap.quarter === undefined) return undefined;
  if (snap.quarter <= 1) return 'normal';
  if (snap.quarter === 2) return secondQuarter(snap.clock);
  return snap.quarter === 3 ? thirdQuarter(snap.margin) : lateGame(snap.clock, snap.margin);
}

/** The game state of every snap as an index into {@link GAME_STATES}; 255 where it is not known. */
export function gameStateCodes(chart: Film): Uint8Array {
  const index = new Map<GameStateId, number>(GAME_STATES.map(({ id }, i) => [id, i]));
  return codesBySnap(chart.size, (i) => {
    const state = gameStateOf({
      quarter: numberAt(chart, 'quarter', i),
      clock: numberAt(chart, 'clock', i),
      margin: numberAt(chart, 'score_margin', i),
      yardsToGoal: numberAt(chart, 'ball_on', i),
    });
    return state === undefined ? NOT_KNOWN : (index.get(state) ?? NOT_KNOWN);
  });
}

const TWO_MINUTES = 120;
const FIVE_MINUTES = 300;

function secondQuarter(clock: number | undefined): GameStateId | undefined {
  if (clock === undefined) return undefined;
  return clock <= TWO_MINUTES ? 'two_minute' : 'normal';
}

function thirdQuarter(margin: number | undefined): GameStateId | undefined {
  if (margin === undefined) return undefined;
  if (margin >= 17) return 'well_ahead';
  return margin <= -17 ? 'far_behind' : 'normal';
}

function lateGame(clock: number | undefined, margin: number | undefined): GameStateId | undefined {
  if (clock === undefined || margin === undefined) return undefined;
  if (clock <= TWO_MINUTES && margin <= 0) return 'two_minute';
  if (margin > 0 && clock <= FIVE_MINUTES) return 'holding_lead';
  if (margin >= 9) return 'well_ahead';
  return margin <= -9 || (margin < 0 && clock <= FIVE_MINUTES) ? 'chasing' : 'normal';
}
