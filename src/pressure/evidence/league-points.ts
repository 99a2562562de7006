import type { Answer } from '../../game/answers.ts';
import { isPass } from '../../game/answers.ts';
import type { Level } from '../../game/call-library.ts';
import type { Family } from '../../game/families.ts';
import { familyFacts } from '../../game/families.ts';
import {
  ANSWER_FIGURES,
  BETWEEN_OFFENSES,
  DISTANCE_FIGURES,
  type Distance,
  INSIDE_SHARE,
  type PressureZone,
  SCREEN_FIGURES,
  ZONE_CONTRASTS,
  ZONE_KEPT,
} from './league-figures.ts';
import { type Measured, OPEN_DIFFERENCES } from './open-data-table.ts';
import { pooledEffects, shrunkEffect } from './open-data-trust.ts';

/** Where a snap is played, as far as it changes what a pressure is worth. */
export interface SnapPlace {
  readonly zone: PressureZone;
  readonly distance: Distance;
}

/**
 * Points a pressure saves per snap against the four-man base when the offense answers so, as the league has it: what all
 * pressures are worth, moved by field zone, down and distance and answer, and by the family as far as families differ by
 * more than chance. 0 on runs, where nobody charts who rushed, and for the base itself.
 */
export function leaguePoints(family: Family, answer: Answer, { zone, distance }: SnapPlace): number {
  if (family === 'base' || !isPass(answer)) return 0;
  const perTen = familyValue(family) + zoneShift(zone) + DISTANCE_SHIFTS[distance] + answerShift(family, answer);
  return perTen / DROPBACKS;
}

/** Standard error of what all pressures are worth, and of what one family adds, in points per pass snap. */
export function leagueErrors(family: Family): { readonly pressure: number; readonly family: number } {
  if (family === 'base') return { pressure: 0, family: 0 };
  const figure = familyFigure(family);
  const own = figure ? shrunkEffect(figure, FAMILIES_POOLED).error : Math.sqrt(FAMILIES_POOLED.between);
  return { pressure: FAMILIES_POOLED.error / DROPBACKS, family: own / DROPBACKS };
}

/** Standard deviation between offenses of what pressure is worth, in points a pass snap, at a level of play. */
export function betweenOffenses(level: Level): number {
  return (level === 'pro' ? BETWEEN_OFFENSES.measured : BETWEEN_OFFENSES.upper) / DROPBACKS;
}

/** The figures are per ten dropbacks. */
const DROPBACKS = 10;

/** The families' matched differences as points saved per ten dropbacks; undefined where nothing stands for a family. */
function familyFigure(family: Family): Measured | undefined {
  const proxy = familyFacts(family).openData;
  if (proxy === null || proxy === 'base') return undefined;
  const { value, error } = OPEN_DIFFERENCES[proxy].points;
  return { value: -DROPBACKS * value, error: DROPBACKS * error };
}

const FAMILIES_POOLED = pooledEffects(
  Object.values(OPEN_DIFFERENCES).map(({ points }) => ({
    value: -DROPBACKS * points.value,
    error: DROPBACKS * points.error,
  })),
);

function familyValue(family: Family): number {
  const figure = familyFigure(family);
  return figure ? shrunkEffect(figure, FAMILIES_POOLED).value : FAMILIES_POOLED.mean;
}

/** How far a zone is from all zones together; the goal line was not measured apart from the red zone. */
function zoneShift(zone: PressureZone): number {
  const contrast = ZONE_KEPT * pooledEffects(ZONE_CONTRASTS).mean;
  return zone === 'open_field' ? -INSIDE_SHARE * contrast : (1 - INSIDE_SHARE) * contrast;
}

/** How far each down and distance is from all of them, as far as they differ by more than chance. */
const DISTANCE_SHIFTS = shiftsOf(DISTANCE_FIGURES);
const ANSWER_SHIFTS = shiftsOf(ANSWER_FIGURES);
const SCREEN_SHIFTS = shiftsOf(SCREEN_FIGURES);

function shiftsOf<Key extends string>(figures: Readonly<Record<Key, Measured>>): Readonly<Record<Key, number>> {
  const list = Object.entries(figures) as [Key, Measured][];
  const pooled = pooledEffects(list.map(([, figure]) => figure));
  return Object.fromEntries(
    list.map(([key, figure]) => [key, shrunkEffect(figure, pooled).value - pooled.mean]),
  ) as Record<Key, number>;
}

/** A movement pass is half a play action: many are, and that is all there is to go by. Judgment. */
const MOVEMENT_IS_PLAY_ACTION = 0.5;

function answerShift(family: Family, answer: Answer): number {
  if (answer === 'screen') return ANSWER_SHIFTS.screen + SCREEN_SHIFTS[familyFacts(family).behind];
  if (answer !== 'movement') return ANSWER_SHIFTS.straight;
  const { play_action: faked, straight } = ANSWER_SHIFTS;
  return MOVEMENT_IS_PLAY_ACTION * faked + (1 - MOVEMENT_IS_PLAY_ACTION) * straight;
}
