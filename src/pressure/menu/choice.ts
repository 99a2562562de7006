import type { ExactSolver } from '../../stats/exact-solver.ts';
import { byCeiling, byMix, type MenuBook, openBook, type Ranking, workOut } from './book.ts';
import type { MenuMultipliers } from './ceiling.ts';
import { finishExactly } from './exact-choice.ts';
import { exchangeMenus } from './exchange.ts';
import { firstSet } from './first.ts';
import type { MenuMix, RankedSet } from './mix.ts';
import type { MenuProblem } from './model.ts';
import { learnRelaxation } from './relaxation.ts';
import { type SearchEnd, searchMenus } from './search.ts';
import { isCarriable } from './set.ts';

/** What was chosen: the book with the best sets and their mixes, and how the search ended. */
export interface MenuChoice<Ranked extends RankedSet = MenuMix> {
  readonly book: MenuBook<Ranked>;
  readonly end: SearchEnd;
}

/** How a menu is to be chosen. */
export interface ChoiceTask {
  readonly problem: MenuProblem;
  /** How many of the best sets are wanted, best first. */
  readonly wanted: number;
  /** Parts of the search to look at before it stops without a proof. */
  readonly mostParts: number;
  /** Finishes what the search leaves open; without it the end says how far the choice may be off. */
  readonly exact?: ExactSolver | undefined;
  /** What is known to be good for a problem like this one. */
  readonly known?: KnownMenus | undefined;
}

/** Sets and prices of a problem like the one to be solved. */
export interface KnownMenus {
  readonly best: readonly RankedSet[];
  readonly prices: readonly MenuMultipliers[];
}

/** Fruitless climbs in a row before the exchange is given up. Judgement. */
const PATIENCE = 4;

/**
 * The best sets of calls with their best mixes: a first set, the prices of all calls together, exchanges from it, then
 * branch and bound until nothing better can be left, or an exact solver for what it leaves open. Null when no set keeps
 * the limits (or none was found before the search stopped).
 */
export function chooseMenu({ problem, wanted, mostParts, known, exact }: ChoiceTask): MenuChoice | null {
  const first = firstSet(problem);
  if (first === null) return null;
  const book = knowingBook({ problem, wanted, rank: byMix }, known);
  const start = book.best[0]?.set ?? first;
  if (known === undefined) learnRelaxation(book, start);
  exchangeMenus(book, start, PATIENCE);
  const end = searchMenus(book, mostParts);
  return book.best.length === 0 ? null : { book, end: exact ? finishExactly(book, end, exact) : end };
}

/** One fruitless climb is enough where good sets are known. Judgement. */
const LITTLE_PATIENCE = 1;

/**
 * The best set of calls for a problem like one already solved, ranked by ceilings alone: the search is exact, but the
 * worth it gives must be checked against the set's best mix. Null as for `chooseMenu`.
 */
export function chooseSet(problem: MenuProblem, known: KnownMenus, mostParts: number): MenuChoice<RankedSet> | null {
  const first = firstSet(problem);
  if (first === null) return null;
  const book = knowingBook({ problem, wanted: 1, rank: byCeiling }, known);
  exchangeMenus(book, book.best[0]?.set ?? first, LITTLE_PATIENCE);
  const quick = searchMenus(book, Math.min(EASY_PARTS, mostParts));
  const end = quick.finished ? quick : searchLonger(book, first, mostParts);
  return book.best.length === 0 ? null : { book, end };
}

/** Parts in which most searches end that start from good sets. Judgement. */
const EASY_PARTS = 200;

/** Searches again with the prices of all calls together, which cost more to learn than an easy search. */
function searchLonger(book: MenuBook, first: readonly number[], mostParts: number): SearchEnd {
  const start = book.best[0]?.set ?? first;
  learnRelaxation(book, start);
  exchangeMenus(book, start, PATIENCE);
  return searchMenus(book, mostParts);
}

/** What a book is opened for, but for what is known. */
interface FreshBook<Ranked extends RankedSet> {
  readonly problem: MenuProblem;
  readonly wanted: number;
  readonly rank: Ranking<Ranked>;
}

/** A book that knows what was good for a problem like this one. */
function knowingBook<Ranked extends RankedSet>(task: FreshBook<Ranked>, known?: KnownMenus): MenuBook<Ranked> {
  const book = openBook({ ...task, prices: known?.prices.slice(-PRICES_KEPT) });
  for (const { set } of known?.best ?? []) if (isCarriable(task.problem, set)) workOut(book, set);
  return book;
}

/** Prices taken over from another problem: the last ones found, which come from its best sets. Judgement. */
const PRICES_KEPT = 2;

/** Whether any set of calls keeps the limits. */
export function hasMenu(problem: MenuProblem): boolean {
  const first = firstSet(problem);
  if (first === null) return false;
  const book = openBook({ problem, wanted: 1, rank: byMix });
  workOut(book, first);
  if (book.best.length === 0) searchMenus(book, PARTS_FOR_ANY);
  return book.best.length > 0;
}

/** Parts looked at for any mix that keeps the limits; such a mix is found at once or not at all. Judgement. */
const PARTS_FOR_ANY = 2000;
