import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Share } from '../../stats/share.ts';
import { html } from '../page/html.ts';
import type { Chapter } from '../view/block.ts';
import { knownForecasts } from '../view/known-forecasts.ts';
import { answerLabel } from '../words/label.ts';
import { percent, percentRange } from '../words/percent.ts';
import { shareWords, THIN_SNAPS } from '../words/share-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';

/** How to read the page, with one interval of this very week worked through. */
export function howToReadChapter(plan: WeekPlan): Chapter {
  return {
    id: 'how-to-read',
    title: 'How to read this',
    short: 'Reading it',
    blocks: [
      { kind: 'prose', html: html`${workedExample(plan)}<ul>${RULES.map((rule) => html`<li>${rule}</li>`)}</ul>\n` },
    ],
  };
}

const RULES = [
  `A blank in the chart is "not charted". It is never counted as a no. "No snaps" means there was nothing to count, which is not 0%.`,
  `Thin means fewer than ${THIN_SNAPS} snaps: shown, marked with an open dot and a dashed line, and not to be acted on alone.`,
  'Two lines that overlap may still differ, and two that do not are not proof. Where a comparison matters the page gives the chance itself.',
  'The forecast is not the film share: a few snaps are pulled toward what the offense does elsewhere and what other offenses do. "Mostly from" says toward what.',
  'Points saved per ten snaps is small on purpose: families differ by tenths. "No clear difference" is a finding.',
];

function workedExample(plan: WeekPlan) {
  const entry = knownForecasts(plan, 'answer')
    .find((cell) => cell.situation === ALL_SITUATIONS)
    ?.classes.find((found) => found.film.estimate !== null && found.film.count > 0);
  if (entry === undefined || entry.film.estimate === null)
    return html`<p>No share could be worked through: nothing was charted.</p>\n`;
  return html`<p>An example from this week. ${answerLabel(entry.name)} on film: <b>${shareWords(entry.film)}</b>. ${exampleWords(entry.film, entry.film.estimate)}</p>\n`;
}

function exampleWords(film: Share, estimate: number): string {
  const counted = `They did it ${film.count} times in ${film.trials} snaps, which is ${percent(estimate)}.`;
  const range = `If they kept being the same offense for years, the long-run share would lie somewhere between ${percentRange(film.low, film.high)}; ranges made this way hold the truth 19 times in 20.`;
  return `${counted} ${range} It is not the range of what happens in one game: that is wider, and is given as "expected on Friday".`;
}
