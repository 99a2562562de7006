import type { LibraryProblem } from '../call-library-checks.ts';

/** Where things are looked up by name, and how one is laid over another. */
export interface LikeBook<Entry> {
  readonly entries: ReadonlyMap<string, Entry>;
  /** What a name stands for, in words: "path", "coverage", "call". */
  readonly kind: string;
  /** The keys that lead to an entry in the file. */
  readonly placeOf: (name: string) => LibraryProblem['path'];
  /** An entry laid over the one it is like. */
  readonly over: (base: Entry, entry: Entry) => Entry;
}

/** An entry with everything it has from the one it is like, and the fault when that one is not there or comes back to it. */
export interface LikeResult<Entry> {
  readonly entry: Entry;
  readonly problem?: LibraryProblem;
}

/** What may be like others of its kind. */
export interface Alike {
  readonly like?: string | readonly string[] | undefined;
}

/** Follows `like` to the end, the farthest first, several in the order written; the first fault on the way ends it. */
export function followLike<Entry extends Alike>(
  name: string,
  book: LikeBook<Entry>,
  seen: readonly string[] = [],
): LikeResult<Entry> {
  const entry = book.entries.get(name) as Entry;
  const way = [...seen, name];
  let base: Entry | undefined;
  for (const other of [entry.like ?? []].flat()) {
    const message = faultOf(other, book, way);
    if (message !== null) return { entry, problem: { path: [...book.placeOf(name), 'like'], message } };
    const found = followLike(other, book, way);
    if (found.problem) return { entry, problem: found.problem };
    base = base === undefined ? found.entry : book.over(base, found.entry);
  }
  return { entry: base === undefined ? entry : book.over(base, entry) };
}

function faultOf<Entry>(other: string, { entries, kind }: LikeBook<Entry>, way: readonly string[]): string | null {
  if (!entries.has(other)) {
    const names = [...entries.keys()].filter((name) => name !== way.at(-1));
    return `${other} is the name of no ${kind}; there are ${names.join(', ') || 'no others'}`;
  }
  if (!way.includes(other)) return null;
  return `goes round in a circle: ${[...way, other].join(' is like ')}; write one of them out`;
}
