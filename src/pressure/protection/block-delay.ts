import { normalCdf, normalQuantile } from '../../stats/normal.ts';

/**
 * How long a block holds a rusher beyond his free arrival: log-normal, so that a few men win at once and many never in
 * time. Fitted to how often four rushers pressured the passer by release time in open play data of 2022-23
 * (professional): 1.4% of straight throws within 1.5 s to 65% beyond 4 s; remainder 3 points (root mean square).
 *
 * Open play data: Play-by-play: nflverse (CC BY 4.0). Charting: FTN Data via nflverse (CC BY-SA 4.0). Participation: NFL
 * NextGenStats via nflverse (CC BY-SA 4.0).
 */
export const BLOCK_DELAY = { mu: 2.3, sigma: 1.68 } as const;

/** A second blocker doubles the time; judgment. */
const DOUBLE_TEAM = 2;

/** A neighbor or a crossing back costs 0.3-0.5 s; middle of the range, with spread; judgment. */
export const LATE_BLOCK = { delay: 0.4, spread: 0.2 } as const;

/** Spread of a free man's arrival around the computed time, in seconds: reaction, path, footing; judgment. */
export const FREE_SPREAD = 0.15;

/** What a rusher meets. */
export type Fate = 'free' | 'late' | 'blocked' | 'doubled';

/**
 * Probability that a rusher is home by `seconds` after the snap.
 *
 * @param freeArrival - seconds at which he would be home if nobody blocked him
 */
export function homeBy(seconds: number, fate: Fate, freeArrival: number): number {
  switch (fate) {
    case 'free':
      return normalCdf((seconds - freeArrival) / FREE_SPREAD);
    case 'late':
      return normalCdf((seconds - freeArrival - LATE_BLOCK.delay) / LATE_BLOCK.spread);
    case 'blocked':
    case 'doubled':
      return blockBeatenBy(seconds - freeArrival, fate);
    default:
      return fate satisfies never;
  }
}

/** Seconds beyond his free arrival by which one in four men in this state has beaten the block. */
export function blockedQuarter(fate: 'blocked' | 'doubled'): number {
  return Math.exp(muOf(fate) + BLOCK_DELAY.sigma * normalQuantile(0.25));
}

function blockBeatenBy(delay: number, fate: 'blocked' | 'doubled'): number {
  return delay <= 0 ? 0 : normalCdf((Math.log(delay) - muOf(fate)) / BLOCK_DELAY.sigma);
}

function muOf(fate: 'blocked' | 'doubled'): number {
  return BLOCK_DELAY.mu + (fate === 'doubled' ? Math.log(DOUBLE_TEAM) : 0);
}
