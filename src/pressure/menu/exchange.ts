import { type MenuBook, workOut } from './book.ts';
import { lowestCeiling } from './ceiling.ts';
import { type MenuCandidate, type MenuProblem, pairableCandidates } from './model.ts';
import { isCarriable } from './set.ts';

/**
 * Looks for good sets from a start: climbs on the lowest ceiling by exchanging calls and paths, works out the set it
 * ends at, and climbs again on the ceilings that were sharpened by it. Finds the best set often, proves nothing.
 *
 * @param patience - fruitless climbs in a row before it is given up
 */
export function exchangeMenus(book: MenuBook, start: readonly number[], patience: number): void {
  workOut(book, start);
  let [from, failed] = [start, 0];
  while (failed < patience && book.ceilings.length > 0) {
    const before = bestWorth(book);
    const end = climb(book, from);
    const fresh = workOut(book, end);
    failed = bestWorth(book) > before ? 0 : failed + (fresh ? 1 : 2);
    from = failed % 2 === 1 ? end : (book.best[0]?.set ?? end);
  }
}

function bestWorth({ best }: MenuBook): number {
  return best[0]?.objective ?? Number.NEGATIVE_INFINITY;
}

/** From a set to better and better neighbours by the lowest ceiling, until none is better. */
function climb(book: MenuBook, start: readonly number[]): readonly number[] {
  let current = start;
  let worth = lowestCeiling(book.ceilings, current, Number.NEGATIVE_INFINITY);
  for (;;) {
    let better: readonly number[] | null = null;
    for (const set of neighbours(book.problem, current)) {
      const here = lowestCeiling(book.ceilings, set, worth);
      if (here <= worth + STEP || !isCarriable(book.problem, set)) continue;
      [better, worth] = [set, here];
    }
    if (better === null) return current;
    current = better;
  }
}

/** A step of a climb must gain more than this. */
const STEP = 1e-7;

/** Sets one call or one path away: a call dropped, added or exchanged; a path with two or three calls instead of one. */
function* neighbours(problem: MenuProblem, set: readonly number[]): Generator<readonly number[]> {
  const outside = pairableCandidates(problem).filter((c) => !set.includes(c));
  for (const out of set) {
    const kept = set.filter((c) => c !== out);
    yield kept;
    for (const c of outside) yield [...kept, c];
  }
  for (const c of outside) yield [...set, c];
  yield* pathNeighbours(problem, set, outside);
}

function* pathNeighbours(
  problem: MenuProblem,
  set: readonly number[],
  outside: readonly number[],
): Generator<readonly number[]> {
  const pathOf = (c: number) => (problem.candidates[c] as MenuCandidate).path;
  const carried = new Set(set.map(pathOf));
  const bundles = newBundles(
    outside.filter((c) => !carried.has(pathOf(c))),
    pathOf,
  );
  for (const path of [NO_PATH, ...carried]) {
    const kept = set.filter((c) => pathOf(c) !== path);
    for (const bundle of bundles) yield [...kept, ...bundle];
  }
}

const NO_PATH = -1;

/** Every two and every three calls of one path. */
function newBundles(list: readonly number[], pathOf: (c: number) => number): number[][] {
  return list.flatMap((first, i) => {
    const later = list.slice(i + 1).filter((c) => pathOf(c) === pathOf(first));
    return later.flatMap((second, j) => [
      [first, second],
      ...later.slice(j + 1).map((third) => [first, second, third]),
    ]);
  });
}
