import { type MenuBook, mark, workOut } from './book.ts';
import { branchPool } from './branch.ts';
import { lowestCeiling, type MenuCeiling, setCeiling } from './ceiling.ts';
import { pairableCandidates } from './model.ts';
import { type MenuNode, type NodeRoom, trimNode } from './node.ts';
import { type NodeScratch, nodeCeiling, nodeScratch } from './node-ceiling.ts';
import { isCarriable } from './set.ts';

/** How a search ended. */
export interface SearchEnd {
  /** Parts of the search looked at. */
  readonly parts: number;
  /** No set outside the book is worth more than this; the worth of the last of the best when the search was finished. */
  readonly ceiling: number;
  /** Whether nothing was left open. */
  readonly finished: boolean;
  /** Whether only the best is proved, and the next ones are merely the best found. */
  readonly bestOnly?: boolean;
}

/**
 * Branch and bound over which calls to carry, on top of what the book knows: every part of the search whose ceiling does
 * not reach the best sets found is dropped, every set that may be better is worked out by the linear program.
 *
 * @param mostParts - the search stops there and says how much better an unseen set could be
 */
export function searchMenus(book: MenuBook, mostParts: number): SearchEnd {
  const search = { book, scratch: nodeScratch(book.problem), mostParts, parts: 0, open: Number.NEGATIVE_INFINITY };
  visit(
    search,
    { chosen: book.problem.limits.musts, free: pairableCandidates(book.problem) },
    Number.POSITIVE_INFINITY,
  );
  const left = Math.max(search.open, book.doubt);
  const last = book.best[book.wanted - 1]?.objective ?? Number.NEGATIVE_INFINITY;
  return { parts: search.parts, ceiling: Math.max(left, last), finished: left <= mark(book) };
}

interface Search {
  readonly book: MenuBook;
  readonly scratch: NodeScratch;
  readonly mostParts: number;
  parts: number;
  /** Highest ceiling on a part that was left open. */
  open: number;
}

function visit(search: Search, whole: MenuNode, ceilingAbove: number): void {
  if (search.parts >= search.mostParts) {
    search.open = Math.max(search.open, ceilingAbove);
    return;
  }
  search.parts++;
  const { book } = search;
  const free = whole.free.filter((c) => !whole.chosen.includes(c));
  const trimmed = trimNode(book.problem, { chosen: whole.chosen, free });
  if (trimmed === null) return;
  const bound = lowestOnNode(search, trimmed);
  if (bound === null) return;
  tryChosen(book, trimmed.node.chosen);
  if (trimmed.node.free.length === 0 || bound.ceiling <= mark(book)) return;
  const next = branchOn(book, trimmed.node, bound.by);
  const rest = trimmed.node.free.filter((c) => c !== next);
  visit(search, { chosen: [...trimmed.node.chosen, next], free: rest }, bound.ceiling);
  visit(search, { chosen: trimmed.node.chosen, free: rest }, bound.ceiling);
}

/** The lowest ceiling on a part and which one it is, or null when one of them shows that nothing better is in it. */
function lowestOnNode(
  { book, scratch }: Search,
  { node, room }: { readonly node: MenuNode; readonly room: NodeRoom },
): { ceiling: number; by: MenuCeiling | undefined } | null {
  const enough = mark(book);
  let lowest: { ceiling: number; by: MenuCeiling | undefined } = { ceiling: Number.POSITIVE_INFINITY, by: undefined };
  for (const [i, by] of book.ceilings.entries()) {
    const ceiling = nodeCeiling(scratch, by, { node, room, enough });
    if (ceiling < lowest.ceiling) lowest = { ceiling, by };
    if (ceiling > enough) continue;
    book.ceilings.splice(i, 1);
    book.ceilings.unshift(by);
    return null;
  }
  return lowest;
}

function tryChosen(book: MenuBook, chosen: readonly number[]): void {
  if (!isCarriable(book.problem, chosen)) return;
  const enough = mark(book);
  if (lowestCeiling(book.ceilings, chosen, enough) > enough) workOut(book, chosen);
}

/** The candidate to decide next: of the pool, the one that adds most; the cheapest while nothing is known. */
function branchOn(book: MenuBook, node: MenuNode, by: MenuCeiling | undefined): number {
  const pool = branchPool(book.problem, node);
  const worth = (c: number) => (by ? setCeiling(by, [...node.chosen, c]) : -(book.problem.candidates[c]?.reps ?? 0));
  return pool.reduce((best, c) => (worth(c) > worth(best) ? c : best));
}
