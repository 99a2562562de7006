import { THIN_SNAPS } from '../../game/thin-snaps.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { type Html, html } from '../page/html.ts';
import type { Block } from '../view/block.ts';
import { knownForecasts } from '../view/known-forecasts.ts';
import { answerLabel } from '../words/label.ts';
import { percentRange } from '../words/percent.ts';
import { shareWords } from '../words/share-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/** How to read the page, with one count of this week worked through. */
export function howToRead(plan: WeekPlan): Block {
  return {
    kind: 'prose',
    html: html`${workedExample(plan)}<ul>${RULES.map((rule) => html`<li>${rule}</li>`)}</ul>\n`,
  };
}

const RULES = [
  'A thin line from 0 to 100% is every offense there could be. Each gray tick is an offense of the archive; the dot is theirs, the bar its range.',
  'A blank in the chart means not charted. It never counts as a no. “No snaps” is not 0%.',
  `Under ${THIN_SNAPS} snaps the mark is open and the line dashed: look at it, do not act on it alone.`,
  'The forecast is not the film share. A few snaps are pulled toward what they do elsewhere and toward what other offenses do.',
  'Points are small on purpose: kinds of pressure differ by tenths. “No difference” is a finding.',
];

function workedExample(plan: WeekPlan): Html {
  const entry = knownForecasts(plan, 'answer')
    .find((cell) => cell.situation === ALL_SITUATIONS)
    ?.classes.find((found) => found.film.count > 0);
  if (entry === undefined) return html``;
  const { film, name } = entry;
  return html`<p>An example. ${answerLabel(name)}: <b>${shareWords(film)}</b>. If they stay the same offense for years, their true rate lies between ${percentRange(film.low, film.high)} 95 times in 100. One game swings wider: that range is written “expect … of …”.</p>\n`;
}
