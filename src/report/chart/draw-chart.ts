import { parse, View } from 'vega';
import { expressionInterpreter } from 'vega-interpreter';
import { compile, type TopLevelSpec } from 'vega-lite';
import type { ChartView } from '../view/block.ts';
import { cleanDrawing } from './clean-drawing.ts';
import { ChartError, keepingLogger, refusingLoader } from './quiet-runtime.ts';
import { measureTextOurselves, startIdsAnew } from './vega-text.ts';

/**
 * Draws a chart as SVG markup: one named image, ids of its own, colours as CSS variables.
 *
 * @returns the markup, empty for a chart without data
 * @throws ChartError when the chart library warns of anything
 */
export async function drawChart(chart: ChartView): Promise<string> {
  if (chart.spec === null) return '';
  const drawing = await drawSpec(chart.id, chart.spec);
  return cleanDrawing(drawing, { id: chart.id, title: chart.title, description: chart.caption, tinted: chart.tinted });
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
    startIdsAnew();
    const drawing = await view.toSVG();
    if (complaints.length > 0) throw new ChartError(`chart ${id}: ${complaints.join('; ')}`);
    return drawing;
  } finally {
    view.finalize();
  }
}
