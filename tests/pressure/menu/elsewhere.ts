import { compileMenu } from '../../../src/pressure/menu/compile.ts';
import type { MenuInput } from '../../../src/pressure/menu/input.ts';
import type { MenuProblem } from '../../../src/pressure/menu/model.ts';
import { SHARED_REPS } from '../../../src/pressure/menu/repetitions.ts';
import { solvedElsewhere } from '../../stats/second-solver.ts';

/**
 * The best plan value by trying every set of calls, each mixed by a second solver; null when no set keeps the limits.
 * Written from the words of the limits, not from the program of the tool.
 */
export function bestByEnumeration(input: MenuInput): number | null {
  const { problem } = compileMenu(input);
  let best: number | null = null;
  for (let word = 0; word < 2 ** problem.candidates.length; word++) {
    const set = problem.candidates.map((_, c) => c).filter((c) => word & (1 << c));
    if (!keepsCounts(problem, set)) continue;
    const value = mixedElsewhere(problem, set, input.habits);
    if (value !== null && (best === null || value > best)) best = value;
  }
  return best;
}

function keepsCounts({ candidates, limits }: MenuProblem, set: readonly number[]): boolean {
  const calls = set.map((c) => candidates[c]!);
  const dearest = (key: 'path' | 'coverage') =>
    [...new Set(calls.map((call) => call[key]))].reduce(
      (sum, group) => sum + Math.max(...calls.filter((call) => call[key] === group).map(({ reps }) => reps)),
      0,
    );
  const own = calls.reduce((sum, { reps }) => sum + reps, 0) * (1 - SHARED_REPS.path - SHARED_REPS.coverage);
  const reps = own + SHARED_REPS.path * dearest('path') + SHARED_REPS.coverage * dearest('coverage');
  const taught = limits.theories.every((theory) => calls.some((call) => call.theory === theory));
  return (
    set.length <= limits.size && reps <= limits.reps + 1e-9 && taught && limits.musts.every((c) => set.includes(c))
  );
}

/** Maximises trust x forecast + (1 - trust) x worst answer over the mix; worst is split into two halves of one sign. */
export function mixedElsewhere(
  problem: MenuProblem,
  set: readonly number[],
  habits: MenuInput['habits'] = [],
): number | null {
  const { situations, answers, limits, candidates } = problem;
  const constraints: Record<string, { min?: number; max?: number }> = {};
  const variables: Record<string, Record<string, number>> = {};
  situations.forEach(({ expectedSnaps }, s) => {
    constraints[`rate ${s}`] = { min: limits.leastPressure, max: limits.mostPressure };
    variables[`up ${s}`] = { total: expectedSnaps * (1 - limits.trust) };
    variables[`down ${s}`] = { total: -expectedSnaps * (1 - limits.trust) };
    for (let a = 0; a < answers; a++) {
      constraints[`worst ${s} ${a}`] = { max: 0 };
      variables[`up ${s}`]![`worst ${s} ${a}`] = 1;
      variables[`down ${s}`]![`worst ${s} ${a}`] = -1;
    }
    constraints[`bound ${s}`] = { max: 1000 };
    variables[`down ${s}`]![`bound ${s}`] = 1;
  });
  for (const c of set) {
    constraints[`use ${c}`] = { min: limits.leastCalls };
    const { most, uncounted } = pairRule(problem, c, habits);
    constraints[`pair ${candidates[c]!.pair}`] = { max: (1 - most) * uncounted };
  }
  if (limits.explosives !== null) constraints['risk'] = { max: limits.explosives - problem.baseExplosives };
  for (const c of set) {
    situations.forEach((_, s) => {
      variables[`share ${c} ${s}`] = shareTerms(problem, set, { c, s, habits });
    });
  }
  const solved = solvedElsewhere({ constraints, variables });
  return solved.feasible ? solved.result : null;
}

function shareTerms(
  problem: MenuProblem,
  set: readonly number[],
  { c, s, habits }: { c: number; s: number; habits: MenuInput['habits'] },
) {
  const { situations, answers, limits, candidates } = problem;
  const snaps = situations[s]!.expectedSnaps;
  const at = c * situations.length + s;
  const terms: Record<string, number> = {
    total: snaps * limits.trust * problem.value[at]!,
    [`rate ${s}`]: 1,
    [`use ${c}`]: snaps,
    risk: snaps * problem.extraExplosives[at]!,
  };
  for (let a = 0; a < answers; a++) terms[`worst ${s} ${a}`] = -problem.byAnswer[at * answers + a]!;
  const { path, pair } = candidates[c]!;
  for (const d of set.filter((other) => candidates[other]!.path === path)) {
    const other = candidates[d]!.pair;
    terms[`pair ${other}`] = snaps * ((other === pair ? 1 : 0) - pairRule(problem, d, habits).most);
  }
  return terms;
}

/**
 * The pairing rule of a candidate in its own words: beyond the calls a reader of four games cannot tell from a mix, no
 * more than the cap, or what the film asks for, of its path's calls. He can tell as soon as a path that keeps the cap
 * would show one coverage throughout in under 5% of cases.
 */
function pairRule({ candidates, limits }: MenuProblem, c: number, habits: MenuInput['habits'] = []) {
  const { call } = candidates[c]!;
  const cap = limits.pairingCap;
  if (cap >= 1) return { most: 1, uncounted: 0 };
  const habit = habits.find(({ path }) => path === call.path);
  const asked = habit?.limits.find(({ coverage }) => coverage === call.coverage)?.most ?? cap;
  let untold = 0;
  while (cap ** (untold + 1) >= 0.05) untold++;
  return { most: Math.min(cap, asked), uncounted: (habit?.snaps ?? 0) > untold ? 0 : untold / 4 };
}
