import type { ReplayedTell } from './tell-replay.ts';

/** What became of the tells of many games. Shares are over the snaps on which a tell could be seen again. */
export interface TellRecord {
  readonly games: number;
  /** Games before which a tell was found. */
  readonly withTells: number;
  readonly tells: number;
  /** Tells that could not be seen once in the game to come. */
  readonly neverSeen: number;
  /** Tells with three such snaps or more, and those that stayed on their side of what was expected; a tie is half. */
  readonly judged: number;
  readonly held: number;
  /** Snaps on which a tell could be seen. */
  readonly snaps: number;
  /** What the tells said, what was to be planned with, what was expected when they were found; null without a snap. */
  readonly said: number | null;
  readonly planWith: number | null;
  readonly expectedThen: number | null;
  /** What came, and what the forecast expected of those very snaps. */
  readonly came: number | null;
  readonly expected: number | null;
  /** Share of the excess, as said and as planned with, that came again; null where there was none. */
  readonly keptOfSaid: number | null;
  readonly keptOfPlan: number | null;
}

/** Fewer snaps in one game say nothing about a side. */
const LEAST_JUDGED = 3;

/**
 * Adds up replayed tells.
 *
 * @param games - how many games tells were looked for before
 */
export function tellRecord(tells: readonly ReplayedTell[], games: number): TellRecord {
  const seen = tells.filter(({ trials }) => trials > 0);
  const judged = tells.filter(({ trials }) => trials >= LEAST_JUDGED);
  const snaps = sum(seen.map(({ trials }) => trials));
  const over = (of: (tell: ReplayedTell) => number) => (snaps === 0 ? null : sum(seen.map(of)) / snaps);
  const said = over(({ tell, trials }) => (trials * tell.film.count) / tell.film.trials);
  const planWith = over(({ tell, trials }) => trials * tell.planWith);
  const expectedThen = over(({ tell, trials }) => trials * tell.expected);
  const [came, expected] = [over(({ count }) => count), over(({ due }) => due)];
  return {
    games,
    withTells: new Set(tells.map(({ game }) => game)).size,
    tells: tells.length,
    neverSeen: tells.length - seen.length,
    judged: judged.length,
    held: sum(judged.map(({ count, due }) => (count > due ? 1 : count === due ? 0.5 : 0))),
    snaps,
    said,
    planWith,
    expectedThen,
    came,
    expected,
    keptOfSaid: kept({ came, expected, charted: said, expectedThen }),
    keptOfPlan: kept({ came, expected, charted: planWith, expectedThen }),
  };
}

interface Excess {
  readonly came: number | null;
  readonly expected: number | null;
  readonly charted: number | null;
  readonly expectedThen: number | null;
}

function kept({ came, expected, charted, expectedThen }: Excess): number | null {
  if (came === null || expected === null || charted === null || expectedThen === null) return null;
  return charted === expectedThen ? null : (came - expected) / (charted - expectedThen);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
