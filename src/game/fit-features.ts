import { ANSWERS } from './answers.ts';
import { BACK_ACTIONS, MOTIONS, OPTION_TAGS, TARGET_ZONES, TEMPOS, YES_NO } from './vocabulary.ts';

/**
 * What a rule may ask of a snap, and the words each may be. `ball` is held when it is not out before a late rusher gets
 * home; `routes` and `bunch` are read off the staff's own names for plays and formations.
 */
export const FIT_FEATURES = {
  answer: ANSWERS,
  back: BACK_ACTIONS,
  ball: ['held', 'out'],
  protectors: ['five', 'six', 'seven_or_more'],
  thrown_to: TARGET_ZONES,
  scramble: YES_NO,
  routes: ['crossers', 'picks', 'other'],
  receivers: ['balanced', 'trips', 'empty', 'other'],
  bunch: YES_NO,
  backs: ['two_or_more', 'fewer'],
  tight_ends: ['two_or_more', 'fewer'],
  motion: MOTIONS,
  tempo: TEMPOS,
  checked: YES_NO,
  option_tag: OPTION_TAGS,
} as const;
/** A name of {@link FIT_FEATURES}. */
export type FitFeature = keyof typeof FIT_FEATURES;
