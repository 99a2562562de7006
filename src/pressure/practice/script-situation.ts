import { countBy } from '../../game/by-word.ts';
import { type Film, rowsOf, textAt } from '../../game/film.ts';
import { HASHES } from '../../game/vocabulary.ts';
import type { ScriptPair } from './script-pair.ts';

/**
 * A situation for every repetition, in the order of the week. Each call's repetitions are spread over its situations as
 * the menu calls it and the looks are expected there: the next one is the situation furthest behind.
 */
export function situationsInOrder(order: readonly ScriptPair[]): readonly string[] {
  const owed = new Map<string, Map<string, number>>();
  return order.map(({ call, situations }) => {
    const due = owed.get(call) ?? new Map<string, number>();
    owed.set(call, due);
    const total = [...situations.values()].reduce((sum, weight) => sum + weight, 0);
    for (const [id, weight] of situations) due.set(id, (due.get(id) ?? 0) + weight / Math.max(total, 1e-12));
    const next = furthestBehind(due, situations);
    due.set(next, (due.get(next) ?? 0) - 1);
    return next;
  });
}

/** Among the situations the pair can come in. */
function furthestBehind(due: ReadonlyMap<string, number>, situations: ReadonlyMap<string, number>): string {
  let best: string | undefined;
  for (const id of situations.keys()) {
    if (best === undefined || (due.get(id) ?? 0) > (due.get(best) ?? 0) + 1e-9) best = id;
  }
  return best ?? 'first_ten';
}

/** How often the ball lay on each hash on film; even where nothing was charted. */
export function hashWeights(chart: Film): ReadonlyMap<string, number> {
  const counts = countBy(rowsOf(chart), (row) => textAt(chart, 'hash', row));
  return new Map(HASHES.map((hash) => [hash, counts.size === 0 ? 1 : (counts.get(hash) ?? 0)]));
}
