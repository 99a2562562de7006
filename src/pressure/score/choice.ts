import type { Family } from '../../game/families.ts';
import { weighted } from '../evidence/by-answer.ts';
import { POINT_SOURCES, type PointSource } from './cell-points.ts';
import { chanceAhead, leadOf, pointsOf } from './lead.ts';
import { type PointsMix, SNAPS_PER_SCORE } from './points-mix.ts';
import type { FamilyChoice } from './score-result.ts';

/** A family is ruled out when the best one beats it in at least this share of cases. */
export const RULED_OUT_CHANCE = 0.8;

/**
 * Which of some families points tell apart over a mix of snaps. The best by the mean leads; a family behind it by more
 * than chance is ruled out, with what sets it back most; all others no evidence tells apart.
 */
export function choiceOf(mix: PointsMix, families: readonly Family[]): FamilyChoice[] {
  const best = families.reduce((leader, family) => (pointsOf(mix, family) > pointsOf(mix, leader) ? family : leader));
  return families.map((family) => {
    const lead = leadOf(mix, best, family);
    const behind = chanceAhead(lead);
    const out = family !== best && lead.mean > 0 && behind >= RULED_OUT_CHANCE;
    return {
      family,
      regret: (mix.expectedSnaps * Math.max(0, lead.mean)) / SNAPS_PER_SCORE,
      behindChance: family === best ? 0 : behind,
      ruledOutBy: out ? whatSetsBack(mix, best, family) : null,
    };
  });
}

/** The source that gives the better family most of its lead. */
function whatSetsBack(mix: PointsMix, best: Family, family: Family): PointSource {
  const lead = (source: PointSource) =>
    weighted(mix.shares, mix.families[best].saved[source]) - weighted(mix.shares, mix.families[family].saved[source]);
  return POINT_SOURCES.reduce((most, source) => (lead(source) > lead(most) ? source : most));
}
