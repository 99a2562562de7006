import type { MenuCandidate, MenuProblem } from './model.ts';

/** A variable of the program with its factor. */
export type Term = readonly [name: number, factor: number];

/** Numbers by which the program calls its variables. */
export interface Names {
  /** Calls a game of a candidate in a mix. */
  readonly calls: (c: number, m: number) => number;
  /** Whether a candidate is carried. */
  readonly carry: (c: number) => number;
  /** Reps that teach a path. */
  readonly path: (p: number) => number;
  /** Reps that teach a coverage. */
  readonly coverage: (v: number) => number;
  /** Pressures of a mix that the limits leave no call for. */
  readonly short: (m: number) => number;
  /** Calls of a path with the coverage it comes with most, over the game. */
  readonly usual: (p: number) => number;
  /** The same in a mix. */
  readonly usualHere: (p: number, m: number) => number;
  /** Calls of a path beyond the pairing cap. */
  readonly beyond: (p: number) => number;
  /** Change-ups our film asks of a path that are not called. */
  readonly missed: (p: number) => number;
  /** Calls on which a reader of every path is right beyond the share allowed, over the game. */
  readonly read: number;
  /** The same in a mix. */
  readonly readHere: (m: number) => number;
}

/** The names of a program; a path or a coverage takes as many as there are candidates, for there are no more of them. */
export function namesOf({
  candidates,
  mixes,
}: {
  candidates: MenuProblem['candidates'];
  mixes: { length: number };
}): Names {
  const groups = candidates.length;
  const from = startOfBlocks({
    calls: groups * mixes.length,
    carry: groups,
    path: groups,
    coverage: groups,
    short: mixes.length,
    usual: groups,
    usualHere: groups * mixes.length,
    beyond: groups,
    missed: groups,
    read: 1,
    readHere: mixes.length,
  });
  return {
    calls: (c, m) => from.calls + c * mixes.length + m,
    carry: (c) => from.carry + c,
    path: (p) => from.path + p,
    coverage: (v) => from.coverage + v,
    short: (m) => from.short + m,
    usual: (p) => from.usual + p,
    usualHere: (p, m) => from.usualHere + p * mixes.length + m,
    beyond: (p) => from.beyond + p,
    missed: (p) => from.missed + p,
    read: from.read,
    readHere: (m) => from.readHere + m,
  };
}

/** The number each block of variables starts at, one block after another. */
function startOfBlocks<Block extends string>(sizes: Readonly<Record<Block, number>>): Record<Block, number> {
  let next = 0;
  const starts: Record<Block, number> = { ...sizes };
  for (const block of Object.keys(sizes) as Block[]) {
    starts[block] = next;
    next += sizes[block];
  }
  return starts;
}

/** Every call a game of every candidate that has a factor other than 0. */
export function overCalls(problem: MenuProblem, of: (candidate: MenuCandidate, m: number) => number): Term[] {
  const { calls } = namesOf(problem);
  return problem.candidates
    .flatMap((candidate, c) => problem.mixes.map((_, m): Term => [calls(c, m), of(candidate, m)]))
    .filter(([, factor]) => factor !== 0);
}

/** Every candidate's calls in one mix, of those that are asked for. */
export function callsHere(problem: MenuProblem, m: number, keep: (candidate: MenuCandidate) => boolean): Term[] {
  const { calls } = namesOf(problem);
  return problem.candidates.flatMap((candidate, c): Term[] => (keep(candidate) ? [[calls(c, m), 1]] : []));
}

/** The paths or coverages of the candidates. */
export function groupsOf({ candidates }: MenuProblem, key: 'path' | 'coverage'): string[] {
  return [...new Set(candidates.map(({ call }) => call[key]))];
}
