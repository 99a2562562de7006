import { largestRemainder } from '../../stats/apportion.ts';

/** A call against a look, before the repetitions are counted out. */
export interface RepPair {
  readonly call: string;
  readonly look: string;
  /** Repetitions asked for to install the call against this look, at least 0; 0 for a call we have. */
  readonly install: number;
  /** Worth of the pair against the others, at least 0. */
  readonly weight: number;
  /** Lower comes first when the repetitions do not reach; `null` where no repetition is asked for. */
  readonly need: number | null;
}

/** Repetitions of every pair, in the order of the pairs, and the pairs that asked for one and got none. */
export interface RepCounts<Pair extends RepPair> {
  readonly counts: readonly number[];
  readonly unmet: readonly Pair[];
}

/**
 * Counts out the repetitions of a week: one for every pair that asks for one; then what it takes to install the new
 * calls; then the rest by largest remainder of the weights, less what a pair has already got. When they do not reach,
 * the pairs of lower `need` are served first.
 *
 * @param seats - repetitions of the week, a whole number
 * @returns whole numbers that sum to `seats` unless no pair has any weight
 */
export function repCounts<Pair extends RepPair>(pairs: readonly Pair[], seats: number): RepCounts<Pair> {
  const asking = pairs.flatMap((pair, i) => (pair.need === null ? [] : [{ i, need: pair.need }]));
  const served = asking.sort((a, b) => a.need - b.need || a.i - b.i).slice(0, seats);
  const counts: number[] = pairs.map(() => 0);
  for (const { i } of served) counts[i] = 1;
  const unmet = asking.slice(served.length).flatMap(({ i }) => pairs[i] ?? []);
  const lacking = pairs.map(({ install }, i) => Math.max(0, install - (counts[i] as number)));
  handOut(counts, lacking, Math.min(seats - sum(counts), Math.ceil(sum(lacking))));
  handOut(counts, leftOver(pairs, counts, seats), seats - sum(counts));
  return { counts, unmet };
}

function handOut(counts: number[], weights: readonly number[], seats: number): void {
  if (seats <= 0 || weights.length === 0) return;
  largestRemainder(weights, seats).forEach((more, i) => {
    counts[i] = (counts[i] as number) + more;
  });
}

/** What each pair lacks of its installing and of its share in all the other repetitions. */
function leftOver(pairs: readonly RepPair[], given: readonly number[], seats: number): number[] {
  const total = sum(pairs.map(({ weight }) => weight));
  const others = Math.max(0, seats - sum(pairs.map(({ install }) => install)));
  const lacking = pairs.map(({ install, weight }, i) => {
    return Math.max(0, install + (total === 0 ? 0 : (weight / total) * others) - (given[i] as number));
  });
  return sum(lacking) > 0 ? lacking : pairs.map(({ need }) => (need === null ? 0 : 1));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
