import type { Family } from '../../game/vocabulary.ts';

/** How the page names a family. */
export const FAMILY_WORDS: Readonly<Record<Family, string>> = {
  base: 'four-man base',
  three_under: 'three-under',
  four_under: 'four-under',
  man_free: 'man-free',
  hot: 'hot',
  zero: 'zero',
  peel: 'peel',
  peel_spy: 'peel with a spy',
  add_on: 'add-on',
};
