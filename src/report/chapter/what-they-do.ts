import type { BacktestVerdict } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { Review } from '../../pressure/review/review.ts';
import { html } from '../page/html.ts';
import { answerMatrix } from '../view/answer-matrix.ts';
import { backtestTable } from '../view/backtest-table.ts';
import type { Block, Chapter } from '../view/block.ts';
import { forecastChart } from '../view/forecast-chart.ts';
import { habitTable } from '../view/habit-table.ts';
import { lineTable } from '../view/line-table.ts';
import { seasonChart } from '../view/season-chart.ts';
import { tellsChart } from '../view/tells-chart.ts';
import { counted, listed } from '../words/number-words.ts';

/** What they do: forecast beside film, the answers by situation, the tells game by game, and how the forecast did. */
export function whatTheyDoChapter(plan: WeekPlan, reviews: readonly Review[]): Chapter {
  return {
    id: 'what-they-do',
    title: 'What they do',
    short: 'What they do',
    blocks: [
      { kind: 'prose', html: html`<p>${filmSentence(plan)} ${plan.forecast.archive.note}</p>\n` },
      { kind: 'chart', chart: forecastChart(plan) },
      { kind: 'chart', chart: answerMatrix(plan) },
      { kind: 'table', table: habitTable(plan) },
      { kind: 'heading', id: 'at-the-line', text: 'When they line up like this' },
      { kind: 'table', table: lineTable(plan) },
      { kind: 'heading', id: 'tells', text: 'Tells: habits beyond what the forecast already expects' },
      { kind: 'prose', html: html`<p>${tellSentence(plan)}</p>\n` },
      ...tellBlocks(plan),
      { kind: 'heading', id: 'forecast-record', text: 'How far to trust the forecast' },
      ...backtestBlocks(plan.forecast.backtest),
      ...seasonBlocks(reviews),
    ],
  };
}

function filmSentence({ film, forecast }: WeekPlan): string {
  const games = counted(film.games.length, 'game', 'games');
  const archive = forecast.archive.used
    ? `steadied by ${counted(forecast.archive.snaps, 'snap', 'snaps')} of other offenses in ${counted(forecast.archive.games, 'game', 'games')}`
    : 'with no archive of other offenses behind it';
  return `The forecast is made from ${counted(film.snaps, 'snap', 'snaps')} in ${games}, ${archive}.`;
}

function tellSentence({ forecast }: WeekPlan): string {
  const { looked, discoveryRate, tells } = forecast.tells;
  const looks = `${counted(looked, 'habit was', 'habits were')} looked at; ${tells.length} stood out after correcting for having looked at them all`;
  if (tells.length === 0) return `${looks}. Do not let anybody talk you into one from a handful of snaps.`;
  const wrong = `Expect about ${Math.round(discoveryRate * 100)} in 100 of such finds to be chance.`;
  const single = tells.filter((tell) => tell.oneGameOnly).map((tell) => tell.description);
  const warning = single.length === 0 ? '' : ` Seen in one game only: ${listed(single)}.`;
  return `${looks}. ${wrong} On real film only about a third of such an excess comes back next week; "plan with" is shrunk for that.${warning}`;
}

/** Nothing is drawn where nothing stood out: the sentence has said so. */
function tellBlocks(plan: WeekPlan): readonly Block[] {
  return plan.forecast.tells.tells.length === 0 ? [] : [{ kind: 'chart', chart: tellsChart(plan) }];
}

/** Our own season's record, once a finished game was reviewed. */
function seasonBlocks(reviews: readonly Review[]): readonly Block[] {
  return reviews.length === 0 ? [] : [{ kind: 'chart', chart: seasonChart(reviews) }];
}

function backtestBlocks(backtest: BacktestVerdict | null): readonly Block[] {
  if (backtest === null) {
    const words = 'Not judged on their own film: that takes one question charted in at least two of their games.';
    return [{ kind: 'prose', html: html`<p>${words}</p>\n` }];
  }
  return [
    { kind: 'prose', html: html`<p class="verdict">${backtest.sentence}</p>\n` },
    { kind: 'table', table: backtestTable(backtest) },
  ];
}
