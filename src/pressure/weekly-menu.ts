import type { MenuCall, MenuResult } from './menu-result.ts';
import { inDraws } from './weekly-menu-draws.ts';
import { type MenuLimit, menuLimits } from './weekly-menu-limits.ts';
import { limitPrices } from './weekly-menu-prices.ts';
import { type MenuPlanInput, type MenuProblem, menuProblem } from './weekly-menu-problem.ts';
import { type ChosenMenu, solveMenu } from './weekly-menu-program.ts';
import { repsOf } from './weekly-menu-reps.ts';
import { whyCarried, whyLeft } from './weekly-menu-words.ts';

/** A share below this is shown as not called. Judgement. */
const SHOWN = 0.005;

/**
 * The week's menu by a mixed 0-1 program: the calls carried and their mix in each situation that save the most points
 * against the forecast and their best answer, weighed by the coach's trust, within every limit; or the limits that clash.
 */
export function planMenu(input: MenuPlanInput): MenuResult {
  const problem = menuProblem(input);
  const limits = menuLimits(problem);
  const chosen = solveMenu(problem, limits);
  if (!chosen) return { kind: 'infeasible', clashing: clashing(problem, limits) };
  const next = solveMenu(problem, limits, [chosen.carried]);
  const membership = inDraws(problem, limits, input.draws);
  return {
    kind: 'menu',
    calls: menuCalls(problem, chosen, membership),
    situations: problem.situations.map((situation, s) => ({ ...situation, baseShare: baseShare(problem, chosen, s) })),
    reps: Math.round(repsOf(problem, chosen.carried)),
    repsAllowed: input.settings.menu.reps,
    value: chosen.value,
    worstValue: chosen.worstValue,
    nextBest: { value: next?.value ?? 0, difference: differenceWords(problem, chosen, next) },
    prices: limitPrices(input, chosen),
    leftOut: [...problem.leftOut, ...whyLeft(problem, chosen, membership)],
    pairings: pairingsOf(problem, chosen),
    explosives: total(problem, chosen, ({ explosive }, s) => explosive[s] ?? 0),
  };
}

/** A smallest set of limits that cannot hold together: drop each in turn, and keep it only when dropping it helps. */
function clashing(problem: MenuProblem, limits: readonly MenuLimit[]): string[] {
  let kept = [...limits];
  for (const limit of limits) {
    const fewer = kept.filter((other) => other !== limit);
    if (!solveMenu(problem, fewer)) kept = fewer;
  }
  return kept.filter(({ constraints }) => constraints.length > 0).map(({ words }) => words);
}

function menuCalls(problem: MenuProblem, chosen: ChosenMenu, membership: readonly number[]): MenuCall[] {
  const called = problem.candidates.flatMap((candidate, c) => {
    const mix = problem.situations
      .map(({ id }, s) => ({ situation: id, share: chosen.mix[s]?.[c] ?? 0 }))
      .filter(({ share }) => share > SHOWN);
    if (mix.length === 0) return [];
    const { name, family, path, coverage } = candidate.call;
    const expectedCalls = problem.situations.reduce(
      (sum, { expectedSnaps }, s) => sum + expectedSnaps * (chosen.mix[s]?.[c] ?? 0),
      0,
    );
    const reps = family === 'base' ? 0 : Math.round(repsOf(problem, [c]));
    return [
      {
        call: name,
        family,
        path,
        coverage,
        mix,
        expectedCalls,
        reps,
        inDraws: membership[c] ?? 0,
        why: whyCarried(problem, chosen, c),
      },
    ];
  });
  return called.sort((a, b) => b.expectedCalls - a.expectedCalls);
}

function baseShare(problem: MenuProblem, chosen: ChosenMenu, s: number): number {
  const sent = problem.candidates.reduce(
    (sum, { call }, c) => sum + (call.family === 'base' ? 0 : (chosen.mix[s]?.[c] ?? 0)),
    0,
  );
  return Math.max(0, 1 - sent);
}

function differenceWords(problem: MenuProblem, chosen: ChosenMenu, next: ChosenMenu | null): string {
  if (!next) return 'no other menu meets the limits';
  const names = (set: readonly number[], other: readonly number[]) =>
    set.filter((c) => !other.includes(c)).map((c) => problem.candidates[c]?.call.name ?? '');
  const instead = names(next.carried, chosen.carried).join(', ') || 'nothing';
  const out = names(chosen.carried, next.carried).join(', ') || 'nothing';
  return `${instead} instead of ${out}, ${(chosen.objective - next.objective).toFixed(2)} points a game less by the plan's measure`;
}

function pairingsOf(problem: MenuProblem, chosen: ChosenMenu) {
  const calls = problem.candidates.map(({ call }, c) => ({
    call,
    times: total(problem, chosen, (candidate) => (candidate.call === call ? 1 : 0)),
    c,
  }));
  const sent = calls.filter(({ call, times }) => call.family !== 'base' && times > SHOWN);
  const pairs = new Map(sent.map(({ call }) => [JSON.stringify([call.path, call.coverage]), call]));
  return [...pairs.values()].map(({ path, coverage }) => {
    const ofPath = sent.filter(({ call }) => call.path === path);
    const times = (list: typeof sent) => list.reduce((sum, part) => sum + part.times, 0);
    return { path, coverage, share: times(ofPath.filter(({ call }) => call.coverage === coverage)) / times(ofPath) };
  });
}

function total(
  problem: MenuProblem,
  chosen: ChosenMenu,
  of: (candidate: MenuProblem['candidates'][number], s: number) => number,
): number {
  return problem.situations.reduce(
    (sum, { expectedSnaps }, s) =>
      sum +
      problem.candidates.reduce(
        (inner, candidate, c) => inner + expectedSnaps * (chosen.mix[s]?.[c] ?? 0) * of(candidate, s),
        0,
      ),
    0,
  );
}
