import { groupByPath, holdsCalls, type MenuCandidate, type MenuProblem } from './model.ts';
import { type MenuNode, missingTheories } from './node.ts';

/**
 * The free candidates among which a part of the search is to be decided next: partners for a chosen call whose path
 * cannot hold its calls yet, else those of the demanded theory with the fewest left, else all.
 */
export function branchPool(problem: MenuProblem, { chosen, free }: MenuNode): readonly number[] {
  const of = (c: number) => problem.candidates[c] as MenuCandidate;
  const { leastCalls } = problem.limits;
  const lone = [...groupByPath(problem, chosen)].find(
    ([, calls]) => !holdsCalls(problem, calls, calls.length * leastCalls),
  );
  if (lone !== undefined) return free.filter((c) => of(c).path === lone[0]);
  const pools = missingTheories(problem, chosen).map((theory) => free.filter((c) => of(c).theory === theory));
  return pools.reduce((fewest, pool) => (pool.length < fewest.length ? pool : fewest), pools[0] ?? free);
}
