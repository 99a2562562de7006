import type { ChainStrengths } from './chain.ts';
import type { Target } from './forecast-result.ts';

/** The constants of both chains of a target: before the look is known, and at the line of scrimmage. */
export interface TargetStrengths {
  readonly plan: ChainStrengths;
  readonly line: ChainStrengths;
}

const pool = Number.POSITIVE_INFINITY;

/**
 * Strengths of the two chains, shipped as constants because strengths fitted to one four-game sample forecast worse in
 * 27 or more of 32 offenses. `answer` to `motion`: chosen by mean log loss of the next game on open professional play
 * data of 2022 (play-by-play nflverse, CC BY 4.0; charting FTN Data and participation NFL NextGenStats via nflverse, CC
 * BY-SA 4.0), four games to the next, on half of the offenses; the other half agreed. The grid was 1, 2, 4 … 256, 1024
 * and complete pooling. On the same data the game-to-game term was set so that 95% count intervals of the next game
 * cover 95 to 98%, the offense-to-offense term so that 95% intervals cover the rest of the season 92 to 97%.
 * The cell-to-cell term was set on the same halves so that 95% intervals of a situation's share, with the game-to-game
 * term, cover the rest of the season (30 snaps or more): motion .87 and .88 on the two halves without it, .94 and .95
 * with it; run or pass with an archive .86 and .92 without it, .91 and .96 with it. Motion's archive root was 1024 until
 * it was seen that 256 forecasts the share of a whole game better on both halves (log loss .6532 and .6370 against .6554
 * and .6441) and a snap no worse; its count ranges then held .98 and .99 of whole games, and a game-to-game term of 22
 * for 18 brought them to .96 and .98.
 * Strengths of receivers and back spot (the last two of the line), and everything of the protection targets, which no
 * open data chart, are judgement: a staff's habit that changes little with down and distance.
 */
export const TARGET_STRENGTHS: Readonly<Record<Target, TargetStrengths>> = {
  answer: {
    plan: { own: [32, 16], archive: [1024, 1024, 128], gameToGame: 70, offenseToOffense: 64 },
    line: {
      own: [8, 64, 32, 64, 64],
      archive: [1024, 1024, 1024, 128, 256, 256],
      gameToGame: 70,
      offenseToOffense: 64,
    },
  },
  run_or_pass: {
    plan: { own: [8, 4], archive: [1024, 256, 32], gameToGame: 36, offenseToOffense: 32, cellToCell: 24 },
    line: { own: [1, 8, 16, 64, 64], archive: [1024, 256, 128, 64, 256, 256], gameToGame: 36, offenseToOffense: 32 },
  },
  screen: {
    plan: { own: [64, 32], archive: [1024, 64, 64], gameToGame: 160, offenseToOffense: 96 },
    line: {
      own: [128, 256, 32, 128, 128],
      archive: [1024, 1024, 128, 32, 256, 256],
      gameToGame: 160,
      offenseToOffense: 96,
    },
  },
  quick_release: {
    plan: { own: [64, 1024], archive: [256, 64, 1024], gameToGame: 50, offenseToOffense: 24 },
    line: { own: [8, 128, 64, 64, 64], archive: [1024, 128, 64, 1024, 256, 256], gameToGame: 50, offenseToOffense: 24 },
  },
  motion: {
    plan: { own: [pool, 16], archive: [256, 128, 256], gameToGame: 22, offenseToOffense: 16, cellToCell: 48 },
    line: {
      own: [32, pool, 32, 64, 64],
      archive: [1024, 256, 128, 128, 256, 256],
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

function judged(): TargetStrengths {
  return {
    plan: { own: [64, 64], archive: [256, 256, 256], gameToGame: 30, offenseToOffense: 32 },
    line: { own: [32, 64, 64, 64, 64], archive: [256, 256, 256, 256, 256, 256], gameToGame: 30, offenseToOffense: 32 },
  };
}
