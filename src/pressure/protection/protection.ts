import type { Call, CallLibrary } from '../../game/call-library.ts';
import { arrivalSeconds, SHOWN_PASSER_DEPTH } from './arrival.ts';
import { blockedQuarter, LATE_BLOCK } from './block-delay.ts';
import { type MetRusher, meetProtection } from './protection-meeting.ts';
import type { CallProtection, ProtectionPicture } from './protection-result.ts';
import type { Rusher } from './rush-threats.ts';
import { sprintProfile } from './sprint.ts';

/** Our eleven and the level they play at. */
export type Defense = Pick<CallLibrary, 'roles' | 'level'>;

/**
 * A call against one protection picture: who is free, slowed, blocked or doubled, and when each would be home.
 * The picture handed back says whether our front covers the guard away from a half slide.
 *
 * @see {@link meetProtection} for the matching, {@link arrivalSeconds} for the times
 */
export function matchProtection(
  call: Call,
  defense: Defense,
  picture: ProtectionPicture,
): Omit<CallProtection, 'share'> {
  const meeting = meetProtection(call, defense.roles, picture);
  const rushers = meeting.rushers.map((rusher) => ({
    role: rusher.role,
    lane: rusher.lane,
    fate: rusher.fate,
    arrival: shownArrival(rusher, unblockedArrival(rusher, defense.level, SHOWN_PASSER_DEPTH)),
  }));
  const { free, soft, peeled, added } = meeting;
  return { call: call.name, picture: meeting.picture, free, soft, peeled, added, rushers };
}

/** Seconds until a rusher would be home if nobody blocked him. */
export function unblockedArrival(rusher: Rusher, level: Defense['level'], passerDepth: number): number {
  const { spot, lane, way, man } = rusher;
  return arrivalSeconds({ spot, lane, way, profile: sprintProfile(level, man) }, passerDepth);
}

function shownArrival({ fate }: MetRusher, free: number): number {
  switch (fate) {
    case 'free':
      return free;
    case 'late':
      return free + LATE_BLOCK.delay;
    case 'blocked':
    case 'doubled':
      return free + blockedQuarter(fate);
    default:
      return fate satisfies never;
  }
}
