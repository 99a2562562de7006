import { ANSWERS } from '../../game/answers.ts';
import { largestRemainder } from '../../stats/apportion.ts';
import { type Choice, type ChosenMenu, callsAGame, choose, expectedExplosives } from './chosen.ts';
import { clashingLimits, impossibleMusts } from './clash.ts';
import { type CompiledMenu, compileMenu } from './compile.ts';
import { difference } from './difference.ts';
import type { MenuInput } from './input.ts';
import { whyLeftOut } from './left-out.ts';
import { mixShares, type SituationMix } from './mix-shares.ts';
import type { MenuCandidate, MenuProblem } from './model.ts';
import { menuNotes } from './notes.ts';
import { pairingsOf, pathsOf, readOf } from './pairings.ts';
import { limitPrices, type RegretLimit } from './prices.ts';
import { otherSet } from './program.ts';
import { repsOfCalls } from './reps.ts';
import type { MenuCall, MenuResult, OtherMenu, WorstAnswer } from './result.ts';

/**
 * The week's menu: which pressures to carry and how often to call each in every situation. Among all menus that give up
 * no more points than week.yaml allows, it is the one with theories right more often than wrong on most snaps, less
 * the price of its reps; or the limits that clash. Points are given up where they rule a call out: what no evidence tells
 * apart costs nothing.
 */
export function planMenu(input: MenuInput): MenuResult {
  const compiled = compileMenu(input);
  const possible = impossibleMusts(input, compiled.offer.out).length === 0;
  const free = possible
    ? choose({ problem: compiled.problem, aim: { kind: 'fit', mostGivenUp: null } }, input.exact)
    : null;
  return free === null
    ? { kind: 'infeasible', clashing: clashingLimits(input, compiled), notes: menuNotes(input, compiled, null) }
    : menuResult(input, compiled, withinRegret(input, compiled, free));
}

/** The best menu by fit, or where that gives up too many points the best one that does not. */
function withinRegret({ settings, exact }: MenuInput, { problem }: CompiledMenu, free: Choice): ChosenWeek {
  const allowed = settings.menu.regret + ROUNDING;
  if (free.menu.givenUp <= allowed) return { choice: free, regret: { most: allowed, forced: 0, binds: false } };
  const byPoints = choose({ problem, aim: { kind: 'points' } }, exact) ?? free;
  const forced = byPoints.menu.givenUp;
  const most = forced + allowed;
  if (free.menu.givenUp <= most) return { choice: free, regret: { most, forced, binds: false } };
  const choice = choose({ problem, aim: { kind: 'fit', mostGivenUp: most } }, exact) ?? byPoints;
  return { choice, regret: { most, forced, binds: true } };
}

/** The solver's rounding. */
const ROUNDING = 1e-6;

interface ChosenWeek {
  readonly choice: Choice;
  readonly regret: RegretLimit;
}

function menuResult(input: MenuInput, compiled: CompiledMenu, week: ChosenWeek): MenuResult {
  const { problem } = compiled;
  const { menu, proved, gap } = week.choice;
  const mixes = mixShares(compiled, menu);
  const pairings = pairingsOf(problem, menu);
  const worst = mixes.map((mix) => worstAnswer(input, compiled, mix));
  const calls = menuCalls(input, { problem, menu, mixes });
  return {
    kind: 'menu',
    calls,
    situations: compiled.situations.map((situation, s) => ({
      ...situation,
      rate: sentIn(mixes[s]),
      baseShare: 1 - sentIn(mixes[s]),
      worst: worst[s] as WorstAnswer,
    })),
    reps: Math.ceil(menu.reps - ROUNDING),
    repsAllowed: input.settings.menu.reps,
    ownRate: input.own?.pressureRate ?? null,
    right: calls.reduce((sum, call) => sum + call.expectedCalls * call.right, 0),
    wrong: calls.reduce((sum, call) => sum + call.expectedCalls * call.wrong, 0),
    value: menu.points,
    worstValue: compiled.situations.reduce(
      (sum, { expectedSnaps }, s) => sum + (expectedSnaps * (worst[s]?.points ?? 0)) / 10,
      0,
    ),
    regret: {
      points: Math.max(0, menu.givenUp - week.regret.forced),
      allowed: input.settings.menu.regret,
      forced: week.regret.forced,
    },
    nextBest: nextBest(input, problem, week),
    prices: limitPrices(input, { compiled, ...week }),
    leftOut: whyLeftOut(compiled, menu),
    pairings,
    read: readOf(input, pairings),
    paths: pathsOf(problem, menu),
    explosives: expectedExplosives(problem, menu),
    proof: proved ? { proved } : { proved, gap },
    notes: menuNotes(input, compiled, menu),
  };
}

function sentIn(mix: SituationMix | undefined): number {
  return mix?.shares.reduce((sum, share) => sum + share, 0) ?? 0;
}

interface MixedMenu {
  readonly problem: MenuProblem;
  readonly menu: ChosenMenu;
  readonly mixes: readonly SituationMix[];
}

function menuCalls({ fit }: MenuInput, { problem, menu, mixes }: MixedMenu): MenuCall[] {
  const carried = menu.set.map((c) => problem.candidates[c] as MenuCandidate);
  const reps = largestRemainder(repsOfCalls(carried), Math.ceil(menu.reps - ROUNDING));
  const calls = carried.map(({ call, isNew }, i): MenuCall => {
    const { name, family, path, coverage } = call;
    const mix = mixes
      .map(({ id, shares }) => ({ situation: id, share: shares[i] as number }))
      .filter(({ share }) => share > ROUNDING);
    const expected = callsAGame(menu, i);
    const over = (of: 'right' | 'wrong') => {
      const shareIn = (situation: string) =>
        fit.calls.find((one) => one.call === name && one.situation === situation)?.[of].mean ?? 0;
      const snapsIn = (situation: string) => mixes.find(({ id }) => id === situation)?.expectedSnaps ?? 0;
      const sum = mix.reduce((total, one) => total + one.share * snapsIn(one.situation) * shareIn(one.situation), 0);
      return expected === 0 ? 0 : sum / expected;
    };
    return {
      call: name,
      family,
      path,
      coverage,
      mix,
      expectedCalls: expected,
      reps: reps[i] as number,
      isNew,
      right: over('right'),
      wrong: over('wrong'),
    };
  });
  // Calls called equally often keep their order, whatever the solver's last digits say.
  const times = ({ expectedCalls }: MenuCall) => Math.round(expectedCalls / ROUNDING);
  return calls.sort((a, b) => times(b) - times(a));
}

/** Their answer against which the mix of a situation saves least. */
function worstAnswer({ scores }: MenuInput, { problem }: CompiledMenu, { id, set, shares }: SituationMix): WorstAnswer {
  const saved = ANSWERS.map((answer) => {
    const points = set.reduce((sum, c, i) => {
      const name = problem.candidates[c]?.call.name;
      const score = scores.calls.find((one) => one.call === name && one.situation === id);
      return sum + (shares[i] as number) * (score?.byAnswer.find((one) => one.answer === answer)?.points ?? 0);
    }, 0);
    return { answer, points };
  });
  return saved.reduce((worst, one) => (one.points < worst.points ? one : worst));
}

/** The best menu of another set of calls, within the same limits. */
function nextBest(input: MenuInput, problem: MenuProblem, { choice, regret }: ChosenWeek): OtherMenu | null {
  const also = [otherSet(problem, choice.menu.set)];
  const next = choose({ problem, aim: { kind: 'fit', mostGivenUp: regret.most }, also }, input.exact);
  if (next === null) return null;
  const names = new Set(choice.menu.set.map((c) => problem.candidates[c]?.call.name ?? ''));
  return {
    ...difference(problem, next.menu, names),
    less: choice.menu.worth - choice.menu.read - (next.menu.worth - next.menu.read),
    points: next.menu.points - choice.menu.points,
    proved: next.proved,
  };
}
