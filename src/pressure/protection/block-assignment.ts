import { solveAssignment } from '../../stats/assignment.ts';
import { gapOf } from './arrival.ts';
import { type Blocker, blockersOf, type Threat } from './protection-blockers.ts';
import type { ProtectionPicture, RusherFate } from './protection-result.ts';

/** What each rusher meets, in the order given, and how many protectors there are and are used. */
export interface BlockAssignment {
  readonly fates: readonly RusherFate['fate'][];
  /** Rushers without a blocker of their own. */
  readonly free: number;
  /** Of those, how many a neighbour with nobody to block may slow down; their fate is `late`. */
  readonly soft: number;
  readonly blockers: number;
  readonly used: number;
}

/**
 * Pairs protectors with rushers by the rules of the picture, so that as many rushers as possible are blocked and those
 * left over are the latest to join, then the widest: blockers work inside out, and the longest way is left open. An idle
 * lineman slows a free man in the gap next to him (half-blocked, `late`), else doubles a neighbour.
 *
 * @see Empty Pass Protection, 2015, for the path argument; that the widest man is the one left is common practice
 */
export function assignBlockers(threats: readonly Threat[], picture: ProtectionPicture): BlockAssignment {
  const blockers = blockersOf(picture);
  const blockerOf = pairUp(threats, blockers);
  const idle = blockers.filter((_, j) => !blockerOf.includes(j));
  const fates: RusherFate['fate'][] = blockerOf.map((j) => fateBehind(blockers[j]));
  const free = fates.filter((fate) => fate === 'free').length;
  const soft = squeeze(threats, fates, idle);
  doubleUp(threats, fates, idle);
  return { fates, free, soft, blockers: blockers.length, used: blockerOf.filter((j) => j >= 0).length };
}

/** The index of each rusher's blocker, -1 for none. */
function pairUp(threats: readonly Threat[], blockers: readonly Blocker[]): readonly number[] {
  if (threats.length === 0 || blockers.length === 0) return threats.map(() => -1);
  const rank = blockingOrder(threats);
  const gains = threats.map((threat, i) =>
    blockers.map((blocker) => (blocker.takes(threat) ? gainOf(rank[i] ?? 0, blocker) : Number.NEGATIVE_INFINITY)),
  );
  return solveAssignment(gains, 'maximize').columnOfRow;
}

/** Rank of each rusher: those at the snap before those who join, then inside before outside, then as listed. */
function blockingOrder(threats: readonly Threat[]): number[] {
  const sorted = [...threats].sort((a, b) => Number(a.late) - Number(b.late) || insideFirst(a, b));
  return threats.map((threat) => sorted.indexOf(threat));
}

function insideFirst(a: Threat, b: Threat): number {
  return gapOf(a.lane).charCodeAt(0) - gapOf(b.lane).charCodeAt(0);
}

/** Every earlier rank outweighs all later ones together; among equals a lineman is spent before a back. */
function gainOf(rank: number, blocker: Blocker): number {
  return 2 ** (20 - rank) - (blocker.name === 'back' ? 1 / 64 : 0);
}

function fateBehind(blocker: Blocker | undefined): RusherFate['fate'] {
  if (!blocker) return 'free';
  return blocker.late ? 'late' : 'blocked';
}

/** Idle linemen slow free men beside them, in place; gives their number. */
function squeeze(threats: readonly Threat[], fates: RusherFate['fate'][], idle: Blocker[]): number {
  let soft = 0;
  for (const blocker of [...idle]) {
    const found = helped(threats, blocker.squeezes, (i) => fates[i] === 'free');
    if (found === undefined) continue;
    fates[found] = 'late';
    idle.splice(idle.indexOf(blocker), 1);
    soft += 1;
  }
  return soft;
}

function doubleUp(threats: readonly Threat[], fates: RusherFate['fate'][], idle: readonly Blocker[]): void {
  for (const blocker of idle) {
    const found = helped(threats, blocker.doubles, (i) => fates[i] === 'blocked');
    if (found !== undefined) fates[found] = 'doubled';
  }
}

/** The index of the innermost rusher in one of the lanes who is open to help. */
function helped(
  threats: readonly Threat[],
  lanes: Blocker['doubles'],
  open: (index: number) => boolean,
): number | undefined {
  const candidates = threats.filter((threat, i) => lanes.includes(threat.lane) && open(i)).sort(insideFirst);
  return candidates[0] && threats.indexOf(candidates[0]);
}
