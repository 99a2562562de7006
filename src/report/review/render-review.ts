import type { Review } from '../../pressure/review/review.ts';
import { drawChart } from '../chart/draw-chart.ts';
import { chapterMarkup } from '../page/chapter.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { INVENTED } from '../page/masthead.ts';
import { REPORT_STYLE } from '../page/report-style.ts';
import { archiveTable, archiveUseTable } from '../view/archive-table.ts';
import { type Chapter, foldedTables } from '../view/block.ts';
import { countTable, gradeTable, scoreTable, tellTable } from './review-table.ts';
import { ONE_GAME, reviewSentences } from './review-words.ts';

/** Monday's review as one HTML file: no script, no outside reference, the same bytes for the same review. */
export async function renderReview(review: Review): Promise<string> {
  const sections: Html[] = [];
  for (const chapter of chapters(review))
    sections.push(await chapterMarkup(chapter, { draw: drawChart, folds: 'closed' }));
  const body = html`<header class="top"><h1>Review: <bdi>${review.opponent}</bdi></h1>
<p class="meta"><bdi>${review.us}</bdi> · ${review.week} · ${review.date} · version ${review.version}</p>
${review.invented ? INVENTED : null}</header>
<main>
<ul class="short">${reviewSentences(review).map((line) => html`<li>${line}</li>`)}</ul>
<p class="verdict">${ONE_GAME}</p>
${sections}</main>`;
  return documentText({ title: `Review: ${review.opponent}`, style: REPORT_STYLE, script: '', body });
}

function chapters(review: Review): readonly Chapter[] {
  return [
    {
      id: 'forecast',
      title: 'Sunday’s forecast against the game',
      short: 'Forecast',
      blocks: [
        { kind: 'table', table: scoreTable(review.scores) },
        foldedTables('Every count with its ranges', countTable(review.counts)),
        { kind: 'table', table: tellTable(review.tells) },
      ],
    },
    ourChapter(review),
    {
      id: 'base-rates',
      title: 'The base rates Sunday had',
      short: 'Base rates',
      blocks: [
        { kind: 'prose', html: html`<p>${archiveWords(review)}</p>` },
        { kind: 'table', table: archiveUseTable(review.archive) },
        foldedTables('Whose snaps they are', archiveTable(review.archive)),
      ],
    },
  ];
}

function ourChapter({ grades }: Review): Chapter {
  const calls = { id: 'calls', caption: 'Our calls', first: 'Call' };
  const families = { id: 'families', caption: 'Our kinds of pressure', first: 'Kind' };
  return {
    id: 'our-calls',
    title: 'Our calls against what was expected of them',
    short: 'Our calls',
    blocks: [
      { kind: 'prose', html: html`<p>${HOW_GRADED}</p>` },
      { kind: 'table', table: gradeTable(grades?.calls ?? [], calls) },
      { kind: 'table', table: gradeTable(grades?.families ?? [], families) },
    ],
  };
}

const HOW_GRADED =
  'A snap saves what four rushers usually give up to that answer on that down, less what it gave up. Expected is what Sunday’s scores said of the call against the answer that came; the four-man base is expected to save nothing. The points are those of professional scoring: the order counts, not the decimals. The range is what outcomes swing by on their own.';

function archiveWords({ archive }: Review): string {
  const { offenseGames, snaps, offenses, level } = archive;
  if (offenseGames === 0) return 'No other offense was charted: the forecast stood on their own film alone.';
  return `${offenseGames} games of ${offenses.length} other offenses, ${snaps} snaps; ${level}. This game joins them for next week, and our calls join our own film.`;
}
