import type { Review } from '../../pressure/review/review.ts';
import { blocksMarkup } from '../layout/chapter.ts';
import { drawChart } from '../layout/draw-chart.ts';
import { INVENTED } from '../layout/masthead.ts';
import { REPORT_STYLE } from '../layout/report-style.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { archiveTable, archiveUseTable } from '../view/archive-table.ts';
import { type Block, foldedTables } from '../view/block.ts';
import { CAUTION_LINE } from '../words/caution-words.ts';
import { gameDay } from '../words/game-day.ts';
import { levelWords } from '../words/level-words.ts';
import { OPEN_DATA_LINE } from '../words/open-data-words.ts';
import { hurtPart } from './hurt-part.ts';
import { mondayPart } from './monday-part.ts';
import { countTable, gradeTable, scoreTable, tellTable } from './review-table.ts';
import { ONE_GAME, reviewSentences } from './review-words.ts';
import { gameRuleTable, markSentence } from './rule-table.ts';

/** Monday's review as one HTML file: keep, fix, drop; what hurt us; what the film did not show; details behind. No script, no outside reference, the same bytes for the same review. */
export async function renderReview(review: Review): Promise<string> {
  const folded = await blocksMarkup(details(review), { draw: drawChart, folds: 'closed' });
  const body = html`<header class="top"><h1>Monday: <bdi>${review.opponent}</bdi></h1>
<p class="meta"><bdi>${review.us}</bdi> · ${gameDay(review.date)}${review.invented ? html` · ${INVENTED}` : null}</p></header>
<main>
${mondayPart(review)}${hurtPart(review)}<h2>How Sunday’s plan did</h2>
<ul>${reviewSentences(review).map((line) => html`<li>${line}</li>`)}${ruleLine(review)}</ul>
<p class="small">${ONE_GAME}</p>
${folded}</main>
<footer><p>${CAUTION_LINE}</p><p>${OPEN_DATA_LINE}</p></footer>\n`;
  return documentText({ title: `Monday: ${review.opponent}`, style: REPORT_STYLE, script: '', body });
}

/** Everything behind the first side, closed until it is asked for. */
function details(review: Review): readonly Block[] {
  const { grades, fit } = review;
  const calls = { id: 'calls', caption: 'By call', first: 'Call' };
  const families = { id: 'families', caption: 'By family', first: 'Family' };
  return [
    {
      kind: 'folded',
      summary: 'Every call and family graded in points',
      blocks: [
        { kind: 'prose', html: html`<p>${HOW_GRADED}</p>` },
        { kind: 'table', table: gradeTable(grades?.calls ?? [], calls) },
        { kind: 'table', table: gradeTable(grades?.families ?? [], families) },
      ],
    },
    ...(fit ? [foldedTables('Our rules, one by one', gameRuleTable(fit))] : []),
    ...(review.tells.length === 0 ? [] : [foldedTables('Sunday’s tendencies in the game', tellTable(review.tells))]),
    foldedTables('Every count with its ranges, and the scores', countTable(review.counts), scoreTable(review.scores)),
    {
      kind: 'folded',
      summary: 'The other offenses Sunday counted',
      blocks: [
        { kind: 'prose', html: html`<p>${archiveWords(review)}</p>` },
        { kind: 'table', table: archiveUseTable(review.archive) },
        { kind: 'table', table: archiveTable(review.archive) },
      ],
    },
  ];
}

/** What our rules of fit said of our calls once it was known what came. */
function ruleLine({ fit }: Review): Html | null {
  return fit ? html`<li>${markSentence(fit)}</li>` : null;
}

const HOW_GRADED =
  'Points a snap saved: what four rushers usually give up to that play on that down, less what it gave up. Expected: what Sunday said of the call against that play. The scale is pro scoring: read the order, not the decimals. The range is luck alone.';

function archiveWords({ archive }: Review): string {
  const { offenseGames, snaps, offenses, level } = archive;
  if (offenseGames === 0) return 'No other offense is charted: the forecast rests on their own film alone.';
  return `${offenseGames} games of ${offenses.length} other offenses, ${snaps} snaps; ${levelWords(level)}. Next week this game joins them, and our calls join our own film.`;
}
