import type { Call } from '../../game/call-library.ts';

/** A pressure the menu may carry. Calls of one path are neighbours in a problem. */
export interface MenuCandidate {
  readonly call: Call;
  /** Numbers of its path, of its coverage, and of the pair of both. */
  readonly path: number;
  readonly coverage: number;
  readonly pair: number;
  /** Index into the theories. */
  readonly theory: number;
  /** Practice repetitions this week when nothing is shared. */
  readonly reps: number;
}

/** A situation the menu plans for. */
export interface MenuSituation {
  readonly id: string;
  readonly label: string;
  readonly expectedSnaps: number;
}

/** What a menu must keep to. Shares are 0 to 1. */
export interface MenuLimits {
  /** Most calls carried. */
  readonly size: number;
  /** Most practice repetitions. */
  readonly reps: number;
  /** Weight of the forecast against their worst answer for us. */
  readonly trust: number;
  /** Largest share of a path's calls followed by one coverage; 1 for no such limit. */
  readonly pairingCap: number;
  /** By pair: the same for this path and coverage, where our film asks for less; 1 for no limit. */
  readonly pairMost: Float64Array;
  /** By path: calls a game that its pairs' limits do not count. */
  readonly uncounted: Float64Array;
  /** Least and most share of five or more rushers in each situation. */
  readonly leastPressure: number;
  readonly mostPressure: number;
  /** How often a carried call is expected at least, in calls a game. */
  readonly leastCalls: number;
  /** Most explosive plays a game; null for no such limit. */
  readonly explosives: number | null;
  /** Theories of which a call must be carried. */
  readonly theories: readonly number[];
  /** Candidates that must be carried. */
  readonly musts: readonly number[];
}

/** The menu's program in numbers. Every share of snaps not given to a candidate is played in the four-man base. */
export interface MenuProblem {
  readonly candidates: readonly MenuCandidate[];
  readonly situations: readonly MenuSituation[];
  /** Number of answers. */
  readonly answers: number;
  /** Points saved a snap by the forecast, at `candidate * situations + situation`. */
  readonly value: Float64Array;
  /** Points saved a snap against one answer alone, at `(candidate * situations + situation) * answers + answer`. */
  readonly byAnswer: Float64Array;
  /** Explosive plays a snap beyond the base's, at `candidate * situations + situation`. */
  readonly extraExplosives: Float64Array;
  /** Explosive plays a game when only the base is played. */
  readonly baseExplosives: number;
  readonly limits: MenuLimits;
}

/** Sums are compared with this much slack, so that rounding does not decide. */
const SLACK = 1e-9;

/**
 * Calls a game that a path can hold at most when these of its candidates are carried: without end when their coverages'
 * limits leave room for every call, else what the uncounted calls allow. Adding candidates never lowers it.
 */
export function pathRoom({ candidates, limits }: MenuProblem, ofPath: readonly number[]): number {
  const pairs = new Set(ofPath.map((c) => (candidates[c] as MenuCandidate).pair));
  const most = [...pairs].reduce((sum, pair) => sum + (limits.pairMost[pair] as number), 0);
  if (most >= 1 - SLACK) return Number.POSITIVE_INFINITY;
  const uncounted = limits.uncounted[(candidates[ofPath[0] as number] as MenuCandidate).path] as number;
  return (uncounted * (pairs.size - most)) / (1 - most);
}

/** Whether a path with these candidates can hold so many calls a game, and any at all. */
export function holdsCalls(problem: MenuProblem, ofPath: readonly number[], calls: number): boolean {
  const room = pathRoom(problem, ofPath);
  return room > SLACK && room >= calls - SLACK;
}

/** Candidates of a list by path. */
export function groupByPath({ candidates }: MenuProblem, list: readonly number[]): Map<number, number[]> {
  const groups = new Map<number, number[]>();
  for (const c of list) {
    const { path } = candidates[c] as MenuCandidate;
    const group = groups.get(path);
    if (group) group.push(c);
    else groups.set(path, [c]);
  }
  return groups;
}

/** The candidates whose path can be called with all of them carried, within its pairs' limits. */
export function pairableCandidates(problem: MenuProblem): number[] {
  const all = problem.candidates.map((_, c) => c);
  const groups = groupByPath(problem, all);
  return all.filter((c) =>
    holdsCalls(problem, groups.get((problem.candidates[c] as MenuCandidate).path) ?? [], problem.limits.leastCalls),
  );
}
