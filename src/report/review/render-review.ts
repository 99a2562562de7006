import type { Review } from '../../pressure/review/review.ts';
import { chapterMarkup } from '../layout/chapter.ts';
import { drawChart } from '../layout/draw-chart.ts';
import { INVENTED } from '../layout/masthead.ts';
import { REPORT_STYLE } from '../layout/report-style.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { archiveTable, archiveUseTable } from '../view/archive-table.ts';
import { type Chapter, foldedTables } from '../view/block.ts';
import { CAUTION_LINE } from '../words/caution-words.ts';
import { gameDay } from '../words/game-day.ts';
import { levelWords } from '../words/level-words.ts';
import { OPEN_DATA_LINE } from '../words/open-data-words.ts';
import { mondayPart } from './monday-part.ts';
import { countTable, gradeTable, scoreTable, tellTable } from './review-table.ts';
import { ONE_GAME, reviewSentences } from './review-words.ts';
import { gameRuleTable, markSentence } from './rule-table.ts';

/** Monday's review as one HTML file: no script, no outside reference, the same bytes for the same review. */
export async function renderReview(review: Review): Promise<string> {
  const sections: Html[] = [];
  for (const chapter of chapters(review))
    sections.push(await chapterMarkup(chapter, { draw: drawChart, folds: 'closed' }));
  const body = html`<header class="top"><h1>Monday: <bdi>${review.opponent}</bdi></h1>
<p class="meta"><bdi>${review.us}</bdi> · ${gameDay(review.date)}${review.invented ? html` · ${INVENTED}` : null}</p></header>
<main>
${mondayPart(review)}<ul>${reviewSentences(review).map((line) => html`<li>${line}</li>`)}</ul>
<p class="small">${ONE_GAME}</p>
${sections}</main>
<footer><p>${CAUTION_LINE}</p><p>${OPEN_DATA_LINE}</p></footer>\n`;
  return documentText({ title: `Monday: ${review.opponent}`, style: REPORT_STYLE, script: '', body });
}

function chapters(review: Review): readonly Chapter[] {
  return [
    ourChapter(review),
    ...ruleChapter(review),
    {
      id: 'forecast',
      title: 'Sunday’s forecast against the game',
      short: 'Forecast',
      blocks: [
        { kind: 'table', table: tellTable(review.tells) },
        foldedTables(
          'Every count with its ranges, and the scores',
          countTable(review.counts),
          scoreTable(review.scores),
        ),
        {
          kind: 'folded',
          summary: 'The other offenses Sunday counted',
          blocks: [
            { kind: 'prose', html: html`<p>${archiveWords(review)}</p>` },
            { kind: 'table', table: archiveUseTable(review.archive) },
            { kind: 'table', table: archiveTable(review.archive) },
          ],
        },
      ],
    },
  ];
}

/** Our calls by what the rules of fit said once it was known what came. */
function ruleChapter({ fit }: Review): readonly Chapter[] {
  if (!fit) return [];
  return [
    {
      id: 'rules',
      title: 'Our rules',
      short: 'Rules',
      blocks: [
        {
          kind: 'prose',
          html: html`<p>${markSentence(fit)} One game proves little: the season page grades each rule.</p>`,
        },
        foldedTables('Rule by rule', gameRuleTable(fit)),
      ],
    },
  ];
}

function ourChapter({ grades }: Review): Chapter {
  const calls = { id: 'calls', caption: 'By call', first: 'Call' };
  const families = { id: 'families', caption: 'By family', first: 'Family' };
  return {
    id: 'our-calls',
    title: 'Our calls',
    short: 'Our calls',
    blocks: [
      { kind: 'prose', html: html`<p>${HOW_GRADED}</p>` },
      { kind: 'table', table: gradeTable(grades?.calls ?? [], calls) },
      { kind: 'table', table: gradeTable(grades?.families ?? [], families) },
    ],
  };
}

const HOW_GRADED =
  'Points a snap saved: what four rushers usually give up to that play on that down, less what it gave up. Expected: what Sunday said of the call against that play. The scale is pro scoring: read the order, not the decimals. The range is luck alone.';

function archiveWords({ archive }: Review): string {
  const { offenseGames, snaps, offenses, level } = archive;
  if (offenseGames === 0) return 'No other offense is charted: the forecast rests on their own film alone.';
  return `${offenseGames} games of ${offenses.length} other offenses, ${snaps} snaps; ${levelWords(level)}. Next week this game joins them, and our calls join our own film.`;
}
