import type { Lane } from '../../game/call-library.ts';
import { gapOf } from '../../game/lane.ts';
import { solveAssignment } from '../../stats/assignment.ts';
import { byName } from './by-name.ts';
import { type Blocker, blockersOf, type Threat } from './protection-blockers.ts';
import type { ProtectionPicture, RusherFate } from './protection-result.ts';

/** What each rusher meets, in the order given, and how many protectors there are and are used. */
export interface BlockAssignment {
  readonly fates: readonly RusherFate['fate'][];
  /** Rushers without a blocker of their own. */
  readonly free: number;
  /** Of those, how many a neighbor with nobody to block may slow down; their fate is `late`. */
  readonly soft: number;
  readonly blockers: number;
  readonly used: number;
}

/**
 * Pairs protectors with rushers by the rules of the picture, so that as many rushers as possible are blocked and those
 * left over are the latest to join, then the widest: blockers work inside out, and the longest way is left open. A back
 * works outside in: of the men who get a blocker he has the widest he may take. An idle lineman slows a free man in the
 * gap next to him (half-blocked, `late`), else doubles a neighbor. The order in which rushers are listed means nothing.
 *
 * @see Empty Pass Protection, 2015, for the path argument; that the widest man is the one left, and that a scanning back
 *   ends on the edge, are common practice, no source
 */
export function assignBlockers(threats: readonly Threat[], picture: ProtectionPicture): BlockAssignment {
  const order = threats.map((_, i) => i).sort((a, b) => mostDangerousFirst(threats[a], threats[b]));
  const ranked = order.flatMap((i) => threats[i] ?? []);
  const blockers = blockersOf(picture);
  const blockerOf = pairUp(ranked, blockers);
  const idle = blockers.filter((_, j) => !blockerOf.includes(j));
  const fates: RusherFate['fate'][] = blockerOf.map((j) => fateBehind(blockers[j]));
  const free = fates.filter((fate) => fate === 'free').length;
  const soft = squeeze(ranked, fates, idle);
  doubleUp(ranked, fates, idle);
  const used = blockerOf.filter((j) => j >= 0).length;
  const asListed = threats.map((_, i) => fates[order.indexOf(i)] ?? 'free');
  return { fates: asListed, free, soft, blockers: blockers.length, used };
}

/**
 * The order in which blockers look at rushers: those at the snap before those who join, then inside before outside, then
 * the shorter way; by name where two are level in all of that, so that it is always the same man.
 */
function mostDangerousFirst(a: Threat | undefined, b: Threat | undefined): number {
  if (a === undefined || b === undefined) return 0;
  return Number(a.late) - Number(b.late) || insideFirst(a, b) || a.path - b.path || byName(a, b);
}

function insideFirst(a: Threat, b: Threat): number {
  return gapOf(a.lane).charCodeAt(0) - gapOf(b.lane).charCodeAt(0);
}

/** The index of each rusher's blocker, -1 for none; rushers come most dangerous first. */
function pairUp(ranked: readonly Threat[], blockers: readonly Blocker[]): readonly number[] {
  if (ranked.length === 0 || blockers.length === 0) return ranked.map(() => -1);
  const gains = ranked.map((threat, rank) =>
    blockers.map((blocker) => (blocker.takes(threat) ? gainOf(rank, blocker) : Number.NEGATIVE_INFINITY)),
  );
  return solveAssignment(gains, 'maximize').columnOfRow;
}

/**
 * Every earlier rank outweighs all later ones together. Among equals a lineman is spent before a back, and a back goes to
 * the last in rank, which is the widest; eight ranks stay below the lineman's advantage.
 */
function gainOf(rank: number, blocker: Blocker): number {
  return 2 ** (20 - rank) - (blocker.name === 'back' ? 1 / 64 - rank / 1024 : 0);
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
  const found = [...threats.keys()].filter((i) => lanes.includes(threats[i]?.lane as Lane) && open(i));
  return found.sort((a, b) => insideFirst(threats[a] as Threat, threats[b] as Threat))[0];
}
