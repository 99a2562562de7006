import type { Call, Role } from '../../game/call-library.ts';
import { gapOf } from '../../game/lane.ts';
import type { Fault } from './fault.ts';
import { roleTitle } from './role-title.ts';
import { startersOn } from './starters.ts';

type Rusher = Call['rush'][number];
type Side = 'near' | 'far';
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
    .map(({ role, lane }) => ({
      rule: 'peel',
      role,
      words: `${roleTitle(role, roles)} peels from the ${lane.replace('_', ' ')} lane; the widest man, outside the tackle, has the back`,
    }));
}

function pairFaults(peelers: readonly Rusher[], side: Side, roles: readonly Role[]): Fault[] {
  const [, second] = peelers;
  if (second === undefined) return [];
  const names = peelers.map(({ role }) => roleTitle(role, roles)).join(' and ');
  return [{ rule: 'peel', role: second.role, words: `${names} peel on the ${side} side; one man goes with the back` }];
}

function isEdge({ lane }: Rusher, men: readonly Rusher[]): boolean {
  return gapOf(lane) >= 'C' && men.every((other) => gapOf(other.lane) <= gapOf(lane));
}
