import type { Call } from '../../game/call-library.ts';
import type { TheoryName } from '../../game/families.ts';
import type { ChangeUp } from './habits.ts';

/** A pressure the menu may carry. */
export interface MenuCandidate {
  readonly call: Call;
  /** The theory it teaches; null for the base. */
  readonly theory: TheoryName | null;
  /** Practice reps this week when nothing is shared. */
  readonly reps: number;
  readonly isNew: boolean;
  /** By mix: points a call saves, and share by which its theory is right more often than wrong, there. */
  readonly points: readonly number[];
  readonly fit: readonly number[];
  /** By mix: points given up by a call on which the best one by points is told from it; 0 where nothing tells them apart. */
  readonly givenUp: readonly number[];
  /** By mix: explosive plays a call beyond the base's. */
  readonly explosives: readonly number[];
  /** By mix: whether it stays at home there, because it is plainly wrong or they do what it gives up on purpose. */
  readonly closed: readonly boolean[];
}

/** One or more situations that share a mix: rare ones go with their neighbor. */
export interface MenuMixCell {
  readonly situations: readonly string[];
  readonly expectedSnaps: number;
  /** Pressures expected there. */
  readonly pressures: number;
}

/** What a path's calls must keep to, so that it does not give the coverage away. */
export interface PathLimit {
  readonly path: string;
  readonly coverages: readonly string[];
  /** Largest share of the path's calls beyond the uncounted ones that one coverage may take. */
  readonly most: number;
  /** What our film asks for beyond that. */
  readonly changeUp: ChangeUp | null;
  /** Calls a game that do not count, since our film hardly shows the path. */
  readonly uncounted: number;
}

/** What a menu must keep to. Shares are 0 to 1; null for no such limit. */
export interface MenuLimits {
  readonly size: number | null;
  readonly newCalls: number | null;
  readonly reps: number | null;
  readonly leastCalls: number;
  /** Largest share of all pressures on one path, and of a mix's pressures. */
  readonly pathShare: number | null;
  readonly pathShareHere: number | null;
  /** Largest share of a mix's snaps on which an add-on is called. */
  readonly addOnShare: number | null;
  readonly explosives: number | null;
  readonly paths: readonly PathLimit[];
  /** Largest share of all pressures on which the usual coverage behind each path may come; null for no cap. */
  readonly read: number | null;
  /** Calls of a path a game from which on an opponent's film shows its coverage. */
  readonly readable: number;
  readonly theories: readonly TheoryName[];
  /** Names of calls that must be carried, in small letters. */
  readonly musts: ReadonlySet<string>;
}

/** The menu in numbers. Every snap without a pressure is played in the four-man base. */
export interface MenuProblem {
  readonly candidates: readonly MenuCandidate[];
  readonly mixes: readonly MenuMixCell[];
  /** Explosive plays a game when only the base is played. */
  readonly baseExplosives: number;
  readonly limits: MenuLimits;
  /** Price of a rep, in snaps a game on which a theory is right rather than wrong. */
  readonly repPrice: number;
}

/** Pressures expected in a game. */
export function allPressures({ mixes }: MenuProblem): number {
  return mixes.reduce((sum, { pressures }) => sum + pressures, 0);
}
