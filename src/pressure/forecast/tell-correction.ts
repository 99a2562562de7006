import { benjaminiHochberg } from '../../stats/adjust.ts';

/** Tests of one question on simple cells, or on the others. */
interface TestKind {
  readonly question: string;
  /** Whether the cells have one or two features. */
  readonly simple: boolean;
}

/** The tests of a kind that were looked at, by the smallest chance each could have had. */
export interface LookedTests extends TestKind {
  /** Part of the error the question is given beside the others, above 0. */
  readonly part: number;
  /** Natural logarithm of the chance that every snap of the cell is of the class, test by test. */
  readonly leastLogs: number[];
}

/** One test with its chance. */
export interface CountedTest extends TestKind {
  readonly leastLog: number;
  readonly p: number;
}

/**
 * Part of the error that cells of one or two features are given beforehand: they are what a player can watch for, and one
 * in eight of all cells. Judgment.
 */
const SIMPLE_PART = 0.8;
const SIMPLE_FEATURES = 2;

/** Whether a cell of so many features is a simple one. */
export function isSimple(features: number): boolean {
  return features <= SIMPLE_FEATURES;
}

/**
 * What the correction over everything looked at makes of some tests. Tests that could not pass whatever came on their
 * few snaps are not counted (that needs no look at what came). Of the rest every question gets its part of the error,
 * however many classes it has and on however many snaps it was charted, and in each question the cells of one or two features
 * share most of it among them, however many there are of three.
 *
 * @param tests - tests with a chance below 1
 * @param looked - all tests looked at, these among them, each kind once
 * @param rate - expected share of false ones among those that pass
 * @returns adjusted chances in the order of `tests`
 * @see Tarone 1990, Biometrics 46:515 and Gilbert 2005, Applied Statistics 54:143, tests that cannot reach the level;
 * Genovese, Roeder and Wasserman 2006, Biometrika 93:509, weights set beforehand
 */
export function correctTells(tests: readonly CountedTest[], looked: readonly LookedTests[], rate: number): number[] {
  const logs = Float64Array.from(looked.flatMap(({ leastLogs }) => leastLogs)).sort();
  const level = Math.log(rate) - Math.log(reachable(logs, rate));
  const counted = looked
    .map((kind) => ({ ...kind, size: kind.leastLogs.filter((log) => log <= level).length }))
    .filter(({ size }) => size > 0);
  const weights = weightsOf(counted);
  const scaled = tests.map((test) => {
    const weight = test.leastLog > level ? 0 : (weights.get(nameOf(test)) ?? 0);
    return weight === 0 ? 1 : Math.min(1, test.p / weight);
  });
  return benjaminiHochberg(scaled, Math.max(totalOf(counted), tests.length));
}

interface CountedKind extends LookedTests {
  /** Tests of the kind that could pass, at least one. */
  readonly size: number;
}

function totalOf(counted: readonly CountedKind[]): number {
  return counted.reduce((sum, { size }) => sum + size, 0);
}

function nameOf({ question, simple }: TestKind): string {
  return simple ? `${question} simple` : question;
}

/** The weight of every kind of tests; they average 1 over the counted tests, where no kind is empty. */
function weightsOf(counted: readonly CountedKind[]): ReadonlyMap<string, number> {
  const parts = new Map(counted.map(({ question, part }) => [question, part]));
  const whole = [...parts.values()].reduce((sum, part) => sum + part, 0);
  const total = totalOf(counted);
  return new Map(
    counted.map((kind) => {
      const part = kind.part * (kind.simple ? SIMPLE_PART : 1 - SIMPLE_PART);
      return [nameOf(kind), ((part / whole) * total) / kind.size];
    }),
  );
}

/** The smallest K for which no more than K tests could come below rate / K. */
function reachable(logs: Float64Array, rate: number): number {
  let [low, high] = [1, Math.max(1, logs.length)];
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
