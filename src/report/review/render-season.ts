import type { Review } from '../../pressure/review/review.ts';
import type { Season } from '../../pressure/review/season.ts';
import { chapterMarkup } from '../layout/chapter.ts';
import { drawChart } from '../layout/draw-chart.ts';
import { INVENTED } from '../layout/masthead.ts';
import { REPORT_STYLE } from '../layout/report-style.ts';
import { documentText } from '../page/document.ts';
import { type Html, html } from '../page/html.ts';
import { type Chapter, foldedTables } from '../view/block.ts';
import { seasonChart } from '../view/season-chart.ts';
import { CAUTION_LINE } from '../words/caution-words.ts';
import { beatenOverGames } from '../words/hurt-words.ts';
import { OPEN_DATA_LINE } from '../words/open-data-words.ts';
import { calibrationChart } from './calibration-chart.ts';
import { verdictColumns } from './monday-part.ts';
import { contradictedWords, markSentence, seasonRuleTable } from './rule-table.ts';
import { guessTable, seasonFamilyTable, targetTable } from './season-table.ts';
import { seasonSentences } from './season-words.ts';

/** The season page as one HTML file; the same reviews give the same bytes. */
export async function renderSeason(season: Season, reviews: readonly Review[]): Promise<string> {
  const sections: Html[] = [];
  for (const chapter of chapters(season, reviews))
    sections.push(await chapterMarkup(chapter, { draw: drawChart, folds: 'closed' }));
  const body = html`<header class="top"><h1>Season so far: <bdi>${season.us}</bdi></h1>
<p class="meta">${season.games.map(({ week, opponent, snaps }) => `${week} ${opponent}, ${snaps} snaps`).join(' · ')}${season.invented ? html` · ${INVENTED}` : null}</p></header>
<main>
${seasonTop(season, reviews)}${sections}</main>
<footer><p>${CAUTION_LINE}</p><p>${OPEN_DATA_LINE}</p></footer>\n`;
  return documentText({ title: `Season so far: ${season.us}`, style: REPORT_STYLE, script: '', body });
}

/** Keep, fix, drop over the games; what hurt us; then what pays, how easy we are to read and how the plans did. */
function seasonTop(season: Season, reviews: readonly Review[]): Html {
  const beaten = beatenOverGames(reviews).map((line) => html`<li>${line}</li>`);
  const hurt = beaten.length === 0 ? null : html`<h2>What hurt us</h2><ul>${beaten}</ul>`;
  const calls = reviews.some(({ grades }) => grades !== null) ? verdictColumns(reviews) : null;
  return html`${calls}${hurt}<h2>So far</h2>
<ul>${seasonSentences(season).map((line) => html`<li>${line}</li>`)}</ul>\n`;
}

function chapters(season: Season, reviews: readonly Review[]): readonly Chapter[] {
  return [
    {
      id: 'paid',
      title: 'What pays?',
      short: 'Pressures',
      blocks: [
        { kind: 'prose', html: html`<p>${HOW_PAID}</p>` },
        { kind: 'table', table: seasonFamilyTable(season) },
      ],
    },
    {
      id: 'guessed',
      title: 'Are we harder to read?',
      short: 'Guess rate',
      blocks: [{ kind: 'table', table: guessTable(season.guesses) }],
    },
    ...ruleChapter(season),
    {
      id: 'calibrated',
      title: 'Does the forecast hold up?',
      short: 'Forecast',
      blocks: [
        { kind: 'chart', chart: seasonChart(reviews) },
        {
          kind: 'folded',
          summary: 'By how sure it was, and by question',
          blocks: [
            { kind: 'chart', chart: calibrationChart(season.bins) },
            { kind: 'table', table: targetTable(season.targets) },
          ],
        },
      ],
    },
  ];
}

/** The rules of fit on our own calls; nothing where no game was marked. */
function ruleChapter({ fit }: Season): readonly Chapter[] {
  if (fit === null) return [];
  const contradicted = contradictedWords(fit).map((line) => html`<p>${line}</p>`);
  return [
    {
      id: 'rules',
      title: 'Do our rules hold up?',
      short: 'Rules',
      blocks: [
        { kind: 'prose', html: html`<p>${markSentence(fit)}</p>${contradicted}` },
        foldedTables('Rule by rule', seasonRuleTable(fit)),
      ],
    },
  ];
}

const HOW_PAID =
  'Pro scoring: read the order, not the decimals. The range is luck alone; a family stands out when what we expected lies outside it, on at least 20 snaps in 3 games. Of twenty families one stands out by luck.';
