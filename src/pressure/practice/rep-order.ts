/** A pair with its repetitions, as the order needs it. */
export interface OrderedPair {
  readonly call: string;
  readonly count: number;
  /** The call is new this week. */
  readonly isNew: boolean;
}

/**
 * The week's repetitions in order, as indices into the pairs: in rounds, so that every pair is seen before one is seen
 * again; within a round the new calls come first, and the calls take turns.
 */
export function repOrder(pairs: readonly OrderedPair[]): readonly number[] {
  const rounds = pairs.reduce((most, { count }) => Math.max(most, count), 0);
  const order: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const present = pairs.flatMap((pair, i) => (pair.count > round ? [i] : []));
    order.push(...takingTurns(present, pairs));
  }
  return order;
}

function takingTurns(indices: readonly number[], pairs: readonly OrderedPair[]): number[] {
  const turns = new Map<string, number>();
  const placed = indices.map((index) => {
    const call = pairs[index]?.call ?? '';
    const turn = turns.get(call) ?? 0;
    turns.set(call, turn + 1);
    return { index, turn, old: pairs[index]?.isNew ? 0 : 1 };
  });
  return placed.sort((a, b) => a.old - b.old || a.turn - b.turn).map(({ index }) => index);
}
