import { THIN_SNAPS } from '../../game/thin-snaps.ts';
import type { Target } from '../../pressure/forecast/forecast-result.ts';
import type { CountCheck } from '../../pressure/review/count-range.ts';
import type { Review } from '../../pressure/review/review.ts';
import type { IntervalRow } from '../chart/interval-row.ts';
import { counted } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import type { ChartView } from './block.ts';
import { numberCell, numbers, type TableView, textCell, words } from './table-view.ts';

/** Questions drawn, and what a coach calls the first class of each; more would not be read. */
const DRAWN = [
  { target: 'run_or_pass', words: 'runs' },
  { target: 'screen', words: 'screens when they pass' },
  { target: 'quick_release', words: 'ball out within 2.5 s' },
] as const satisfies readonly { target: Target; words: string }[];

/**
 * Forecast against what happened, game by game over the season: the 95% range of Sunday's forecast for the snaps that
 * came, and the share that came. For the season page, and for the report when earlier weeks were reviewed.
 *
 * @param reviews - in the order of the weeks; without one the chart says so
 */
export function seasonChart(reviews: readonly Review[]): ChartView {
  const drawn = DRAWN.flatMap((question) => reviews.flatMap((review) => entryOf(review, question)));
  return {
    id: 'season-forecasts',
    title: titleOf(drawn, reviews.length),
    caption:
      'Filled dot: Sunday’s forecast with the 95% range for as many snaps as came. Open diamond: what came. Under 20 snaps the line is dashed.',
    drawing: drawn.length === 0 ? null : { kind: 'strips', rows: drawn.map(rowOf), axis: AXIS },
    empty: 'No finished game has been reviewed yet, so nothing is drawn.',
    table: tableOf(drawn),
  };
}

interface Entry {
  readonly id: string;
  readonly label: string;
  readonly check: CountCheck;
}

const AXIS = { title: 'Share of the snaps asked about', domain: [0, 1], format: 'percent', reference: null } as const;

function entryOf(review: Review, question: (typeof DRAWN)[number]): Entry[] {
  const check = review.counts.find(({ target, situation }) => target === question.target && situation === 'all');
  if (!check) return [];
  const label = `${review.opponent}, ${review.week}: ${question.words}`;
  return [{ id: `${question.target} ${review.week}`, label, check }];
}

function rowOf({ id, label, check }: Entry): IntervalRow {
  const { snaps, came, expected, outer } = check;
  return {
    id,
    label,
    note: `${percent(expected)} said, ${came} of ${snaps} came`,
    state: snaps < THIN_SNAPS ? 'thin' : 'solid',
    value: expected,
    low: outer.low / snaps,
    high: outer.high / snaps,
    second: came / snaps,
  };
}

function titleOf(drawn: readonly Entry[], games: number): string {
  if (drawn.length === 0) return 'Forecast against what happened';
  const inside = drawn.filter(({ check }) => check.outer.hit).length;
  return `Over ${counted(games, 'game', 'games')} what came lay in the forecast’s range ${inside} of ${drawn.length} times`;
}

function tableOf(drawn: readonly Entry[]): TableView {
  return {
    id: 'season-forecasts-table',
    caption: 'Forecast against what happened, game by game',
    columns: [
      words('Game and question'),
      numbers('Forecast'),
      numbers('95% range'),
      numbers('Came'),
      words('In range'),
    ],
    rows: drawn.map(({ label, check }) => ({
      name: label,
      cells: [
        numberCell(percent(check.expected), check.expected),
        numberCell(`${check.outer.low} to ${check.outer.high}`, check.outer.low / check.snaps),
        numberCell(`${check.came} of ${check.snaps}`, check.came / check.snaps),
        textCell(check.outer.hit ? 'yes' : 'no'),
      ],
      ...(check.snaps < THIN_SNAPS ? { thin: true as const } : {}),
    })),
    empty: 'no finished game has been reviewed',
  };
}
