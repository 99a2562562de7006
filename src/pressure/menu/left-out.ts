import type { Call } from '../../game/call-library.ts';
import { signedPoints } from '../evidence/signed-points.ts';
import { ceilingOf, setCeiling } from './ceiling.ts';
import type { CompiledMenu } from './compile.ts';
import type { MenuMix } from './mix.ts';
import { type MenuCandidate, type MenuProblem, pairableCandidates } from './model.ts';
import { multipliersOf } from './multipliers.ts';
import { priceOutside } from './outside.ts';
import { otherCoverages } from './pairing-advice.ts';

/** A call that is not carried, and why. */
export interface LeftOut {
  readonly call: string;
  readonly why: string;
}

/** Why each candidate that is not carried is not: its path cannot be paired, it adds nothing, or there is no room. */
export function whyLeftOut({ problem, offer }: CompiledMenu, best: MenuMix): LeftOut[] {
  const pairable = new Set(pairableCandidates(problem));
  const worths = addedWorths(problem, best);
  return problem.candidates.flatMap((candidate, c) => {
    if (best.set.includes(c)) return [];
    const why = pairable.has(c) ? freeWhy(problem, c, worths[c] ?? 0) : lonePathWhy(problem, candidate, offer.calls);
    return [{ call: candidate.call.name, why }];
  });
}

/** Points a game a candidate could add at most if it came on top of the menu and took nothing. */
function addedWorths(problem: MenuProblem, best: MenuMix): number[] {
  const prices = multipliersOf(problem, best.set);
  if (prices === null) return [];
  const ceiling = ceilingOf(problem, priceOutside(problem, best.set, prices));
  const now = setCeiling(ceiling, best.set);
  return problem.candidates.map((_, c) => setCeiling(ceiling, [...best.set, c]) - now);
}

/** Fewer points a game than this are nothing. Judgement. */
const NOTHING = 0.005;

function freeWhy(problem: MenuProblem, c: number, worth: number): string {
  const count = problem.situations.length;
  const saved = problem.situations.map(({ label }, s) => ({
    label,
    points: 10 * (problem.value[c * count + s] as number),
  }));
  const top = saved.reduce((best, here) => (here.points > best.points ? here : best));
  const where = `at its best ${signedPoints(top.points)} points per ten snaps (${top.label})`;
  if (worth <= NOTHING) return `${where}: nowhere worth more than the calls carried`;
  return `${where}: at most ${worth.toFixed(2)} points a game on top of the menu, less than what would have to go`;
}

function lonePathWhy(problem: MenuProblem, { call, path }: MenuCandidate, calls: readonly Call[]): string {
  const coverages = new Set(
    problem.candidates.filter((candidate) => candidate.path === path).map(({ coverage }) => coverage),
  ).size;
  const cap = `a pairing cap of ${Math.round(100 * problem.limits.pairingCap)}%`;
  const shown = (problem.limits.uncounted[path] as number) > 0 ? '' : 'our film already shows it often, ';
  const others = otherCoverages(call, calls);
  const admit = others.length === 0 ? '' : `; ${others.join(' or ')} behind the path as well would admit it`;
  return `the library has ${coverages === 1 ? 'one coverage' : `${coverages} coverages`} behind ${call.path}, ${shown}too few for ${cap}${admit}`;
}
