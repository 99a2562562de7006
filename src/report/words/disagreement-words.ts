import type { Disagreement } from '../../pressure/score/disagreement.ts';

/**
 * Where open play data and common practice part ways, both sides said. Figures: professional games of 2019-23 and
 * 2022-23, license and sources as printed in "About the data".
 */
export const DISAGREEMENT_WORDS: Readonly<Record<Disagreement, string>> = {
  man_against_screens:
    'Coaches dislike man against screens; pro data disagrees: against five or six rushers a screen loses yards twice as often with one man deep behind man coverage as behind zone (21% of 570 against 10% of 1,055).',
  hot_against_screens: 'Coaches call hot very bad against screens; pro data has 40 of them and cannot say.',
  zero_feared:
    'Coaches fear zero above all; in pro data it breaks even with four rushers, with fewer losses than other pressures and costlier explosives.',
  four_under_quick:
    'The case for four-under is quick game and screens; pro data has it as the best five, but on 39 quick throws and 52 screens, and not in every era.',
  add_on_quick:
    'Coaches rate the add-on worst against quick game; in pro data a quick throw succeeds on 61% of 429 against three-under, 56% of 2,580 against four rushers and 45% of 69 against seven, many of those on a short field.',
  add_on_held_ball:
    'Coaches like the add-on against a held ball and max protection; in pro data seven rushers bring no more sacks than six (7.5% against 9.2%) and give up 3.8 more explosives per 100 snaps. That the seventh comes late, only when the back stays, is not charted there.',
  play_action:
    'Coaches call man-free weak against play action; in pro data play action loses its edge against every pressure, but part of that is linebackers drawn by the fake and counted as rushers.',
  takeaways:
    'Coaches expect pressure to bring takeaways; in pro data it brings losses (3 to 4 more per 100 snaps) and no more takeaways than four rushers.',
};
