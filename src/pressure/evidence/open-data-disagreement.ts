import { ANSWERS, type Answer, type Family } from '../../game/vocabulary.ts';
import { OPEN_DIFFERENCES, OPEN_TABLE } from './open-data-table.ts';
import { percentWords } from './percent-words.ts';

/** Which families are scored and how often they answer so; decides which disagreements matter this week. */
export interface DisagreementInput {
  readonly families: readonly Family[];
  /** Expected answer shares over all snaps, in the order of the vocabulary. */
  readonly shares: Float64Array;
}

interface Disagreement {
  readonly families: readonly Family[];
  readonly answers: readonly Answer[];
  readonly words: string;
}

/** Share of their snaps below which a disagreement about an answer is left out. */
const LEAST_SHARE = 0.03;

/**
 * Where open play data and the trade's rules of thumb part ways on something that matters this week, both sides said.
 * The scores hold both, each at its weight; neither is declared right.
 */
export function disagreements({ families, shares }: DisagreementInput): string[] {
  return KNOWN.filter((entry) => {
    const shown = entry.answers.reduce((sum, answer) => sum + (shares[ANSWERS.indexOf(answer)] ?? 0), 0);
    return entry.families.some((family) => families.includes(family)) && shown >= LEAST_SHARE;
  }).map(({ words }) => words);
}

const screens = (family: keyof typeof OPEN_TABLE) => OPEN_TABLE[family].screen;
const points = (family: keyof typeof OPEN_DIFFERENCES) => {
  const { value, error } = OPEN_DIFFERENCES[family].points;
  return `${value > 0 ? '+' : ''}${value.toFixed(2)} points a snap for the offense, give or take ${error.toFixed(2)}`;
};

/** Success of a quick throw as charted, before any cell was pulled to the others. */
const QUICK_SUCCESS = { base: 0.555, three_under: 0.611, seven_plus: 0.449 } as const;

const successWords = (family: keyof typeof QUICK_SUCCESS) =>
  `${percentWords(QUICK_SUCCESS[family])} of ${Math.round(OPEN_TABLE[family].quick.snaps)}`;

/** Figures not in the table are from the same open data (screens by target route 2019-23; rushers counted by people). */
const KNOWN: readonly Disagreement[] = [
  {
    families: ['man_free', 'peel', 'peel_spy'],
    answers: ['screen'],
    words: `The trade marks man coverage down against screens; in open data a screen against five or six rushers loses yards twice as often when one man is deep behind man coverage as behind zone (21% of 570 against 10% of 1055).`,
  },
  {
    families: ['hot'],
    answers: ['screen'],
    words: `The trade calls hot very bad against screens; open data neither bear it out nor refute it: ${Math.round(screens('hot').snaps)} charted screens.`,
  },
  {
    families: ['zero'],
    answers: ['run', 'quarterback_run', 'screen', 'quick', 'dropback', 'deep_shot', 'movement'],
    words: `The trade fears zero above all; in open data it breaks even with four rushers (${points('zero')}) with fewer losses than other pressures and dearer explosives.`,
  },
  {
    families: ['four_under'],
    answers: ['quick', 'screen'],
    words: `The trade's case for four-under is quick game and screens; open data have it the best five (${points('four_under')}), but on ${Math.round(OPEN_TABLE.four_under.quick.snaps)} quick throws and ${Math.round(screens('four_under').snaps)} screens, and not in every era.`,
  },
  {
    families: ['three_under', 'add_on'],
    answers: ['quick'],
    words: `The trade has the add-on worst against quick game and three-under only one mark down; in open data a quick throw succeeds on ${successWords('three_under')} against three-under, ${successWords('base')} against four rushers and ${successWords('seven_plus')} against seven, many of those on a short field. So the scores may put three-under behind the add-on against a quick-game team.`,
  },
  {
    families: ['add_on'],
    answers: ['dropback', 'deep_shot'],
    words: `The trade calls the add-on very good against a held ball and max protection; in open data seven rushers bring no more sacks than six (7.5% against 9.2%) and cost explosives (${percentWords(OPEN_DIFFERENCES.seven_plus.explosive.value)} more of the snaps). That the seventh comes late, only when the back stays, is not charted there.`,
  },
  {
    families: ['man_free', 'three_under'],
    answers: ['movement'],
    words: `The trade has man-free weak against play action and zone sound; in open data play action loses its edge against every pressure, but some of that is linebackers drawn by the fake and counted as rushers, so a third of it is kept here.`,
  },
  {
    families: ['hot', 'zero', 'peel', 'peel_spy', 'add_on'],
    answers: ['quick', 'dropback'],
    words: `The trade expects pressure to bring takeaways; in open data it brings losses (3 to 4 more in a hundred) and no more takeaways than four rushers.`,
  },
];
