/** Ids of the down-and-distance situations, in the order of the downs. */
export const SITUATION_IDS = [
  'first_ten',
  'first_long',
  'first_short',
  'first_goal',
  'second_short',
  'second_medium',
  'second_long',
  'third_short',
  'third_medium',
  'third_long',
  'fourth_short',
  'fourth_medium',
  'fourth_long',
] as const;
