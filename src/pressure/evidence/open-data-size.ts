import type { Level } from '../../game/call-library.ts';
import { OPEN_ANSWERS, OPEN_FAMILIES, OPEN_TABLE, type OpenAnswer, type OpenFamily } from './open-data-table.ts';

/** Concentration of outcome shares between teams, offense and defense joined; fitted on 128 to 160 team-seasons. */
export const TEAM_CONCENTRATION = 282.6;

/** Concentration between professional play and a level; judgement: pro figures say nothing of high-school blocking. */
export const LEVEL_CONCENTRATION: Readonly<Record<Level, number>> = {
  pro: Number.POSITIVE_INFINITY,
  college: 100,
  high_school: 40,
};

/** A cell of the open-data table with how far it may be taken at a level. */
export interface SizedCell {
  readonly family: OpenFamily;
  readonly answer: OpenAnswer;
  /** 0 to 1. */
  readonly quality: number;
  readonly level: Level;
}

/**
 * How many of our own snaps an open-data cell is worth: quality / (1 / n + 1 / between teams + 1 / between levels). A
 * pressure cell was made from its family's and its answer's margin, so its n is their harmonic sum; the base has its own.
 *
 * @returns snaps; 14 to 24 for a pressure in high school
 * @example openDataSize({ family: 'three_under', answer: 'screen', quality: 0.7, level: 'high_school' }) // 23.4
 */
export function openDataSize({ family, answer, quality, level }: SizedCell): number {
  return quality / (1 / cellSnaps(family, answer) + 1 / TEAM_CONCENTRATION + 1 / LEVEL_CONCENTRATION[level]);
}

/**
 * The worth of a well measured cell of middling quality at a level, in snaps: the yardstick that says how much of a
 * typical cell the trade's judgement makes up.
 */
export function typicalOpenDataSize(level: Level): number {
  return MIDDLING_QUALITY / (1 / TEAM_CONCENTRATION + 1 / LEVEL_CONCENTRATION[level]);
}

const MIDDLING_QUALITY = 0.6; // between the 0.7 and 0.5 of the pressure families

function cellSnaps(family: OpenFamily, answer: OpenAnswer): number {
  if (family === 'base') return OPEN_TABLE.base[answer].snaps;
  return 1 / (1 / familySnaps(family) + 1 / answerSnaps(answer));
}

function familySnaps(family: OpenFamily): number {
  return OPEN_ANSWERS.reduce((sum, answer) => sum + OPEN_TABLE[family][answer].snaps, 0);
}

function answerSnaps(answer: OpenAnswer): number {
  const pressures = OPEN_FAMILIES.filter((family) => family !== 'base');
  return pressures.reduce((sum, family) => sum + OPEN_TABLE[family][answer].snaps, 0);
}
