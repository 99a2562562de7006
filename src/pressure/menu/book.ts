import { ceilingOf, lowestCeiling, type MenuCeiling, type MenuMultipliers } from './ceiling.ts';
import { bestMix, type MenuMix } from './mix.ts';
import type { MenuProblem } from './model.ts';
import { multipliersOf } from './multipliers.ts';
import { priceOutside } from './outside.ts';
import { setKey } from './set.ts';

/** What a search has learned: prices and the ceilings they make, the sets already solved, the best mixes found. */
export interface MenuBook {
  readonly problem: MenuProblem;
  /** How many of the best sets are wanted. */
  readonly wanted: number;
  readonly prices: MenuMultipliers[];
  /** Ceilings, the one that was last of use first. */
  readonly ceilings: MenuCeiling[];
  readonly solved: Set<string>;
  /** Best mixes of different sets, best first; at most `wanted`. */
  readonly best: MenuMix[];
  /** Less than any mix can be worth: a ceiling below it proves that a set cannot keep the limits. */
  readonly nothing: number;
  /** Highest ceiling on a set whose mix could not be worked out; minus infinity when there is none. */
  doubt: number;
  /** Linear programs solved for sets. */
  programs: number;
}

/** Two worths closer than this are the same worth; below what a point of a game can mean. Judgement. */
export const WORTH_SLACK = 1e-7;

/**
 * An empty book. Prices found for another problem of the same shape (other scores, other limits) are still prices.
 */
export function openBook(problem: MenuProblem, wanted: number, prices: readonly MenuMultipliers[] = []): MenuBook {
  return {
    problem,
    wanted,
    prices: [...prices],
    ceilings: prices.map((price) => ceilingOf(problem, price)),
    solved: new Set(),
    best: [],
    nothing: belowAnyWorth(problem),
    doubt: Number.NEGATIVE_INFINITY,
    programs: 0,
  };
}

/**
 * The worth a set must exceed to matter: the last of the best so far, or less than any mix can be worth while there are
 * too few.
 */
export function mark(book: MenuBook): number {
  const last = book.best[book.wanted - 1];
  return last ? last.objective + WORTH_SLACK : book.nothing;
}

/**
 * Works out a set: its prices become a ceiling, and its best mix joins the book when it is among the best. Does nothing
 * when the set is known already.
 *
 * @returns whether the set was new
 */
export function workOut(book: MenuBook, set: readonly number[]): boolean {
  const key = setKey(set);
  if (book.solved.has(key)) return false;
  book.solved.add(key);
  book.programs++;
  const prices = multipliersOf(book.problem, set);
  if (prices) learnPrices(book, priceOutside(book.problem, set, prices));
  const enough = mark(book);
  const ceiling = lowestCeiling(book.ceilings, set, enough);
  if (ceiling > enough) judge(book, bestMix(book.problem, set), ceiling);
  return true;
}

function judge(book: MenuBook, mix: MenuMix | null, ceiling: number): void {
  if (mix) keep(book, mix);
  if (!mix || ceiling - mix.objective > LARGEST_GAP) book.doubt = Math.max(book.doubt, ceiling);
}

/** A mix whose worth is this near the ceiling on its set is that set's best. Judgement: far below a printed digit. */
const LARGEST_GAP = 1e-5;

/** Adds prices to a book, and the ceiling they make; the newest is looked at first. */
export function learnPrices(book: MenuBook, prices: MenuMultipliers): void {
  book.prices.push(prices);
  book.ceilings.unshift(ceilingOf(book.problem, prices));
}

function keep(book: MenuBook, mix: MenuMix): void {
  book.best.push(mix);
  book.best.sort((a, b) => b.objective - a.objective);
  book.best.length = Math.min(book.best.length, book.wanted);
}

function belowAnyWorth({ situations, value, byAnswer }: MenuProblem): number {
  const lowest = Math.min(lowestOf(value), lowestOf(byAnswer));
  return 2 * lowest * situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0) - 1;
}

function lowestOf(worths: Float64Array): number {
  return worths.reduce((least, worth) => Math.min(least, worth), 0);
}
