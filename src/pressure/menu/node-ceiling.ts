import { type MenuCeiling, pairAllowance } from './ceiling.ts';
import type { MenuProblem } from './model.ts';
import type { MenuNode, NodeRoom } from './node.ts';

/** Places for the numbers of one bound, made once for a search. */
export interface NodeScratch {
  readonly problem: MenuProblem;
  /** Worth of the chosen calls, by situation. */
  readonly covered: Float64Array;
  /** What each candidate would add in each situation. */
  readonly added: Float64Array;
  /** The largest additions of each situation, at `rank * situations + situation`; then a row of zeros. */
  readonly largest: Float64Array;
  /** What each candidate adds beyond the part charged to the situations. */
  readonly beyond: Float64Array;
  readonly items: NodeItems;
}

/** Things that may still be added: what they bring, how many calls and repetitions they take. */
interface NodeItems {
  length: number;
  readonly brings: Float64Array;
  readonly calls: Float64Array;
  readonly reps: Float64Array;
  readonly used: Uint8Array;
}

/** How many of a situation's largest additions are told apart. Judgement: more buys little. */
const RANKS = 4;

/** Scratch for the bounds of one problem. */
export function nodeScratch(problem: MenuProblem): NodeScratch {
  const [calls, situations] = [problem.candidates.length, problem.situations.length];
  return {
    problem,
    covered: new Float64Array(situations),
    added: new Float64Array(calls * situations),
    largest: new Float64Array((RANKS + 1) * situations),
    beyond: new Float64Array(calls),
    items: {
      length: 0,
      brings: new Float64Array(calls),
      calls: new Float64Array(calls),
      reps: new Float64Array(calls),
      used: new Uint8Array(calls),
    },
  };
}

/** A part of the search with what is left to spend in it. */
export interface RoomyNode {
  readonly node: MenuNode;
  readonly room: NodeRoom;
}

/**
 * A ceiling on every set of a part of the search. Whatever a situation is charged (nothing, or its k-th largest
 * addition), the free calls bring at most those charges plus, each, what it adds beyond them; the calls that bring most
 * for the size and the repetitions left are taken, the last one in part. The lowest such number counts.
 *
 * @param enough - the search is content with any number not above this, so counting may stop there
 */
export function nodeCeiling(
  scratch: NodeScratch,
  ceiling: MenuCeiling,
  { node, room, enough }: RoomyNode & { readonly enough: number },
): number {
  const base = coverChosen(scratch, ceiling, node.chosen);
  if (node.free.length === 0) return base;
  fillAdded(scratch, ceiling, node.free);
  let most = Number.POSITIVE_INFINITY;
  for (let rank = 0; rank <= RANKS && base + most > enough; rank++) {
    const charged = fillBeyond(scratch, ceiling, { free: node.free, rank });
    fillItems(scratch, node.free, room);
    const { items } = scratch;
    const spent = Math.min(fractional(items, items.calls, room.calls), fractional(items, items.reps, room.reps));
    most = Math.min(most, charged + spent);
  }
  return base + most;
}

function coverChosen({ covered }: NodeScratch, ceiling: MenuCeiling, chosen: readonly number[]): number {
  const { worth, fixed, floor, constant } = ceiling;
  covered.set(floor);
  let total = constant + pairAllowance(ceiling, chosen);
  for (const c of chosen) {
    total += fixed[c] as number;
    const start = c * covered.length;
    for (let s = 0; s < covered.length; s++) {
      const here = worth[start + s] as number;
      if (here > (covered[s] as number)) covered[s] = here;
    }
  }
  for (let s = 0; s < covered.length; s++) total += covered[s] as number;
  return total;
}

function fillAdded({ covered, added, largest }: NodeScratch, { worth }: MenuCeiling, free: readonly number[]): void {
  largest.fill(0);
  const count = covered.length;
  for (const c of free) {
    for (let s = 0; s < count; s++) {
      const at = c * count + s;
      const more = (worth[at] as number) - (covered[s] as number);
      added[at] = Math.max(more, 0);
      if (more > (largest[(RANKS - 1) * count + s] as number)) insertLargest(largest, more, { s, count });
    }
  }
}

function insertLargest(largest: Float64Array, value: number, { s, count }: { s: number; count: number }): void {
  let moving = value;
  for (let rank = 0; rank < RANKS; rank++) {
    const at = rank * count + s;
    const there = largest[at] as number;
    if (moving > there) {
      largest[at] = moving;
      moving = there;
    }
  }
}

/** Charges each situation its addition of the given rank (nothing past the last) and fills what calls add beyond. */
function fillBeyond(
  { covered, added, largest, beyond }: NodeScratch,
  { fixed, ofPair, pairs }: MenuCeiling,
  { free, rank }: { readonly free: readonly number[]; readonly rank: number },
): number {
  const count = covered.length;
  const row = rank * count;
  let charged = 0;
  for (let s = 0; s < count; s++) charged += largest[row + s] as number;
  for (const c of free) {
    const start = c * count;
    let total = (fixed[c] as number) + (ofPair[pairs[c] as number] as number);
    for (let s = 0; s < count; s++) {
      const more = (added[start + s] as number) - (largest[row + s] as number);
      if (more > 0) total += more;
    }
    beyond[c] = total;
  }
  return charged;
}

/**
 * The things to add: a call on a path that is already carried, or that may be called unpaired, comes alone; on another
 * path two coverages come first, so its two best calls are one thing that takes two calls and its two cheapest
 * repetitions. Only what brings something.
 */
function fillItems(scratch: NodeScratch, free: readonly number[], room: NodeRoom): void {
  scratch.items.length = 0;
  for (let start = 0; start < free.length; ) {
    const end = endOfPath(scratch.problem, free, start);
    addPathItems(scratch, { free, start, end }, room);
    start = end;
  }
}

/** Where the calls of one path end in a list whose calls of one path are neighbours. */
function endOfPath({ candidates }: MenuProblem, free: readonly number[], start: number): number {
  const path = candidates[free[start] as number]?.path;
  let end = start + 1;
  while (end < free.length && candidates[free[end] as number]?.path === path) end++;
  return end;
}

interface PathSpan {
  readonly free: readonly number[];
  readonly start: number;
  readonly end: number;
}

function addPathItems(scratch: NodeScratch, span: PathSpan, room: NodeRoom): void {
  const { problem, beyond, items } = scratch;
  const path = problem.candidates[span.free[span.start] as number]?.path ?? 0;
  const { pairingCap, uncounted, leastCalls } = problem.limits;
  const comesAlone = pairingCap >= 1 || room.onPath[path] === 1 || (uncounted[path] as number) >= leastCalls;
  const [first, second] = comesAlone ? NOBODY : twoBest(problem, span, beyond);
  if (second !== -1) {
    const brings = (beyond[first] as number) + (beyond[second] as number);
    addItem(items, brings, { calls: 2, reps: twoLeast(span, room.leastReps) });
  }
  for (let i = span.start; i < span.end; i++) {
    const c = span.free[i] as number;
    if (c === first || c === second) continue;
    addItem(items, beyond[c] as number, { calls: 1, reps: room.leastReps[c] as number });
  }
}

const NOBODY: readonly [number, number] = [-1, -1];

/** The best call of a path and the best of another coverage; nobody where there is no such other. */
function twoBest({ candidates }: MenuProblem, span: PathSpan, beyond: Float64Array): readonly [number, number] {
  const first = bestOf(span, beyond, () => true);
  const second = bestOf(span, beyond, (c) => candidates[c]?.coverage !== candidates[first]?.coverage);
  return second === -1 ? NOBODY : [first, second];
}

function bestOf({ free, start, end }: PathSpan, beyond: Float64Array, fits: (c: number) => boolean): number {
  let best = -1;
  for (let i = start; i < end; i++) {
    const c = free[i] as number;
    if (fits(c) && (best === -1 || (beyond[c] as number) > (beyond[best] as number))) best = c;
  }
  return best;
}

function twoLeast({ free, start, end }: PathSpan, reps: Float64Array): number {
  let [least, next] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let i = start; i < end; i++) {
    const here = reps[free[i] as number] as number;
    if (here < least) [least, next] = [here, least];
    else if (here < next) next = here;
  }
  return least + next;
}

function addItem(items: NodeItems, brings: number, takes: { readonly calls: number; readonly reps: number }): void {
  if (brings <= 0) return;
  items.brings[items.length] = brings;
  items.calls[items.length] = takes.calls;
  items.reps[items.length] = takes.reps;
  items.length++;
}

/** What a room holds at most when things may be cut: the best for their size first, the last one in part. */
function fractional(items: NodeItems, sizes: Float64Array, room: number): number {
  items.used.fill(0);
  let [left, total] = [Math.max(0, room), 0];
  while (left >= 0) {
    const best = densest(items, sizes);
    if (best === -1) break;
    const size = sizes[best] as number;
    const brings = items.brings[best] as number;
    items.used[best] = 1;
    total += size <= left ? brings : (brings * left) / size;
    left -= size;
  }
  return total;
}

function densest({ length, brings, used }: NodeItems, sizes: Float64Array): number {
  let [best, most] = [-1, 0];
  for (let i = 0; i < length; i++) {
    if (used[i] === 1) continue;
    const density = (brings[i] as number) / (sizes[i] as number);
    if (best === -1 || density > most) [best, most] = [i, density];
  }
  return best;
}
