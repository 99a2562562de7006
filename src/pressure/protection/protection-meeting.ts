import type { Call, Role } from '../../game/call-library.ts';
import { type Spot, usualSpot } from './arrival.ts';
import { assignBlockers } from './block-assignment.ts';
import type { ProtectionPicture, RusherFate } from './protection-result.ts';
import { type Rusher, rushOfCall } from './rush-threats.ts';

/** A rusher of a call against one picture and what he meets. */
export interface MetRusher extends Rusher {
  readonly fate: RusherFate['fate'];
}

/** A call against one picture, before arrivals are shown. */
export interface Meeting {
  readonly picture: ProtectionPicture;
  readonly rushers: readonly MetRusher[];
  readonly free: number;
  readonly soft: number;
  readonly peeled: readonly string[];
  readonly added: readonly string[];
}

/**
 * Pairs a call's rushers with the protectors of a picture. A half slide is taken with the guard away from it covered
 * when the call puts a man on the line over him, and uncovered when not, whatever the picture says of the guard.
 */
export function meetProtection(call: Call, roles: readonly Role[], picture: ProtectionPicture): Meeting {
  const seen = withGuard(call, roles, picture);
  const { rushers, peeled, added } = rushOfCall(call, roles, seen);
  const { fates, free, soft } = assignBlockers(rushers, seen);
  const met = rushers.map((rusher, i) => ({ ...rusher, fate: fates[i] ?? ('free' as const) }));
  return { picture: seen, rushers: met, free, soft, peeled, added };
}

function withGuard(call: Call, roles: readonly Role[], picture: ProtectionPicture): ProtectionPicture {
  const half = picture.protection === 'half_slide_covered' || picture.protection === 'half_slide_uncovered';
  if (!half || picture.slide === 'none') return picture;
  const covered = guardCovered(call, roles, picture.slide === 'near' ? 'far' : 'near');
  return { ...picture, protection: covered ? 'half_slide_covered' : 'half_slide_uncovered' };
}

/** Yards from the ball between which a man on the line covers the guard: shade of the guard to inside the tackle. */
const GUARD = { inside: 1, outside: 2.2 };

/** Yards off the ball up to which a man is on the line. */
const ON_THE_LINE = 1.5;

function guardCovered(call: Call, roles: readonly Role[], side: 'near' | 'far'): boolean {
  const sign = side === 'near' ? 1 : -1;
  return roles.some((role) => {
    const { lateral, depth } = lineUpSpot(role, call);
    const width = sign * lateral;
    return depth <= ON_THE_LINE && width >= GUARD.inside && width <= GUARD.outside;
  });
}

function lineUpSpot(role: Role, call: Call): Spot {
  return call.rush.find((rusher) => rusher.role === role.id)?.from ?? usualSpot(role, call);
}
