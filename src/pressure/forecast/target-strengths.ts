import type { ChainStrengths } from './chain-data.ts';
import type { Target } from './forecast-result.ts';

/** The constants of both chains of a target: before the look is known, and at the line of scrimmage. */
export interface TargetStrengths {
  readonly plan: ChainStrengths;
  readonly line: ChainStrengths;
}

const pool = Number.POSITIVE_INFINITY;

/**
 * Constants of the two chains. `own`, where no other offense's film is at hand: chosen by mean log loss of the next game
 * on open professional play data of 2022 (play-by-play nflverse, CC BY 4.0; charting FTN Data and participation NFL
 * NextGenStats via nflverse, CC BY-SA 4.0), four games to the next, on half of the offenses; the other half agreed. The
 * grid was 1, 2, 4 ... 256, 1024 and complete pooling. The first of each list is only the middle of a belief that the
 * film itself moves. What other offenses are worth is learned and is in no list.
 * On the same data the game-to-game term was set so that 95% count intervals of the next game cover 95 to 98%, the
 * offense-to-offense term so that 95% intervals cover the rest of the season 92 to 97%, and the cell-to-cell term so that
 * intervals of a situation's share, with the game-to-game term, cover the rest of the season (30 snaps or more) .91 to .96.
 * Strengths of receivers and back spot (the last two of the line), and everything of the protection targets, which no
 * open data chart, are judgment: a staff's habit that changes little with down and distance.
 */
export const TARGET_STRENGTHS: Readonly<Record<Target, TargetStrengths>> = {
  answer: {
    plan: { own: [32, 16], gameToGame: 70, offenseToOffense: 64 },
    line: {
      own: [8, 64, 32, 64, 64],

      gameToGame: 70,
      offenseToOffense: 64,
    },
  },
  run_or_pass: {
    plan: { own: [8, 4], gameToGame: 36, offenseToOffense: 32, cellToCell: 24 },
    line: { own: [1, 8, 16, 64, 64], gameToGame: 36, offenseToOffense: 32 },
  },
  screen: {
    plan: { own: [64, 32], gameToGame: 160, offenseToOffense: 96 },
    line: {
      own: [128, 256, 32, 128, 128],

      gameToGame: 160,
      offenseToOffense: 96,
    },
  },
  quick_release: {
    plan: { own: [64, 1024], gameToGame: 50, offenseToOffense: 24 },
    line: { own: [8, 128, 64, 64, 64], gameToGame: 50, offenseToOffense: 24 },
  },
  motion: {
    plan: { own: [128, 16], gameToGame: 22, offenseToOffense: 16, cellToCell: 48 },
    line: {
      own: [32, pool, 32, 64, 64],

      gameToGame: 18,
      offenseToOffense: 16,
    },
  },
  protectors: judged(),
  slide_to_back: judged(),
  slide_to_field: judged(),
  slide_to_strength: judged(),
  back_job: judged(),
};

/** The constants of the line's chain where only some of its levels were charted; `places` are theirs among all. */
export function lineStrengths(target: Target, places: readonly number[]): ChainStrengths {
  const { line } = TARGET_STRENGTHS[target];
  const [first = pool, ...deeper] = places.map((place) => line.own[place] ?? pool);
  return { ...line, own: [Math.min(first, MOST_FIRST), ...deeper] };
}

/** The first strength is the middle of a belief, which a level that is else pooled needs too: the most of the grid. */
const MOST_FIRST = 1024;

function judged(): TargetStrengths {
  return {
    plan: { own: [64, 64], gameToGame: 30, offenseToOffense: 32 },
    line: { own: [32, 64, 64, 64, 64], gameToGame: 30, offenseToOffense: 32 },
  };
}
