import type { ChosenMenu } from './chosen.ts';
import type { MenuProblem } from './model.ts';

/** Calls a menu has that another has not, and the other way round. */
export function difference(problem: MenuProblem, { set }: ChosenMenu, others: ReadonlySet<string>) {
  const names = new Set(set.map((c) => problem.candidates[c]?.call.name ?? ''));
  return {
    added: [...names].filter((name) => !others.has(name)),
    dropped: [...others].filter((name) => !names.has(name)),
  };
}
