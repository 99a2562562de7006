import { ANSWERS, type Answer, isPass } from '../../game/answers.ts';
import type { Family } from '../../game/families.ts';
import { type ByAnswer, eachAnswer } from '../evidence/by-answer.ts';
import { edgeIn, LOSSES_PER_RUSHER_HOME, pointsPerLoss } from '../evidence/evidence-race.ts';
import type { PressureZone } from '../evidence/league-figures.ts';
import { betweenOffenses, leagueErrors, leaguePoints } from '../evidence/league-points.ts';
import { baseShares } from '../evidence/open-data.ts';
import { outcomeValues } from '../evidence/outcome-value.ts';
import { distanceOf } from '../evidence/snap-place.ts';
import type { PointsModel } from './points-model.ts';
import type { SituationAnswers } from './situation-answers.ts';

/** Where a family's points come from: the league, the race against this opponent, our own film. */
export const POINT_SOURCES = ['league', 'race', 'ownFilm'] as const;
/** One word of {@link POINT_SOURCES}. */
export type PointSource = (typeof POINT_SOURCES)[number];

/** Points saved a snap against the four-man base by one family in one situation and zone. */
export interface CellPoints {
  /** Against each answer, by source. */
  readonly saved: Readonly<Record<PointSource, ByAnswer>>;
  /**
   * Standard deviations over the snaps of the cell that all families share in their own measure: what pressure is worth
   * at all, what it is worth against this offense, our own shift, and the release against each pass. They cancel in
   * the difference of two families as far as both have them.
   */
  readonly common: readonly number[];
  /** Standard deviation that is the family's own. */
  readonly own: number;
}

/** A situation in one zone of the field. */
export interface CellPlace {
  readonly situation: SituationAnswers;
  readonly zone: PressureZone;
}

/** What a family saves in a cell, and how sure that is. The expectation is linear in the answer shares. */
export function cellPoints(model: PointsModel, family: Family, { situation, zone }: CellPlace): CellPoints {
  const place = { zone, distance: distanceOf(situation.id) };
  const race = racePoints(model, family, situation);
  const film = model.ownFilm.shift + model.ownFilm.family[family];
  const errors = leagueErrors(family);
  const passes = ANSWERS.reduce((sum, answer) => sum + (isPass(answer) ? situation.shares[answer] : 0), 0);
  const unlike = family === 'base' ? 0 : betweenOffenses(model.settings.level);
  const shift = family === 'base' ? 0 : model.ownFilm.shiftError;
  return {
    saved: {
      league: eachAnswer((answer) => leaguePoints(family, answer, place)),
      race,
      ownFilm: eachAnswer(() => (family === 'base' ? 0 : film)),
    },
    common: [passes * errors.pressure, passes * unlike, shift, ...releaseSpreads(model, family, situation)],
    own: Math.hypot(passes * errors.family, model.ownFilm.familyError[family]),
  };
}

/** Points a snap that one more loss is worth when they answer so on that down. */
export function lossWorth(answer: Answer, down: number): number {
  return pointsPerLoss(baseShares(answer), outcomeValues(answer, down));
}

function racePoints({ race }: PointsModel, family: Family, { id, down }: SituationAnswers): ByAnswer {
  const edges = edgeIn(race, id).families[family];
  return eachAnswer((answer) => LOSSES_PER_RUSHER_HOME * edges[answer] * lossWorth(answer, down));
}

function releaseSpreads({ race }: PointsModel, family: Family, { shares, down }: SituationAnswers): number[] {
  return ANSWERS.map(
    (answer) => shares[answer] * LOSSES_PER_RUSHER_HOME * race.spread[family][answer] * lossWorth(answer, down),
  );
}
