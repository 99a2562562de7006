import { learnPrices, type MenuBook } from './book.ts';
import { ceilingOf, type MenuCeiling, setCeiling } from './ceiling.ts';
import type { MenuProblem } from './model.ts';
import { multipliersOf } from './multipliers.ts';
import { priceOutside } from './outside.ts';
import { ascending } from './set.ts';

/** Calls taken in at a time, and times. Judgement: after a few rounds nothing is left to take in. */
const [TAKEN_IN, ROUNDS] = [6, 12];

/** A call that adds less than this to a ceiling adds nothing. */
const NOTHING = 1e-6;

/**
 * Teaches a book the prices at which calls would be mixed if all of them could be carried: the program of some calls is
 * solved, the calls outside that would add most at its prices are taken in, and so on until none would add anything
 * (column generation). Prices of a small set alone say little of calls that hedge against other answers; these put the
 * lowest ceiling on sets unlike those already seen.
 *
 * @see Dantzig and Wolfe 1960, Operations Research 8:101
 */
export function learnRelaxation(book: MenuBook, start: readonly number[]): void {
  const { problem } = book;
  const free: MenuProblem = { ...problem, limits: { ...problem.limits, leastCalls: 0 } };
  let taken = ascending(start);
  for (let round = 0; round < ROUNDS; round++) {
    const prices = multipliersOf(free, taken);
    if (prices === null) return;
    const whole = priceOutside(problem, taken, prices);
    learnPrices(book, whole);
    const more = addingMost(problem, ceilingOf(problem, whole), taken);
    if (more.length === 0) return;
    taken = ascending([...taken, ...more]);
  }
}

function addingMost(problem: MenuProblem, ceiling: MenuCeiling, taken: readonly number[]): number[] {
  const now = setCeiling(ceiling, taken);
  const known = new Set(taken);
  return problem.candidates
    .flatMap((_, c) => (known.has(c) ? [] : [{ c, adds: setCeiling(ceiling, [...taken, c]) - now }]))
    .filter(({ adds }) => adds > NOTHING)
    .sort((a, b) => b.adds - a.adds)
    .slice(0, TAKEN_IN)
    .map(({ c }) => c);
}
