import type { Call, Role } from '../../game/call-library.ts';
import { gapOf } from '../../game/lane.ts';
import type { Fault, Side } from './fault.ts';
import { roleTitle } from './role-title.ts';
import { startersOn } from './starters.ts';

type Rusher = Call['rush'][number];
const SIDES: readonly Side[] = ['near', 'far'];

/** Sides on which the widest rusher, an edge, peels with the back. */
export function edgePeelSides(call: Call): readonly Side[] {
  return SIDES.filter((side) => {
    const men = startersOn(call, side);
    return men.some((man) => man.peels && isEdge(man, men));
  });
}

/**
 * Peel men who are not the one widest rusher of their side: an inside man cannot reach a back who releases wide, and
 * two who go with him leave the edge open.
 *
 * @see common practice, no source: the man who peels is the contain rusher on the side of the release
 */
export function peelFaults(call: Call, roles: readonly Role[]): Fault[] {
  return SIDES.flatMap((side) => {
    const men = startersOn(call, side);
    const peelers = men.filter(({ peels }) => peels);
    return [...insideFaults(peelers, men, roles), ...pairFaults(peelers, side, roles)];
  });
}

function insideFaults(peelers: readonly Rusher[], men: readonly Rusher[], roles: readonly Role[]): Fault[] {
  return peelers
    .filter((man) => !isEdge(man, men))
    .map(({ role, lane }) => ({ failure: { kind: 'peel_from_inside', man: roleTitle(role, roles), lane }, role }));
}

function pairFaults(peelers: readonly Rusher[], side: Side, roles: readonly Role[]): Fault[] {
  const [, second] = peelers;
  if (second === undefined) return [];
  const men = peelers.map(({ role }) => roleTitle(role, roles));
  return [{ failure: { kind: 'two_peel', men, side }, role: second.role }];
}

function isEdge({ lane }: Rusher, men: readonly Rusher[]): boolean {
  return gapOf(lane) >= 'C' && men.every((other) => gapOf(other.lane) <= gapOf(lane));
}
