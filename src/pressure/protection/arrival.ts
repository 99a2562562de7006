import type { Call, Lane, Role } from '../../game/call-library.ts';
import { gapOf, sideOf } from '../../game/lane.ts';
import { type SprintProfile, sprintSeconds } from './sprint.ts';

/** A place on the field as one call sees it: yards from the ball, plus toward the near side, and yards off the ball. */
export interface Spot {
  readonly lateral: number;
  readonly depth: number;
}

/** How a rusher gets to his lane. */
export type RushWay = Call['rush'][number]['way'];

/** Depth of the passer at which arrivals are shown, in yards: a five-step drop, or three steps from a deep snap. */
export const SHOWN_PASSER_DEPTH = 7;

/** What decides when a rusher who meets nobody is home. */
export interface UnblockedRush {
  readonly spot: Spot;
  readonly lane: Lane;
  readonly way: RushWay;
  readonly profile: SprintProfile;
  /** Yards a second at the snap, for a man already moving. */
  readonly startSpeed?: number;
}

/** Yards from the ball at which each gap is crossed: inside guard, guard to tackle, outside tackle, outside tight end. */
const GAP_YARDS = { A: 0.7, B: 2.4, C: 3.66, D: 5 } as const;

/**
 * Seconds before a rusher is under way: reaction to the snap 0.15-0.25; a looper waits for the man he goes behind; a
 * man who reads the back 0.4-0.8. Middles of the ranges; judgment.
 */
export const START_DELAY: Readonly<Record<RushWay, number>> = { straight: 0.2, loop: 0.5, late_if_back_blocks: 0.6 };

/**
 * Seconds from the snap until a rusher who meets nobody reaches the passer.
 *
 * @param passerDepth - yards behind the line
 */
export function arrivalSeconds(rush: UnblockedRush, passerDepth: number): number {
  const yards = rushYards(rush.spot, rush.lane, passerDepth);
  return START_DELAY[rush.way] + sprintSeconds(yards, rush.profile, rush.startSpeed ?? 0);
}

/**
 * Yards a rusher runs: to his gap and from there to the passer, or straight at the passer when he starts so wide that
 * the straight line already passes outside his gap.
 */
export function rushYards(spot: Spot, lane: Lane, passerDepth: number): number {
  const gap = gapLateral(lane);
  const crossing = (spot.lateral * passerDepth) / (passerDepth + spot.depth);
  if (gapOf(lane) >= 'C' && crossing / gap >= 1) return Math.hypot(spot.lateral, spot.depth + passerDepth);
  return Math.hypot(spot.lateral - gap, spot.depth) + Math.hypot(gap, passerDepth);
}

/** Where a rusher starts, as the call sees it: his own spot in the call, else his usual spot. */
export function rushSpot(rusher: Call['rush'][number], role: Role, call: Call): Spot {
  return rusher.from ?? usualSpot(role, call);
}

/**
 * A man's usual spot as the call sees it. A call from the boundary has the boundary on its near side; every other call
 * is written with the field there.
 */
export function usualSpot(role: Role, call: Pick<Call, 'sent_from'>): Spot {
  const sign = call.sent_from === 'boundary' ? -1 : 1;
  return { lateral: sign * role.lateral, depth: role.depth };
}

function gapLateral(lane: Lane): number {
  return (sideOf(lane) === 'near' ? 1 : -1) * GAP_YARDS[gapOf(lane)];
}
