import { groupByPath, holdsCalls, type MenuCandidate, type MenuProblem } from './model.ts';
import { repParts } from './repetitions.ts';
import { REPS_SLACK } from './set.ts';

/** A part of the search: sets that carry all of `chosen` and any of `free`. */
export interface MenuNode {
  readonly chosen: readonly number[];
  /** Ascending. */
  readonly free: readonly number[];
}

/** What is left to spend in a part of the search, and what a free candidate takes of it at least. */
export interface NodeRoom {
  readonly calls: number;
  readonly reps: number;
  /** By candidate: repetitions it adds at least, whatever else is chosen with it. */
  readonly leastReps: Float64Array;
  /** By path: 1 when a chosen call is on it. */
  readonly onPath: Uint8Array;
}

/**
 * A part of the search without the free candidates that cannot be added any more, or null when no set of it can keep
 * size, repetitions, theories and pairing cap together. Exact: only candidates and parts that cannot work are dropped.
 */
export function trimNode(problem: MenuProblem, node: MenuNode): { node: MenuNode; room: NodeRoom } | null {
  const taken = repsTaken(problem, node.chosen);
  const calls = problem.limits.size - node.chosen.length;
  const reps = problem.limits.reps - taken.total;
  if (calls < 0 || reps < -REPS_SLACK) return null;
  const fitting = calls === 0 ? [] : node.free.filter((c) => addedReps(problem, c, taken) <= reps + REPS_SLACK);
  const free = pairable(problem, node.chosen, fitting);
  if (free === null || !theoriesReachable(problem, node.chosen, free)) return null;
  const room = { calls, reps, leastReps: leastReps(problem, free, { taken, calls }), onPath: taken.onPath };
  return canFinish(problem, { chosen: node.chosen, free }, room) ? { node: { chosen: node.chosen, free }, room } : null;
}

/** Repetitions of the chosen calls, and what their paths and coverages already cost. */
interface Taken {
  readonly total: number;
  readonly path: Float64Array;
  readonly coverage: Float64Array;
  readonly onPath: Uint8Array;
}

function repsTaken({ candidates }: MenuProblem, chosen: readonly number[]): Taken {
  // There are no more paths or coverages than candidates.
  const path = new Float64Array(candidates.length);
  const coverage = new Float64Array(candidates.length);
  const onPath = new Uint8Array(candidates.length);
  let own = 0;
  for (const c of chosen) {
    const candidate = candidates[c] as MenuCandidate;
    const parts = repParts(candidate.reps);
    own += parts.own;
    path[candidate.path] = Math.max(path[candidate.path] as number, parts.path);
    coverage[candidate.coverage] = Math.max(coverage[candidate.coverage] as number, parts.coverage);
    onPath[candidate.path] = 1;
  }
  const sum = (list: Float64Array) => list.reduce((total, reps) => total + reps, 0);
  return { total: own + sum(path) + sum(coverage), path, coverage, onPath };
}

/** Repetitions a candidate adds to the chosen calls when it comes alone. */
function addedReps({ candidates }: MenuProblem, c: number, taken: Taken): number {
  const candidate = candidates[c] as MenuCandidate;
  const parts = repParts(candidate.reps);
  const path = Math.max(0, parts.path - (taken.path[candidate.path] as number));
  const coverage = Math.max(0, parts.coverage - (taken.coverage[candidate.coverage] as number));
  return parts.own + path + coverage;
}

/**
 * Repetitions each free candidate adds at least: its own, and an equal part of what its path and its coverage add when
 * all that still fit share them. The largest of some numbers is at least their mean, so this never charges too much.
 */
function leastReps(
  { candidates }: MenuProblem,
  free: readonly number[],
  { taken, calls }: { readonly taken: Taken; readonly calls: number },
): Float64Array {
  const onPath = new Int32Array(candidates.length);
  const onCoverage = new Int32Array(candidates.length);
  for (const c of free) {
    const { path, coverage } = candidates[c] as MenuCandidate;
    onPath[path] = (onPath[path] as number) + 1;
    onCoverage[coverage] = (onCoverage[coverage] as number) + 1;
  }
  const least = new Float64Array(candidates.length);
  for (const c of free) {
    const { path, coverage, reps } = candidates[c] as MenuCandidate;
    const parts = repParts(reps);
    const newPath = Math.max(0, parts.path - (taken.path[path] as number));
    const newCoverage = Math.max(0, parts.coverage - (taken.coverage[coverage] as number));
    const ofPath = newPath / Math.min(calls, onPath[path] as number);
    const ofCoverage = newCoverage / Math.min(calls, onCoverage[coverage] as number);
    least[c] = parts.own + ofPath + ofCoverage;
  }
  return least;
}

/** The free candidates whose path can still hold them; null when a chosen call's path cannot. */
function pairable(problem: MenuProblem, chosen: readonly number[], free: readonly number[]): number[] | null {
  const { pairingCap, leastCalls } = problem.limits;
  if (pairingCap >= 1) return [...free];
  const pathOf = (c: number) => (problem.candidates[c] as MenuCandidate).path;
  const ofChosen = groupByPath(problem, chosen);
  const full = new Set<number>();
  for (const [path, calls] of groupByPath(problem, [...chosen, ...free])) {
    const least = Math.max(1, ofChosen.get(path)?.length ?? 0);
    if (!holdsCalls(problem, calls, least * leastCalls)) full.add(path);
  }
  return chosen.some((c) => full.has(pathOf(c))) ? null : free.filter((c) => !full.has(pathOf(c)));
}

function theoriesReachable(problem: MenuProblem, chosen: readonly number[], free: readonly number[]): boolean {
  const taught = (theory: number) => (c: number) => problem.candidates[c]?.theory === theory;
  return problem.limits.theories.every((theory) => chosen.some(taught(theory)) || free.some(taught(theory)));
}

/** Whether calls and repetitions left are enough for the theories that no chosen call teaches yet. */
function canFinish(problem: MenuProblem, { chosen, free }: MenuNode, room: NodeRoom): boolean {
  let [calls, reps] = [0, 0];
  for (const theory of missingTheories(problem, chosen)) {
    let least = Number.POSITIVE_INFINITY;
    for (const c of free) {
      if (problem.candidates[c]?.theory === theory) least = Math.min(least, room.leastReps[c] as number);
    }
    calls += 1;
    reps += least;
  }
  return calls <= room.calls && reps <= room.reps + REPS_SLACK;
}

/** Theories demanded that no chosen call teaches. */
export function missingTheories(problem: MenuProblem, chosen: readonly number[]): number[] {
  return problem.limits.theories.filter((theory) => !chosen.some((c) => problem.candidates[c]?.theory === theory));
}
