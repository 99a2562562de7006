import type { ExactSolver } from '../../stats/exact-solver.ts';
import { type MenuBook, openBook, workOut } from './book.ts';
import type { MenuMultipliers } from './ceiling.ts';
import { finishExactly } from './exact-choice.ts';
import { exchangeMenus } from './exchange.ts';
import { firstSet } from './first.ts';
import type { MenuProblem } from './model.ts';
import { learnRelaxation } from './relaxation.ts';
import { type SearchEnd, searchMenus } from './search.ts';
import { isCarriable } from './set.ts';

/** How a menu is to be chosen. */
export interface ChoiceTask {
  readonly problem: MenuProblem;
  /** How many of the best sets are wanted, best first. */
  readonly wanted: number;
  /** Parts of the search to look at before it stops without a proof. */
  readonly mostParts: number;
  /** Finishes what the search leaves open; without it the end says how far the choice may be off. */
  readonly exact?: ExactSolver | undefined;
  /** Sets and prices known to be good for a problem like this one. */
  readonly known?: Pick<MenuBook, 'best' | 'prices'> | undefined;
}

/** What was chosen: the book with the best sets and their mixes, and how the search ended. */
export interface MenuChoice {
  readonly book: MenuBook;
  readonly end: SearchEnd;
}

/**
 * The best sets of calls with their best mixes: a first set, the prices of all calls together, exchanges from it, then
 * branch and bound until nothing better can be left, or an exact solver for what it leaves open. Null when no set keeps
 * the limits (or none was found before the search stopped).
 */
export function chooseMenu({ problem, wanted, mostParts, known, exact }: ChoiceTask): MenuChoice | null {
  const first = firstSet(problem);
  if (first === null) return null;
  const book = startBook({ problem, wanted, known });
  learnRelaxation(book, book.best[0]?.set ?? first);
  exchangeMenus(book, book.best[0]?.set ?? first);
  const end = searchMenus(book, mostParts);
  return book.best.length === 0 ? null : { book, end: exact ? finishExactly(book, end, exact) : end };
}

/** A book that knows what was good for a problem like this one. */
function startBook({ problem, wanted, known }: Pick<ChoiceTask, 'problem' | 'wanted' | 'known'>): MenuBook {
  const book = openBook(problem, wanted, latest(known?.prices ?? []));
  for (const { set } of known?.best ?? []) if (isCarriable(problem, set)) workOut(book, set);
  return book;
}

/** Prices taken over from another problem: the last ones found, which come from its best sets. Judgement. */
const PRICES_KEPT = 12;

function latest(prices: readonly MenuMultipliers[]): readonly MenuMultipliers[] {
  return prices.slice(-PRICES_KEPT);
}

/** Whether any set of calls keeps the limits. */
export function hasMenu(problem: MenuProblem): boolean {
  const first = firstSet(problem);
  if (first === null) return false;
  const book = openBook(problem, 1);
  workOut(book, first);
  if (book.best.length === 0) searchMenus(book, PARTS_FOR_ANY);
  return book.best.length > 0;
}

/** Parts looked at for any mix that keeps the limits; such a mix is found at once or not at all. Judgement. */
const PARTS_FOR_ANY = 2000;
