import type { LinearConstraint } from '../../stats/mixed-program.ts';
import type { MenuCandidate, MenuMixCell, MenuProblem, PathLimit } from './model.ts';
import { callsHere, namesOf, overCalls, type Term } from './program-names.ts';

/**
 * What a call costs on which the path gives the coverage away beyond the share allowed: over the game, behind its own
 * path, and in one situation. Together one snap, as much as turning one on which the theory is right into one on which it
 * is not: a call that is read is theirs. So nothing that is worse by more than that is called to hide another. Judgment.
 */
const READ_PRICES = { game: 0.6, path: 0.2, situation: 0.2 } as const;

/** A change-up that our film asks for and is not called is a call that is read. */
const MISSED_PRICE = READ_PRICES.game + READ_PRICES.path + READ_PRICES.situation;

/** What is read beyond the limits, priced. */
export function readerPrices(problem: MenuProblem): Term[] {
  const names = namesOf(problem);
  const { paths, read } = problem.limits;
  if (read === null) return [];
  return [
    [names.read, -READ_PRICES.game],
    ...paths.map((_, p): Term => [names.beyond(p), -READ_PRICES.path]),
    ...paths.map((_, p): Term => [names.missed(p), -MISSED_PRICE]),
    ...readableMixes(problem).map((m): Term => [names.readHere(m), -READ_PRICES.situation]),
  ];
}

/** What keeps an opponent from reading the coverage off the path: behind each path, over the game, in each situation. */
export function readerConstraints(problem: MenuProblem): LinearConstraint<number>[] {
  const { paths, read } = problem.limits;
  if (read === null) return [];
  return [
    ...paths.flatMap((limit, p) => pairConstraints(problem, limit, p)),
    ...paths.flatMap((limit, p) => changeUpConstraints(problem, limit, p)),
    ...gameConstraints(problem, read),
    ...readableMixes(problem).flatMap((m) => situationConstraints(problem, m)),
  ];
}

/** No coverage takes more than its share of its path's calls, or what is beyond it is counted. */
function pairConstraints(problem: MenuProblem, limit: PathLimit, p: number): LinearConstraint<number>[] {
  const { path, coverages, most, uncounted } = limit;
  const { beyond } = namesOf(problem);
  const factor = ({ call }: MenuCandidate, coverage: string) =>
    call.path === path ? Number(call.coverage === coverage) - most : 0;
  return coverages.map((coverage) => ({
    terms: [...overCalls(problem, (candidate) => factor(candidate, coverage)), [beyond(p), -1] as const],
    max: (1 - most) * uncounted,
  }));
}

/** While a path's usual coverage is carried, so many calls a game of the path come with another one, or are counted. */
function changeUpConstraints(problem: MenuProblem, limit: PathLimit, p: number): LinearConstraint<number>[] {
  const { path, changeUp } = limit;
  if (changeUp === null) return [];
  const { carry, missed } = namesOf(problem);
  const usual = changeUp.usual.trim().toLowerCase();
  const isUsual = ({ call }: MenuCandidate) => call.path === path && call.coverage.trim().toLowerCase() === usual;
  const others = overCalls(problem, (candidate) => Number(candidate.call.path === path && !isUsual(candidate)));
  return problem.candidates.flatMap((candidate, c) =>
    isUsual(candidate)
      ? [{ terms: [...others, [missed(p), 1] as const, [carry(c), -changeUp.calls] as const], min: 0 }]
      : [],
  );
}

/** Who knows every path's usual coverage is right on no more than a share of all pressures: what our film is asked. */
function gameConstraints(problem: MenuProblem, share: number): LinearConstraint<number>[] {
  const { usual, read } = namesOf(problem);
  const { paths } = problem.limits;
  const usuals = paths.flatMap(({ path, coverages }, p) =>
    coverages.map((coverage) => ({
      terms: [...overCalls(problem, (one) => Number(plays(one, path, coverage))), [usual(p), -1] as const],
      max: 0,
    })),
  );
  const all = problem.mixes.reduce((sum, { pressures }) => sum + pressures, 0);
  return [...usuals, { terms: [...paths.map((_, p): Term => [usual(p), 1]), [read, -1]], max: share * all }];
}

/** The same in one situation, up to the pairing cap itself. */
function situationConstraints(problem: MenuProblem, m: number): LinearConstraint<number>[] {
  const { usualHere, readHere } = namesOf(problem);
  const { paths } = problem.limits;
  const usuals = paths.flatMap(({ path, coverages }, p) =>
    coverages.map((coverage) => ({
      terms: [...callsHere(problem, m, (one) => plays(one, path, coverage)), [usualHere(p, m), -1] as const],
      max: 0,
    })),
  );
  const { pressures } = problem.mixes[m] as MenuMixCell;
  const most = Math.max(...paths.map((path) => path.most));
  const sum = [...paths.map((_, p): Term => [usualHere(p, m), 1]), [readHere(m), -1] as const];
  return [...usuals, { terms: sum, max: most * pressures }];
}

/** Mixes in which the busiest path may be called so often that four games of film show what follows it. */
function readableMixes({ mixes, limits }: MenuProblem): number[] {
  return mixes.flatMap(({ pressures }, m) => (pressures * (limits.pathShareHere ?? 1) >= limits.readable ? [m] : []));
}

function plays({ call }: MenuCandidate, path: string, coverage: string): boolean {
  return call.path === path && call.coverage === coverage;
}
