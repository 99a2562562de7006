import { benjaminiHochberg } from '../../stats/adjust.ts';

/** A test that was looked at: what it asks of how many features, and the smallest chance it could have had. */
export interface LookedTest {
  readonly question: string;
  /** Part of the error the question is given beside the others, above 0. */
  readonly part: number;
  readonly features: number;
  /** Natural logarithm of the chance that every snap of the cell is of the class. */
  readonly leastLog: number;
}

/** A test with its chance. */
export interface CountedTest extends LookedTest {
  readonly p: number;
}

/**
 * Part of the error that cells of one or two features are given beforehand: they are what a player can watch for, and one
 * in eight of all cells. Judgment.
 */
const SIMPLE_PART = 0.8;
const SIMPLE_FEATURES = 2;

/**
 * What the correction over everything looked at makes of some tests. Tests that could not pass whatever came on their
 * few snaps are not counted (that needs no look at what came). Of the rest every question gets its part of the error,
 * however many classes it has and on however many snaps it was charted, and in each question the cells of one or two features
 * share most of it among them, however many there are of three.
 *
 * @param tests - tests whose chance is below 1
 * @param looked - all tests looked at, these among them
 * @param rate - expected share of false ones among those that pass
 * @returns adjusted chances in the order of `tests`
 * @see Tarone 1990, Biometrics 46:515 and Gilbert 2005, Applied Statistics 54:143, tests that cannot reach the level;
 * Genovese, Roeder and Wasserman 2006, Biometrika 93:509, weights set beforehand
 */
export function correctTells(tests: readonly CountedTest[], looked: readonly LookedTest[], rate: number): number[] {
  const level = Math.log(rate) - Math.log(reachable(looked, rate));
  const counted = looked.filter(({ leastLog }) => leastLog <= level);
  const weights = weightsOf(counted);
  const scaled = tests.map((test) => {
    const weight = test.leastLog > level ? 0 : (weights.get(groupOf(test)) ?? 0);
    return weight === 0 ? 1 : Math.min(1, test.p / weight);
  });
  return benjaminiHochberg(scaled, Math.max(counted.length, tests.length));
}

function groupOf({ question, features }: LookedTest): string {
  return features <= SIMPLE_FEATURES ? `${question} simple` : question;
}

/** The weight of every group of tests; they average 1 over the counted tests, where no group is empty. */
function weightsOf(counted: readonly LookedTest[]): ReadonlyMap<string, number> {
  const groups = new Map<string, { readonly part: number; size: number }>();
  const parts = new Map<string, number>();
  for (const test of counted) {
    const group = groups.get(groupOf(test)) ?? { part: test.part * inQuestion(test), size: 0 };
    group.size++;
    groups.set(groupOf(test), group);
    parts.set(test.question, test.part);
  }
  const whole = [...parts.values()].reduce((sum, part) => sum + part, 0);
  return new Map([...groups].map(([name, { part, size }]) => [name, ((part / whole) * counted.length) / size]));
}

function inQuestion({ features }: LookedTest): number {
  return features <= SIMPLE_FEATURES ? SIMPLE_PART : 1 - SIMPLE_PART;
}

/** The smallest K for which no more than K tests could come below rate / K. */
function reachable(looked: readonly LookedTest[], rate: number): number {
  const logs = Float64Array.from(looked, ({ leastLog }) => leastLog).sort();
  let [low, high] = [1, Math.max(1, looked.length)];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (countBelow(logs, Math.log(rate / middle)) <= middle) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Entries of a sorted list that are at most `limit`. */
function countBelow(sorted: Float64Array, limit: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((sorted[middle] as number) <= limit) low = middle + 1;
    else high = middle;
  }
  return low;
}
