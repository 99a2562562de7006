import { ANSWERS } from '../../game/vocabulary.ts';
import { signedPoints } from '../evidence/signed-points.ts';
import { type MenuMix, worthByAnswer } from './mix.ts';
import { type MenuCandidate, type MenuProblem, pathRoom } from './model.ts';
import type { WorstAnswer } from './result.ts';
import { THEORIES } from './theory.ts';

/** Their answer that hurts a mix most in a situation, with points saved per ten snaps against the base. */
export function worstAnswer(problem: MenuProblem, { set, shares }: MenuMix, s: number): WorstAnswer {
  const worths = worthByAnswer(problem, { set, shares, s });
  const at = worths.reduce((worst, worth, a) => (worth < (worths[worst] as number) ? a : worst), 0);
  return { answer: ANSWERS[at] ?? 'run', points: 10 * (worths[at] as number) };
}

/** Why a call is carried: where it is called most and what it saves there, and the duty it alone fulfils. */
export function whyCarried(problem: MenuProblem, mix: MenuMix, i: number): string {
  const c = mix.set[i] as number;
  const count = problem.situations.length;
  const uses = problem.situations.map(({ label, expectedSnaps }, s) => ({
    label,
    s,
    calls: expectedSnaps * (mix.shares[i * count + s] as number),
  }));
  const most = uses.reduce((best, use) => (use.calls > best.calls ? use : best));
  const saved = signedPoints(10 * (problem.value[c * count + most.s] as number));
  return [
    `mostly on ${most.label}: ${saved} points per ten snaps against the base`,
    ...duties(problem, mix.set, c),
  ].join('; ');
}

function duties(problem: MenuProblem, set: readonly number[], c: number): string[] {
  const { theory, path, coverage } = problem.candidates[c] as MenuCandidate;
  const others = set.filter((d) => d !== c).map((d) => problem.candidates[d] as MenuCandidate);
  const words: string[] = [];
  if (problem.limits.theories.includes(theory) && !others.some((other) => other.theory === theory)) {
    words.push(`the only ${THEORIES[theory]?.words ?? ''} call carried`);
  }
  const neighbours = others.filter((other) => other.path === path);
  if (
    pathRoom(
      problem,
      set.filter((d) => problem.candidates[d]?.path === path),
    ) < Number.POSITIVE_INFINITY
  ) {
    words.push(
      `no film of ours to speak of shows the path, so ${uncountedWords(problem, path)} a game may come unpaired`,
    );
  }
  if (
    neighbours.length > 0 &&
    problem.limits.pairingCap < 1 &&
    neighbours.every((other) => other.coverage !== coverage)
  ) {
    words.push(`with ${neighbours.map(({ call }) => call.name).join(' and ')} it splits what follows the path`);
  }
  return words;
}

function uncountedWords(problem: MenuProblem, path: number): string {
  const calls = problem.limits.uncounted[path] as number;
  return `${Number.isInteger(calls) ? calls : calls.toFixed(1)} ${calls === 1 ? 'call' : 'calls'}`;
}

/** How the next-best menu differs from the menu. */
export function differenceWords(problem: MenuProblem, best: MenuMix, next: MenuMix | undefined): string {
  if (!next) return 'no other menu keeps the limits';
  const names = (set: readonly number[], other: readonly number[]) =>
    set.filter((c) => !other.includes(c)).map((c) => problem.candidates[c]?.call.name ?? '');
  const [added, dropped] = [names(next.set, best.set), names(best.set, next.set)];
  const exchange = exchangeWords(added, dropped);
  return `${exchange}, ${(best.objective - next.objective).toFixed(2)} points a game less by the plan's measure`;
}

function exchangeWords(added: readonly string[], dropped: readonly string[]): string {
  if (dropped.length === 0) return `${added.join(', ')} as well`;
  if (added.length === 0) return `without ${dropped.join(', ')}`;
  return `${added.join(', ')} instead of ${dropped.join(', ')}`;
}
