import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Review } from '../../pressure/review/review.ts';
import { whatIfPanel } from '../layout/what-if-panel.ts';
import { html } from '../page/html.ts';
import { backtestTable } from '../view/backtest-table.ts';
import type { Block, Chapter } from '../view/block.ts';
import { seasonChart } from '../view/season-chart.ts';
import { whatIfModel } from '../view/what-if-model.ts';
import { CAUTIONS } from '../words/caution-words.ts';
import { aboutTheDataBlocks } from './about-the-data.ts';
import { glossary } from './glossary.ts';
import { howToRead } from './how-to-read.ts';
import { limitBlocks } from './limits.ts';
import { pointsBlocks } from './points.ts';

/** Everything of method, folded away: points, limits, the forecast's record, the data, the words. */
export function howDoYouKnowChapter(plan: WeekPlan, reviews: readonly Review[]): Chapter {
  const cautions = html`<ul>${CAUTIONS.map((caution) => html`<li>${caution}</li>`)}</ul>\n`;
  return {
    id: 'how-do-you-know',
    title: 'How do you know?',
    short: 'How do you know?',
    blocks: [
      { kind: 'prose', html: whatIfPanel(whatIfModel(plan)) },
      { kind: 'folded', summary: 'Points: which kind of pressure pays', blocks: pointsBlocks(plan) },
      ...limitBlocks(plan),
      ...recordBlocks(plan, reviews),
      { kind: 'folded', summary: 'About the data', blocks: aboutTheDataBlocks(plan) },
      { kind: 'folded', summary: 'How to read this page', blocks: [howToRead(plan)] },
      { kind: 'folded', summary: 'Glossary', blocks: [glossary()] },
      { kind: 'folded', summary: 'Cautions', blocks: [{ kind: 'prose', html: cautions }] },
    ],
  };
}

/** How the forecast did on games it had not seen, and over the season so far. */
function recordBlocks({ forecast }: WeekPlan, reviews: readonly Review[]): readonly Block[] {
  const season: readonly Block[] = reviews.length === 0 ? [] : [{ kind: 'chart', chart: seasonChart(reviews) }];
  const own: readonly Block[] =
    forecast.backtest === null ? [] : [{ kind: 'table', table: backtestTable(forecast.backtest) }];
  const blocks = [...own, ...season];
  return blocks.length === 0
    ? []
    : [{ kind: 'folded', summary: 'How the forecast did on film it had not seen', blocks }];
}
