import { branchPool } from './branch.ts';
import { type MenuProblem, pairableCandidates } from './model.ts';
import { type MenuNode, trimNode } from './node.ts';
import { isCarriable } from './set.ts';

/**
 * A set of calls that keeps size, repetitions, theories, musts and pairing coverages, cheap calls tried first; null when
 * there is none. Exact, up to a number of parts no library of a staff reaches.
 */
export function firstSet(problem: MenuProblem): readonly number[] | null {
  const count = { parts: 0 };
  return look(problem, { chosen: problem.limits.musts, free: pairableCandidates(problem) }, count);
}

const MOST_PARTS = 200_000; // judgement: seconds

function look(problem: MenuProblem, whole: MenuNode, count: { parts: number }): readonly number[] | null {
  if (count.parts++ > MOST_PARTS) return null;
  const trimmed = trimNode(problem, {
    chosen: whole.chosen,
    free: whole.free.filter((c) => !whole.chosen.includes(c)),
  });
  if (trimmed === null) return null;
  const { chosen, free } = trimmed.node;
  if (isCarriable(problem, chosen)) return chosen;
  const pool = branchPool(problem, trimmed.node);
  if (pool.length === 0) return null;
  const { leastReps } = trimmed.room;
  const next = pool.reduce((best, c) => ((leastReps[c] as number) < (leastReps[best] as number) ? c : best));
  const rest = free.filter((c) => c !== next);
  return (
    look(problem, { chosen: [...chosen, next], free: rest }, count) ?? look(problem, { chosen, free: rest }, count)
  );
}
