import type { Answer, Family } from '../../game/vocabulary.ts';
import type { OpenAnswer, OpenFamily } from './open-data-table.ts';

/**
 * What stands in for each family in open play data, where only the count of rushers and the coverage are charted: hot is
 * six rushers with three deep, peel six with man and one deep (the peel itself is not charted), the add-on seven or more
 * (that the seventh comes late is not charted). Nobody charts a spy.
 */
const FAMILY_PROXIES: Readonly<Record<Exclude<Family, 'peel_spy'>, OpenFamily>> = {
  base: 'base',
  three_under: 'three_under',
  four_under: 'four_under',
  man_free: 'man_free_five',
  hot: 'hot',
  zero: 'zero',
  peel: 'six_post',
  add_on: 'seven_plus',
};

/** What stands in for each answer: a deep shot is counted among the dropbacks there, movement among play action. */
const ANSWER_PROXIES: Readonly<Record<Exclude<Answer, 'run' | 'quarterback_run'>, OpenAnswer>> = {
  screen: 'screen',
  quick: 'quick',
  dropback: 'dropback',
  deep_shot: 'dropback',
  movement: 'play_action',
};

/** The open-data family that stands in for ours, or null: nobody charts a spy. */
export function openFamilyOf(family: Family): OpenFamily | null {
  return family === 'peel_spy' ? null : FAMILY_PROXIES[family];
}

/** The open-data answer that stands in for ours, or null: rushers and coverage are blank on every run. */
export function openAnswerOf(answer: Answer): OpenAnswer | null {
  return answer === 'run' || answer === 'quarterback_run' ? null : ANSWER_PROXIES[answer];
}
