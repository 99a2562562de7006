import type { CalibrationBin } from '../../pressure/review/season-calibration.ts';
import type { IntervalRow } from '../chart/interval-row.ts';
import { shareRow } from '../chart/share-row.ts';
import type { ChartView } from '../view/block.ts';
import { numberCell, numbers, shareCell, type TableView, words } from '../view/table-view.ts';
import { percent, percentRange } from '../words/percent.ts';

/** Whether what was forecast at about 30% comes about 30% of the time. */
export function calibrationChart(bins: readonly CalibrationBin[]): ChartView {
  const rows = bins.map(rowOf);
  return {
    id: 'calibration',
    title: titleOf(bins),
    caption: 'Dot: how often it came, with its 95% interval. Open diamond: what was forecast on average.',
    drawing: rows.some(({ state }) => state !== 'none') ? { kind: 'strips', rows: rows, axis: AXIS } : null,
    empty: 'No forecast of a yes or no was charted, so nothing is drawn.',
    table: tableOf(bins),
  };
}

const AXIS = { title: 'How often it came', domain: [0, 1], format: 'percent', reference: null } as const;

function rowOf({ low, high, forecast, came }: CalibrationBin): IntervalRow {
  return { ...shareRow(`from ${low}`, `Forecast ${percentRange(low, high)}`, came), second: forecast };
}

function titleOf(bins: readonly CalibrationBin[]): string {
  const charted = bins.filter(({ came }) => came.trials > 0);
  const near = charted.filter(
    ({ forecast, came }) => forecast !== null && forecast >= came.low && forecast <= came.high,
  );
  return charted.length === 0
    ? 'Forecast and what came'
    : `In ${near.length} of ${charted.length} bands the forecast lies within the interval of what came`;
}

function tableOf(bins: readonly CalibrationBin[]): TableView {
  return {
    id: 'calibration-table',
    caption: 'Forecasts of a yes or no, by size',
    columns: [words('Forecast'), numbers('On average'), numbers('Came')],
    rows: bins.map(({ low, high, forecast, came }) => ({
      name: percentRange(low, high),
      cells: [forecast === null ? numberCell('none', -1) : numberCell(percent(forecast), forecast), shareCell(came)],
    })),
    empty: 'nothing was forecast',
  };
}
