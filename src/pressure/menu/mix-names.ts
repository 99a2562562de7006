import type { MenuProblem } from './model.ts';

/** Numbers by which the programs of a menu call their variables. */
export interface MixNames {
  /** A candidate's share of a situation's snaps. */
  readonly share: (c: number, s: number) => number;
  /** A situation's worth against the answer that hurts most there. */
  readonly worst: (s: number) => number;
  /** Whether a candidate is carried. */
  readonly carry: (c: number) => number;
  /** Repetitions that teach a path. */
  readonly path: (path: number) => number;
  /** Repetitions that teach a coverage. */
  readonly coverage: (coverage: number) => number;
}

/** The names of a problem's variables; no two share a number. */
export function mixNames({ candidates, situations }: MenuProblem): MixNames {
  const count = situations.length;
  const worst = candidates.length * count;
  const carry = worst + count;
  const path = carry + candidates.length;
  const coverage = path + 1 + candidates.reduce((last, candidate) => Math.max(last, candidate.path), -1);
  return {
    share: (c, s) => c * count + s,
    worst: (s) => worst + s,
    carry: (c) => carry + c,
    path: (at) => path + at,
    coverage: (at) => coverage + at,
  };
}
