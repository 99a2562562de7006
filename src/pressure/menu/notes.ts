import type { MenuChoice } from './choice.ts';
import type { CompiledMenu } from './compile.ts';
import { groupByPath, type MenuProblem, pathRoom } from './model.ts';
import { THEORIES } from './theory.ts';

/** What a reader must know of how a menu came about. */
export function menuNotes({ offer, problem }: CompiledMenu, choice: MenuChoice | null): string[] {
  const notes = THEORIES.filter((_, theory) => !offer.theories.includes(theory)).map(
    ({ words }) => `No sound, scored call of the library is a ${words} call, so none is demanded.`,
  );
  const ceiling = choice && !choice.end.finished ? choice.end.ceiling - (choice.book.best[0]?.objective ?? 0) : 0;
  if (ceiling > 0) {
    notes.push(
      `The search stopped before it had seen every menu: one not seen could be worth up to ${ceiling.toFixed(2)} points a game more by the plan's measure.`,
    );
  }
  const unpaired = pathsUnpaired(problem, choice);
  if (unpaired.length > 0) {
    notes.push(
      `Called so seldom that four games of it give nothing away, and so beyond the pairing cap: ${unpaired.join(', ')}.`,
    );
  }
  if (problem.limits.trust === 1)
    notes.push('With a trust of 1 the menu leans on the forecast alone and guards against nothing.');
  return notes;
}

/** Paths of the menu that one coverage may follow throughout, since our film hardly shows them. */
function pathsUnpaired(problem: MenuProblem, choice: MenuChoice | null): string[] {
  const groups = groupByPath(problem, choice?.book.best[0]?.set ?? []);
  return [...groups.values()]
    .filter((calls) => Number.isFinite(pathRoom(problem, calls)))
    .map(([first]) => problem.candidates[first as number]?.call.path ?? '');
}
