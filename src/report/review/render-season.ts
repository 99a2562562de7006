import type { Review } from '../../pressure/review/review.ts';
import type { Season } from '../../pressure/review/season.ts';
import { drawChart } from '../chart/draw-chart.ts';
import { chapterMarkup } from '../page/chapter.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { INVENTED } from '../page/masthead.ts';
import { REPORT_STYLE } from '../page/report-style.ts';
import type { Chapter } from '../view/block.ts';
import { seasonChart } from '../view/season-chart.ts';
import { calibrationChart } from './calibration-chart.ts';
import { guessTable, seasonFamilyTable, targetTable } from './season-table.ts';
import { seasonSentences } from './season-words.ts';

/** The season page as one HTML file; the same reviews give the same bytes. */
export async function renderSeason(season: Season, reviews: readonly Review[]): Promise<string> {
  const sections: Html[] = [];
  for (const chapter of chapters(season, reviews))
    sections.push(await chapterMarkup(chapter, { draw: drawChart, folds: 'closed' }));
  const body = html`<header class="top"><h1>Season so far: <bdi>${season.us}</bdi></h1>
<p class="meta">${season.games.map(({ week, opponent, snaps }) => `${week} ${opponent}, ${snaps} snaps`).join(' · ')}</p>
${season.invented ? INVENTED : null}</header>
<main>
<ul class="short">${seasonSentences(season).map((line) => html`<li>${line}</li>`)}</ul>
${sections}</main>`;
  return documentText({ title: `Season so far: ${season.us}`, style: REPORT_STYLE, script: '', body });
}

function chapters(season: Season, reviews: readonly Review[]): readonly Chapter[] {
  return [
    {
      id: 'calibrated',
      title: 'Is the forecast calibrated on our film?',
      short: 'Forecast',
      blocks: [
        { kind: 'chart', chart: seasonChart(reviews) },
        { kind: 'chart', chart: calibrationChart(season.bins) },
        { kind: 'table', table: targetTable(season.targets) },
      ],
    },
    {
      id: 'paid',
      title: 'Which kinds of pressure paid?',
      short: 'Pressures',
      blocks: [
        { kind: 'prose', html: html`<p>${HOW_PAID}</p>` },
        { kind: 'table', table: seasonFamilyTable(season) },
      ],
    },
    {
      id: 'guessed',
      title: 'Is our guess rate falling?',
      short: 'Guess rate',
      blocks: [{ kind: 'table', table: guessTable(season.guesses) }],
    },
  ];
}

const HOW_PAID =
  'Points of professional scoring: the order counts, not the decimals. The range is what outcomes swing by on their own; a kind stands apart when what was expected of it lies outside, on at least 20 snaps in 3 games. Several kinds are looked at: one in twenty stands apart by chance.';
