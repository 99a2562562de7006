import { largestRemainder } from '../../stats/apportion.ts';

/** A call against a look, before the repetitions are counted out. */
export interface RepPair {
  readonly call: string;
  readonly look: string;
  /** Worth of the pair against the others, at least 0. */
  readonly weight: number;
  /** Lower comes first when the repetitions do not reach; `null` where no repetition is asked for. */
  readonly need: number | null;
}

/** Repetitions of every pair, in the order of the pairs, and the pairs that asked for one and got none. */
export interface RepCounts {
  readonly counts: readonly number[];
  readonly unmet: readonly RepPair[];
}

/**
 * Counts out the repetitions of a week: one for every pair that asks for one, the rest by largest remainder of the
 * weights less what a pair has already got. When they do not reach, the pairs of lower `need` are served first.
 *
 * @param seats - repetitions of the week, a whole number
 * @returns whole numbers that sum to `seats` unless no pair has any weight
 */
export function repCounts(pairs: readonly RepPair[], seats: number): RepCounts {
  const asking = pairs.flatMap((pair, i) => (pair.need === null ? [] : [{ i, need: pair.need }]));
  const served = asking.sort((a, b) => a.need - b.need || a.i - b.i).slice(0, seats);
  const counts: number[] = pairs.map(() => 0);
  for (const { i } of served) counts[i] = 1;
  const unmet = asking.slice(served.length).flatMap(({ i }) => pairs[i] ?? []);
  const rest = seats - served.length;
  if (rest > 0 && pairs.length > 0) {
    largestRemainder(leftOver(pairs, counts, seats), rest).forEach((more, i) => {
      counts[i] = (counts[i] ?? 0) + more;
    });
  }
  return { counts, unmet };
}

function leftOver(pairs: readonly RepPair[], given: readonly number[], seats: number): number[] {
  const total = pairs.reduce((sum, { weight }) => sum + weight, 0);
  if (total === 0) return pairs.map(({ need }) => (need === null ? 0 : 1));
  return pairs.map(({ weight }, i) => Math.max(0, (weight / total) * seats - (given[i] ?? 0)));
}
