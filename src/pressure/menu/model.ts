import type { Call } from '../../ingest/call-library.ts';

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
  /** Largest share of a path's calls followed by one coverage. */
  readonly pairingCap: number;
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

/** Different coverages a path needs before any split of its calls can meet the pairing cap. */
export function leastCoverages({ pairingCap }: MenuLimits): number {
  if (pairingCap >= 1) return 1;
  return pairingCap <= 0 ? Number.POSITIVE_INFINITY : Math.ceil(1 / pairingCap - 1e-9);
}

/** Different coverages among the candidates of each path. */
export function coveragesByPath(problem: MenuProblem, set: readonly number[]): Map<number, number> {
  const seen = new Map<number, Set<number>>();
  for (const c of set) {
    const { path, coverage } = problem.candidates[c] as MenuCandidate;
    const coverages = seen.get(path) ?? new Set<number>();
    seen.set(path, coverages.add(coverage));
  }
  return new Map([...seen].map(([path, coverages]) => [path, coverages.size]));
}

/** The candidates whose path has coverages enough for the pairing cap. */
export function pairableCandidates(problem: MenuProblem): number[] {
  const all = problem.candidates.map((_, c) => c);
  const coverages = coveragesByPath(problem, all);
  const needed = leastCoverages(problem.limits);
  return all.filter((c) => (coverages.get((problem.candidates[c] as MenuCandidate).path) ?? 0) >= needed);
}
