import { THEORIES } from '../../game/families.ts';
import { type ChosenMenu, callsAGame } from './chosen.ts';
import { closedCall } from './closed.ts';
import type { CompiledMenu } from './compile.ts';
import type { MenuInput } from './input.ts';
import { allPressures, type MenuCandidate } from './model.ts';
import type { MenuNote } from './result.ts';

/** What a reader must know of how a menu came about. */
export function menuNotes(input: MenuInput, compiled: CompiledMenu, menu: ChosenMenu | null): MenuNote[] {
  const { own } = input;
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
    ...closedCalls(input, compiled, menu),
    ...(menu !== null && sent < planned - 0.05 ? [{ kind: 'short', sent, planned } as const] : []),
  ];
}

/** Carried calls that stay at home somewhere. */
function closedCalls(input: MenuInput, { problem, situations }: CompiledMenu, menu: ChosenMenu | null): MenuNote[] {
  return (menu?.set ?? []).flatMap((c): MenuNote[] => {
    const { call } = problem.candidates[c] as MenuCandidate;
    const closed = closedCall(input, call);
    const shut = situations.filter(({ id }) => closed.situations.has(id)).map(({ id }) => id);
    if (closed.hole === null || shut.length === 0) return [];
    return [{ kind: 'closed', call: call.name, hole: closed.hole.hole, situations: shut }];
  });
}

/** Paths of the menu that come with one coverage, and so seldom that film does not show it. */
function uncountedPaths({ problem }: CompiledMenu, menu: ChosenMenu | null): string[] {
  if (menu === null) return [];
  const carried = menu.set.map((c, i) => ({
    ...(problem.candidates[c] as MenuCandidate).call,
    times: callsAGame(menu, i),
  }));
  return problem.limits.paths
    .filter((limit) => {
      const own = carried.filter(({ path }) => path === limit.path);
      const times = own.reduce((sum, call) => sum + call.times, 0);
      return new Set(own.map(({ coverage }) => coverage)).size === 1 && times <= limit.uncounted + ROUNDING;
    })
    .map(({ path }) => path);
}

/** The solver's rounding. */
const ROUNDING = 1e-6;
