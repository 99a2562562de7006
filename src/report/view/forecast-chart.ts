import type { Forecast, ForecastClass } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { IntervalRow } from '../chart/interval-row.ts';
import { answerInSentence, answerLabel } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { shareWords } from '../words/share-words.ts';
import { ALL_SITUATIONS } from '../words/situation-label.ts';
import type { ChartView } from './block.ts';
import { forecastTable } from './forecast-table.ts';
import { knownForecasts } from './known-forecasts.ts';

/** What they do with the ball over all situations: forecast with its interval, the plain film share beside it. */
export function forecastChart(plan: WeekPlan): ChartView {
  const overall = knownForecasts(plan, 'answer').find((entry) => entry.situation === ALL_SITUATIONS);
  const rows = (overall?.classes ?? []).map((entry) => forecastRow(entry, overall?.thin ?? false));
  return {
    id: 'forecast-overall',
    title: forecastTitle(plan),
    caption: 'Dot: what we expect, with the range of their long run. Open diamond: the plain share on film.',
    drawing: rows.length === 0 ? null : { kind: 'strips', rows: rows, axis: AXIS },
    empty: 'No answer was charted, so nothing is drawn.',
    table: forecastTable(overall === undefined ? [] : [overall], TABLE_NAME),
  };
}

const TABLE_NAME = { id: 'forecast-overall-table', caption: 'What they do with the ball, over all situations' };

const AXIS = { title: 'of their snaps', domain: [0, 1], format: 'percent', reference: null } as const;

function forecastRow(entry: ForecastClass, thin: boolean): IntervalRow {
  const { name, share, low, high, film } = entry;
  return {
    id: name,
    label: answerLabel(name),
    note: `${percent(share)}; film ${shareWords(film)}`,
    state: thin ? 'thin' : 'solid',
    value: share,
    low,
    high,
    second: film.estimate,
  };
}

function forecastTitle(plan: WeekPlan): string {
  const overall = knownForecasts(plan, 'answer').find((entry) => entry.situation === ALL_SITUATIONS);
  const [first, second] = [...(overall?.classes ?? [])].sort((a, b) => b.share - a.share);
  if (overall === undefined || first === undefined || second === undefined) return 'What they do with the ball';
  if (overall.ownSnaps === 0) return notCharted(overall);
  return `Expect ${answerInSentence(first.name)} on ${percent(first.share)} of snaps, then ${answerInSentence(second.name)} on ${percent(second.share)}`;
}

function notCharted({ mostlyFrom }: Forecast): string {
  const instead = mostlyFrom === 'archive' ? 'these are the other offenses’ shares' : 'how they pass is not known';
  return `What kind of play they call is not charted: ${instead}`;
}
