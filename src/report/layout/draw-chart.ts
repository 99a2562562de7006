import { parse, View } from 'vega';
import { expressionInterpreter } from 'vega-interpreter';
import { compile, type TopLevelSpec } from 'vega-lite';
import { cleanDrawing } from '../chart/clean-drawing.ts';
import { ChartError, keepingLogger, refusingLoader } from '../chart/quiet-runtime.ts';
import { measureTextOurselves, restartIds } from '../chart/vega-text.ts';
import type { ChartView } from '../view/block.ts';

/**
 * Draws the curves of a chart as SVG markup: one named image, ids of its own, colors as CSS variables.
 *
 * @returns the markup, empty for a chart without curves
 * @throws ChartError when the chart library warns of anything
 */
export async function drawChart(chart: ChartView): Promise<string> {
  if (chart.drawing?.kind !== 'plot') return '';
  const drawing = await drawSpec(chart.id, chart.drawing.spec);
  return cleanDrawing(drawing, { id: chart.id, title: chart.title, description: chart.caption });
}

async function drawSpec(id: string, spec: TopLevelSpec): Promise<string> {
  measureTextOurselves();
  const { logger, complaints } = keepingLogger();
  const compiled = compile(spec, { logger }).spec;
  const view = new View(parse(compiled, undefined, { ast: true }), {
    renderer: 'none',
    loader: refusingLoader(),
    logger,
    expr: expressionInterpreter,
  });
  try {
    await view.runAsync();
    restartIds();
    const drawing = await view.toSVG();
    if (complaints.length > 0) throw new ChartError(`chart ${id}: ${complaints.join('; ')}`);
    return drawing;
  } finally {
    view.finalize();
  }
}
