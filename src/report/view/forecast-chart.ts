import type { WeekPlan } from '../../pressure/week-plan.ts';
import { answerLabel } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { forecastsOf, forecastTable } from './forecast-table.ts';

/** What they do with the ball over all situations: forecast with its interval, the plain film share beside it. */
export function forecastChart(plan: WeekPlan): ChartView {
  return {
    id: 'forecast-overall',
    title: forecastTitle(plan),
    caption: 'Filled dot: forecast for Friday with its 95% interval. Open diamond: the plain share on film.',
    spec: null,
    empty: 'No answer was charted, so nothing is drawn.',
    tinted: 'plain',
    table: forecastTable(plan, 'answer'),
  };
}

function forecastTitle(plan: WeekPlan): string {
  const overall = forecastsOf(plan, 'answer').find((entry) => entry.situation === ALL_SITUATIONS);
  const [first, second] = [...(overall?.classes ?? [])].sort((a, b) => b.share - a.share);
  if (first === undefined || second === undefined) return 'What they do with the ball';
  return `Expect ${answerLabel(first.name).toLowerCase()} on ${percent(first.share)} of snaps, then ${answerLabel(second.name).toLowerCase()} on ${percent(second.share)}`;
}
