import { groupSpread, howFarOut, spreadMean } from '../../stats/group-spread.ts';
import { gameEffect } from './game-effect.ts';

/** How often something happened in one game or with one offense. */
export interface Counted {
  readonly count: number;
  readonly trials: number;
}

/** The same share with one offense of the archive. */
export interface OffenseShare extends Counted {
  readonly offense: string;
}

/** The same share across the archive's offenses, and how far out this opponent is. */
export interface AgainstOthers {
  /** One a tick: every offense of the archive on which it was charted, lowest share first. */
  readonly offenses: readonly OffenseShare[];
  /** What is usual: the mean share of the offenses, 0 to 1, their counts weighed by how much offenses differ. */
  readonly usual: number;
  /** Offenses of the archive with a lower share than the opponent's, of all. */
  readonly below: number;
  /**
   * Chance of a share at least this far from the usual, both sides, if their long-run share were the usual one; their
   * snaps clustered by game, the usual known only as well as the archive tells it. Not corrected for what else was looked
   * at.
   */
  readonly p: number;
  /** Chance that one more offense like the archive's shows a share this far out: how unusual they are among their kind. */
  readonly rarity: number;
}

/**
 * What offenses differ by before the archive is seen, as snaps one offense is worth as evidence of another: median 32,
 * 95% from 3 to 330. Between run shares of college offenses (SD .09) it is about 30; between professional ones about
 * 100.
 */
const OFFENSE_TO_OFFENSE = { median: 32, spread: 1.2 };

/** An offense with fewer charted snaps is not a tick: its share would be noise. Common practice, no source. */
const LEAST_TRIALS = 5;

/**
 * The opponent's share against the archive's offenses.
 *
 * @param own - the opponent's games, and what was asked of their snaps
 * @param offenses - one count an offense of the archive
 * @returns null when the opponent or every other offense has too few charted snaps
 */
export function againstOthers(
  { games: own, question }: { readonly games: readonly Counted[]; readonly question: string },
  offenses: readonly OffenseShare[],
): AgainstOthers | null {
  const others = offenses.filter(({ trials }) => trials >= LEAST_TRIALS).sort((a, b) => shareOf(a) - shareOf(b));
  const total = sumOf(own);
  if (others.length === 0 || total.trials < LEAST_TRIALS) return null;
  const spread = groupSpread(
    others.map(({ count, trials }) => ({ successes: count, trials })),
    OFFENSE_TO_OFFENSE,
  );
  const within = gameEffect(
    own.map(({ trials }) => trials),
    question,
  );
  const { fromMean, oneMoreGroup } = howFarOut(spread, { successes: total.count, trials: total.trials, within });
  return {
    offenses: others,
    usual: spreadMean(spread),
    below: others.filter((other) => shareOf(other) < shareOf(total)).length,
    p: fromMean,
    rarity: oneMoreGroup,
  };
}

/** The counts of several games as one. */
export function sumOf(counts: readonly Counted[]): Counted {
  return counts.reduce((sum, { count, trials }) => ({ count: sum.count + count, trials: sum.trials + trials }), {
    count: 0,
    trials: 0,
  });
}

function shareOf({ count, trials }: Counted): number {
  return trials === 0 ? 0 : count / trials;
}
