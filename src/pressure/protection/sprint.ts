import type { Level, Role } from '../../game/call-library.ts';

/** How a man gets up to speed: v(t) = topSpeed (1 - exp(-t / timeConstant)). */
export interface SprintProfile {
  /** Yards a second. */
  readonly topSpeed: number;
  /** Seconds to 63% of top speed. */
  readonly timeConstant: number;
}

/**
 * Profiles of an average defensive back by level. College: fitted to 10 yards in 1.78 s and a peak of 9.16 yd/s
 * (Brechue, Mayhew and Piper 2010, J Strength Cond Res 24:1169). Pro: fitted to 10 yards in 1.55 s (from memory) and 40
 * yards in 4.57 s (published draft averages for safeties). High school: fitted to 10 yards in 1.85 s, an assumption; no
 * published split by position was seen.
 */
const PROFILES: Readonly<Record<Level, SprintProfile>> = {
  high_school: { topSpeed: 8.98, timeConstant: 0.828 },
  college: { topSpeed: 9.16, timeConstant: 0.762 },
  pro: { topSpeed: 10.1, timeConstant: 0.6 },
};

/** Top speed against a defensive back's; judgment. */
const GROUP_FACTOR: Readonly<Record<Role['group'], number>> = { line: 0.95, linebacker: 0.98, secondary: 1 };

/** Slow is fitted to a high-school safety from 8 yards in 2.59 s against the usual 2.46; fast is its mirror; judgment. */
const SPEED_FACTOR: Readonly<Record<Role['speed'], SprintProfile>> = {
  slow: { topSpeed: 0.98, timeConstant: 1.135 },
  average: { topSpeed: 1, timeConstant: 1 },
  fast: { topSpeed: 1 / 0.98, timeConstant: 1 / 1.135 },
};

/** The speed profile of a man of this level, group and speed against the usual man of his group. */
export function sprintProfile(level: Level, man: Pick<Role, 'group' | 'speed'>): SprintProfile {
  const base = PROFILES[level];
  const factor = SPEED_FACTOR[man.speed];
  return {
    topSpeed: base.topSpeed * GROUP_FACTOR[man.group] * factor.topSpeed,
    timeConstant: base.timeConstant * factor.timeConstant,
  };
}

/**
 * Yards covered after `seconds`.
 *
 * @param startSpeed - yards a second at the start, 0 for a standing start
 * @see Furusawa, Hill and Parkinson 1927, Proc R Soc B 102:29; Clark and Ryan 2022
 */
export function sprintYards(seconds: number, profile: SprintProfile, startSpeed = 0): number {
  const { topSpeed, timeConstant } = profile;
  const lost = (topSpeed - startSpeed) * timeConstant * (1 - Math.exp(-seconds / timeConstant));
  return topSpeed * seconds - lost;
}

/**
 * Seconds to cover `yards`; 0 for no distance.
 *
 * @param startSpeed - yards a second at the start, at least 0 and below top speed
 * @example sprintSeconds(15, { topSpeed: 9.16, timeConstant: 0.762 }) // 2.366
 */
export function sprintSeconds(yards: number, profile: SprintProfile, startSpeed = 0): number {
  if (yards <= 0) return 0;
  // Distance is convex in time, so Newton's steps from this late start come down on the answer without crossing it.
  let seconds = yards / profile.topSpeed + profile.timeConstant;
  for (let step = 0; step < 12; step += 1) {
    const change = (sprintYards(seconds, profile, startSpeed) - yards) / speedAt(seconds, profile, startSpeed);
    seconds -= change;
    if (Math.abs(change) < 1e-13) break;
  }
  return seconds;
}

function speedAt(seconds: number, { topSpeed, timeConstant }: SprintProfile, startSpeed: number): number {
  return topSpeed - (topSpeed - startSpeed) * Math.exp(-seconds / timeConstant);
}
