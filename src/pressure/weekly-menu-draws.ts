import type { ScoreDraws } from './score-draws.ts';
import type { MenuLimit } from './weekly-menu-limits.ts';
import type { MenuProblem } from './weekly-menu-problem.ts';
import { solveMenu } from './weekly-menu-program.ts';

/** Posterior draws the menu is solved for again; enough to tell a must from a toss-up, few enough to stay quick. */
export const MENU_DRAWS = 20;

/**
 * The share of posterior draws in which each candidate makes the menu: a call chosen in 55% of draws is not a must.
 * The draws are spread evenly over those given; the worst-answer side keeps its means.
 */
export function inDraws(problem: MenuProblem, limits: readonly MenuLimit[], draws: ScoreDraws): number[] {
  const times = new Array<number>(problem.candidates.length).fill(0);
  const count = Math.min(MENU_DRAWS, draws.count);
  for (let k = 0; k < count; k++) {
    const drawn = drawnProblem(problem, draws, Math.floor((k * draws.count) / count));
    for (const c of solveMenu(drawn, limits)?.carried ?? []) times[c] = (times[c] ?? 0) + 1;
  }
  return times.map((hits) => (count === 0 ? 0 : hits / count));
}

function drawnProblem(problem: MenuProblem, draws: ScoreDraws, draw: number): MenuProblem {
  const callIndex = new Map(draws.calls.map((call, i) => [call, i]));
  const situationIndex = new Map(draws.situations.map((id, i) => [id, i]));
  const candidates = problem.candidates.map((candidate) => ({
    ...candidate,
    value: problem.situations.map(({ id }, s) => {
      const [c, at] = [callIndex.get(candidate.call.name), situationIndex.get(id)];
      if (c === undefined || at === undefined) return candidate.value[s] ?? 0;
      return (draws.points[(draw * draws.calls.length + c) * draws.situations.length + at] ?? 0) / 10;
    }),
  }));
  return { ...problem, candidates };
}
