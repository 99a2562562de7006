import { THEORIES } from '../../game/families.ts';
import { type ChosenMenu, callsAGame } from './chosen.ts';
import type { CompiledMenu } from './compile.ts';
import type { MenuInput } from './input.ts';
import { allPressures, roomOf } from './model.ts';
import type { MenuNote } from './result.ts';

/** What a reader must know of how a menu came about. */
export function menuNotes({ own }: MenuInput, compiled: CompiledMenu, menu: ChosenMenu | null): MenuNote[] {
  const { problem, situations } = compiled;
  const missing = THEORIES.filter((theory) => !problem.limits.theories.includes(theory));
  const uncounted = uncountedPaths(compiled, menu);
  const snaps = situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  const planned = allPressures(problem);
  const sent = (menu?.set ?? []).reduce((sum, _, i) => sum + callsAGame(menu as ChosenMenu, i), 0);
  return [
    ...missing.map((theory): MenuNote => ({ kind: 'no_theory', theory })),
    ...(uncounted.length > 0 ? [{ kind: 'uncounted_paths', paths: uncounted } as const] : []),
    ...(own?.pressureRate == null && snaps > 0 ? [{ kind: 'no_own_rate', rate: planned / snaps } as const] : []),
    ...(menu !== null && sent < planned - 0.05 ? [{ kind: 'short', sent, planned } as const] : []),
  ];
}

/** Paths of the menu that one coverage may follow throughout, since our film hardly shows them. */
function uncountedPaths({ problem }: CompiledMenu, menu: ChosenMenu | null): string[] {
  const carried = (menu?.set ?? []).map((c) => problem.candidates[c]?.call);
  return problem.limits.paths
    .filter(({ path, most }) => {
      const own = new Set(carried.filter((call) => call?.path === path).map((call) => call?.coverage ?? ''));
      return own.size > 0 && roomOf({ coverages: [...own], most }) < 1;
    })
    .map(({ path }) => path);
}
