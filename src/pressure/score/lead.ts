import type { Family } from '../../game/families.ts';
import { normalCdf, normalWidth } from '../../stats/normal.ts';
import type { Spread } from '../../stats/spread.ts';
import { weighted } from '../evidence/by-answer.ts';
import { answerVariance, type PointsMix, savedAgainst } from './points-mix.ts';

/** Level of every interval of points. */
export const SCORE_LEVEL = 0.8;

/** What a family saves more than another over a mix of snaps: points per ten snaps, with the standard error. */
export interface Lead {
  readonly mean: number;
  readonly error: number;
}

/** The lead of one family over another; what is not known of both alike cancels. */
export function leadOf(mix: PointsMix, family: Family, against: Family): Lead {
  const [one, other] = [mix.families[family], mix.families[against]];
  const shared = one.common.reduce((sum, error, i) => sum + (error - (other.common[i] as number)) ** 2, 0);
  const own = family === against ? 0 : one.own ** 2 + other.own ** 2;
  return {
    mean: pointsOf(mix, family) - pointsOf(mix, against),
    error: Math.sqrt(shared + own + answerVariance(mix, family, against)),
  };
}

/** Expected points per ten snaps of a family against the base. */
export function pointsOf(mix: PointsMix, family: Family): number {
  return weighted(mix.shares, savedAgainst(mix.families[family]));
}

/** The chance that a lead is above zero; one half where nothing separates the two. */
export function chanceAhead({ mean, error }: Lead): number {
  if (error === 0) return mean === 0 ? 0.5 : Number(mean > 0);
  return normalCdf(mean / error);
}

/** A lead with its central interval. */
export function spreadOf({ mean, error }: Lead): Spread {
  const half = WIDTH * error;
  return { mean, low: mean - half, high: mean + half };
}

const WIDTH = normalWidth(SCORE_LEVEL);
