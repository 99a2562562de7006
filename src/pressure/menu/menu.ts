import { largestRemainder } from '../../stats/apportion.ts';
import { chooseMenu, type MenuChoice } from './choice.ts';
import { clashingLimits, impossibleMusts } from './clash.ts';
import { type CompiledMenu, compileMenu } from './compile.ts';
import { type MenuInput, withPairingCap } from './input.ts';
import { whyLeftOut } from './left-out.ts';
import { expectedCalls, expectedExplosives, type MenuMix } from './mix.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import { menuNotes } from './notes.ts';
import { limitPrices } from './prices.ts';
import { repsOfCalls, repsOfSet } from './repetitions.ts';
import type { MenuCall, MenuResult } from './result.ts';
import { differenceWords, whyCarried, worstAnswer } from './words.ts';

/** Parts of the search looked at for the week's menu before it stops and says how much better one could be. Judgement. */
const MENU_PARTS = 6000;

/**
 * The week's menu: which pressures to carry and how often to call each in every situation, so that trust times points
 * saved by the forecast plus the rest times points saved against their best answer is largest, within every limit of
 * week.yaml; or the limits that clash. The best menu is proved to be best, by branch and bound over linear programs,
 * unless `proof` says how much better an unseen one could be.
 */
export function planMenu(given: MenuInput): MenuResult {
  const input = withPairingCap(given);
  const compiled = compileMenu(input);
  const possible = impossibleMusts(input, compiled.offer.out).length === 0;
  const choice = possible
    ? chooseMenu({ problem: compiled.problem, wanted: 2, mostParts: MENU_PARTS, exact: input.exact })
    : null;
  const notes = menuNotes(compiled, choice);
  if (choice === null) return { kind: 'infeasible', clashing: clashingLimits(input, compiled), notes };
  return menuResult(input, compiled, choice);
}

function menuResult(input: MenuInput, compiled: CompiledMenu, choice: MenuChoice): MenuResult {
  const { problem, offer } = compiled;
  const [best, next] = choice.book.best as [MenuMix, MenuMix | undefined];
  return {
    kind: 'menu',
    calls: menuCalls(problem, best),
    situations: problem.situations.map((situation, s) => ({
      ...situation,
      baseShare: baseShare(problem, best, s),
      worst: worstAnswer(problem, best, s),
    })),
    reps: wholeReps(problem, best.set),
    repsAllowed: input.settings.menu.reps,
    value: best.value,
    worstValue: best.worst,
    planValue: best.objective,
    nextBest: {
      value: next?.value ?? 0,
      difference: differenceWords(problem, best, next),
      ...(next ? { planValue: next.objective } : {}),
    },
    prices: limitPrices(input, compiled, choice),
    leftOut: [...offer.out, ...whyLeftOut(compiled, best)],
    pairings: pairingsOf(problem, best),
    explosives: expectedExplosives(problem, best),
    proof: proofOf(choice, best),
    notes: menuNotes(compiled, choice),
  };
}

function menuCalls(problem: MenuProblem, best: MenuMix): MenuCall[] {
  const reps = largestRemainder(repsOfCalls(problem, best.set), wholeReps(problem, best.set));
  const calls = best.set.map((c, i): MenuCall => {
    const { name, family, path, coverage } = (problem.candidates[c] as MenuCandidate).call;
    return {
      call: name,
      family,
      path,
      coverage,
      mix: mixOf(problem, best, i),
      expectedCalls: expectedCalls(problem, best, i),
      reps: reps[i] ?? 0,
      why: whyCarried(problem, best, i),
    };
  });
  return calls.sort((a, b) => b.expectedCalls - a.expectedCalls);
}

/** Shares below this are the solver's rounding. */
const ROUNDING = 1e-7;

function mixOf({ situations }: MenuProblem, { shares }: MenuMix, i: number) {
  return situations
    .map(({ id }, s) => ({ situation: id, share: shares[i * situations.length + s] as number }))
    .filter(({ share }) => share > ROUNDING);
}

function baseShare({ situations }: MenuProblem, { set, shares }: MenuMix, s: number): number {
  const sent = set.reduce((sum, _, i) => sum + (shares[i * situations.length + s] as number), 0);
  return Math.min(1, Math.max(0, 1 - sent));
}

function wholeReps(problem: MenuProblem, set: readonly number[]): number {
  return Math.ceil(repsOfSet(problem, set) - ROUNDING);
}

function pairingsOf(problem: MenuProblem, best: MenuMix) {
  const calls = best.set.map((c, i) => ({
    ...(problem.candidates[c] as MenuCandidate),
    times: expectedCalls(problem, best, i),
  }));
  const firsts = calls.filter(({ pair }, i) => calls.findIndex((other) => other.pair === pair) === i);
  const { limits } = problem;
  const { pairMost } = limits;
  const times = (list: typeof calls) => list.reduce((sum, call) => sum + call.times, 0);
  return firsts.map(({ call, path, pair }) => {
    const ofPath = calls.filter((other) => other.path === path);
    const share = times(ofPath.filter((other) => other.pair === pair)) / times(ofPath);
    const [most, uncounted] = [pairMost[pair] as number, limits.uncounted[path] as number];
    return { path: call.path, coverage: call.coverage, share, calls: times(ofPath), most, uncounted };
  });
}

function proofOf({ book, end }: MenuChoice, best: MenuMix) {
  const gap = end.finished ? 0 : Math.max(0, end.ceiling - best.objective);
  const nextProved = end.finished && end.bestOnly !== true;
  return { finished: end.finished, nextProved, gap, parts: end.parts, programs: book.programs };
}
