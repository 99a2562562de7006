import { type ChosenMenu, callsAGame } from './chosen.ts';
import type { MenuInput } from './input.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import type { MenuPairing, PlanRead } from './result.ts';
import { secondWords } from './second-word.ts';

/** What follows each path of the menu, and how often. */
export function pairingsOf(problem: MenuProblem, menu: ChosenMenu): MenuPairing[] {
  const carried = menu.set.map((c, i) => ({
    ...(problem.candidates[c] as MenuCandidate).call,
    times: callsAGame(menu, i),
  }));
  const times = (list: typeof carried) => list.reduce((sum, call) => sum + call.times, 0);
  const firsts = carried.filter(
    ({ path, coverage }, i) => carried.findIndex((one) => one.path === path && one.coverage === coverage) === i,
  );
  return firsts.map(({ path, coverage }) => {
    const ofPath = carried.filter((call) => call.path === path);
    const limit = problem.limits.paths.find((one) => one.path === path);
    return {
      path,
      coverage,
      share: times(ofPath.filter((call) => call.coverage === coverage)) / times(ofPath),
      calls: times(ofPath),
      most: limit?.most ?? 1,
      uncounted: limit?.uncounted ?? 0,
    };
  });
}

/** Calls a game of each path, most called first. */
export function pathsOf(problem: MenuProblem, menu: ChosenMenu) {
  const total = menu.set.reduce((sum, _, i) => sum + callsAGame(menu, i), 0);
  const calls = new Map<string, number>();
  menu.set.forEach((c, i) => {
    const { path } = (problem.candidates[c] as MenuCandidate).call;
    calls.set(path, (calls.get(path) ?? 0) + callsAGame(menu, i));
  });
  return [...calls]
    .map(([path, times]) => ({ path, calls: times, share: total === 0 ? 0 : times / total }))
    .sort((a, b) => b.calls - a.calls);
}

/** How far the plan can be read off its paths, and what could be taught behind those that have one coverage. */
export function readOf(input: MenuInput, pairings: readonly MenuPairing[]): PlanRead {
  const most = input.settings.menu.pairing_cap;
  const paths = [...new Set(pairings.map(({ path }) => path))].map((path) =>
    pairings.filter((pairing) => pairing.path === path).reduce((usual, one) => (one.share > usual.share ? one : usual)),
  );
  const all = paths.reduce((sum, { calls }) => sum + calls, 0);
  const right = paths.reduce((sum, { calls, share }) => sum + calls * share, 0);
  const lone = paths.filter(({ share, calls, uncounted }) => share > 1 - ROUNDING && calls > uncounted + ROUNDING);
  return {
    share: all === 0 ? 0 : right / all,
    blind: all === 0 ? 0 : mostPlayed(pairings) / all,
    most,
    lone: lone.map(({ path, coverage, calls }) => ({ path, coverage, calls, others: secondWords(input, path) })),
  };
}

/** Calls a game of the coverage that is played most, whatever the path. */
function mostPlayed(pairings: readonly MenuPairing[]): number {
  const times = new Map<string, number>();
  for (const { coverage, calls, share } of pairings) times.set(coverage, (times.get(coverage) ?? 0) + calls * share);
  return Math.max(0, ...times.values());
}

/** The solver's rounding. */
const ROUNDING = 1e-6;
