import { ANSWERS } from '../../game/answers.ts';
import type { Call } from '../../game/call-library.ts';
import { type ByAnswer, eachAnswer, weighted } from '../evidence/by-answer.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME } from '../evidence/evidence-race.ts';
import { lossWorth } from './cell-points.ts';
import { explosivesLost, explosivesOf } from './family-points.ts';
import { leadOf, spreadOf } from './lead.ts';
import { type PointsMix, SNAPS_PER_SCORE, savedAgainst } from './points-mix.ts';
import type { PointsModel } from './points-model.ts';
import type { CallScore } from './score-result.ts';

/**
 * A call's points over a mix of snaps: its family's, moved by how much more or less often its own rushers are home than
 * those of the family's other calls. Which side a call is sent from acts through that race: it was run from its side
 * against their slide. Calls that race alike score alike.
 */
export function callScore(mix: PointsMix, call: Call, model: PointsModel): CallScore {
  const { name, family } = call;
  const edges = edgeIn(model.race, mix.id).calls.get(name) ?? NO_EDGE;
  const shifts = raceShifts(mix, edges);
  const saved = savedAgainst(mix.families[family]);
  const shift = weighted(mix.shares, shifts);
  const { mean, error } = leadOf(mix, family, 'base');
  const lost =
    100 * ANSWERS.reduce((sum, answer) => sum + mix.shares[answer] * explosivesLost(answer, edges[answer]), 0);
  const explosives = explosivesOf(mix, family, model);
  return {
    call: name,
    family,
    situation: mix.id,
    points: spreadOf({ mean: mean + shift, error }),
    explosives: {
      mean: explosives.mean + lost,
      low: Math.max(0, explosives.low + lost),
      high: explosives.high + lost,
    },
    byAnswer: ANSWERS.map((answer) => ({ answer, points: saved[answer] + shifts[answer] })),
  };
}

const NO_EDGE = eachAnswer(() => 0);

/** Points per ten snaps that a call's own race adds against each answer; over several situations, where it happens. */
function raceShifts({ parts, shares }: PointsMix, edges: ByAnswer): ByAnswer {
  return eachAnswer((answer) => {
    const worth = parts.reduce((sum, { weight, situation }) => {
      const happens = shares[answer] === 0 ? 1 : situation.shares[answer] / shares[answer];
      return sum + weight * happens * lossWorth(answer, situation.down);
    }, 0);
    return SNAPS_PER_SCORE * LOSSES_PER_RUSHER_HOME * edges[answer] * worth;
  });
}
