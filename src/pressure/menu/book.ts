import { ceilingOf, lowestCeiling, type MenuCeiling, type MenuMultipliers } from './ceiling.ts';
import { bestMix, type MenuMix, type RankedSet } from './mix.ts';
import type { MenuProblem } from './model.ts';
import { multipliersOf } from './multipliers.ts';
import { priceOutside } from './outside.ts';
import { ascending, setKey } from './set.ts';

/** What a search has learned: prices and the ceilings they make, the sets already solved, the best mixes found. */
export interface MenuBook<Ranked extends RankedSet = RankedSet> {
  readonly problem: MenuProblem;
  /** Ranks a set that may be among the best, given the lowest ceiling on it; null when no mix of it keeps the limits. */
  readonly rank: Ranking<Ranked>;
  /** How many of the best sets are wanted. */
  readonly wanted: number;
  readonly prices: MenuMultipliers[];
  /** Ceilings, the one that was last of use first. */
  readonly ceilings: MenuCeiling[];
  readonly solved: Set<string>;
  /** Best different sets, best first; at most `wanted`. */
  readonly best: Ranked[];
  /** Less than any mix can be worth: a ceiling below it proves that a set cannot keep the limits. */
  readonly nothing: number;
  /** Highest ceiling on a set whose mix could not be worked out; minus infinity when there is none. */
  doubt: number;
  /** Linear programs solved for sets. */
  programs: number;
}

/** How a book learns what a set is worth. */
export type Ranking<Ranked extends RankedSet> = (
  problem: MenuProblem,
  set: readonly number[],
  ceiling: number,
) => Ranked | null;

/** Ranks sets by their best mix, worked out by a linear program of its own. */
export const byMix: Ranking<MenuMix> = bestMix;

/**
 * Ranks sets by the lowest ceiling on them, which is their worth once their own prices are known (strong duality), and
 * saves the program of the mix. Whoever needs certainty mixes the set that wins.
 */
export const byCeiling: Ranking<RankedSet> = (_, set, ceiling) => ({ set: ascending(set), objective: ceiling });

/** Two worths closer than this are the same worth; below what a point of a game can mean. Judgement. */
export const WORTH_SLACK = 1e-7;

/** What a book is opened for. */
export interface BookTask<Ranked extends RankedSet> {
  readonly problem: MenuProblem;
  readonly wanted: number;
  readonly rank: Ranking<Ranked>;
  /** Prices found for another problem of the same shape (other scores, other limits); they are still prices. */
  readonly prices?: readonly MenuMultipliers[] | undefined;
}

/** An empty book. */
export function openBook<Ranked extends RankedSet>(task: BookTask<Ranked>): MenuBook<Ranked> {
  const { problem, wanted, rank, prices = [] } = task;
  return {
    problem,
    wanted,
    rank,
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
  if (ceiling > enough) judge(book, book.rank(book.problem, set, ceiling), ceiling);
  return true;
}

function judge(book: MenuBook, ranked: RankedSet | null, ceiling: number): void {
  if (ranked) keep(book, ranked);
  if (!reaches(ranked, ceiling)) book.doubt = Math.max(book.doubt, ceiling);
}

/** Whether a set's worth is as near to a ceiling on it as rounding allows, and so surely the set's best. */
export function reaches(ranked: RankedSet | null, ceiling: number): ranked is RankedSet {
  return ranked !== null && ceiling - ranked.objective <= LARGEST_GAP;
}

/** Judgement: far below a printed digit. */
const LARGEST_GAP = 1e-5;

/** Adds prices to a book, and the ceiling they make; the newest is looked at first. */
export function learnPrices(book: MenuBook, prices: MenuMultipliers): void {
  book.prices.push(prices);
  book.ceilings.unshift(ceilingOf(book.problem, prices));
}

function keep(book: MenuBook, ranked: RankedSet): void {
  book.best.push(ranked);
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
