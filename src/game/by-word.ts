/** The items of each key, in order of its first item; an item without a key is in none. */
export function groupBy<Item, Key>(items: Iterable<Item>, keyOf: (item: Item) => Key | undefined): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

/** How many items have each key, in order of its first item; an item without a key is not counted. */
export function countBy<Item, Key>(items: Iterable<Item>, keyOf: (item: Item) => Key | undefined): Map<Key, number> {
  const counts = new Map<Key, number>();
  for (const item of items) {
    const key = keyOf(item);
    if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

/** Words with their counts, the most frequent first, ties in the order of the alphabet. */
export function mostFirst(counts: ReadonlyMap<string, number>): [word: string, count: number][] {
  return [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
}
