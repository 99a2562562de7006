import { describe, expect, it } from 'vitest';
import { drawChart } from '../../src/report/chart/draw-chart.ts';
import { refusingLoader } from '../../src/report/chart/quiet-runtime.ts';
import { reportChapters } from '../../src/report/render-report.ts';
import { matrixCells } from '../../src/report/view/answer-matrix.ts';
import type { ChartView } from '../../src/report/view/block.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const charts = chartsOf(plan);
const drawings = new Map<string, string>();
for (const chart of charts) drawings.set(chart.id, await drawChart(chart));

function chartsOf(of: typeof plan): readonly ChartView[] {
  return reportChapters(of).flatMap((chapter) =>
    chapter.blocks.flatMap((block) => (block.kind === 'chart' ? [block.chart] : [])),
  );
}

function drawing(id: string): string {
  return drawings.get(id) ?? 'not drawn';
}

describe('drawChart', () => {
  it('draws every chart of a full plan', () => {
    expect(charts.map((chart) => chart.id)).toEqual([
      'forecast-overall',
      'answers-by-situation',
      'tells-by-game',
      'protection-habits',
      'race',
      'race-curves',
      'families-overall',
      'families-by-situation',
      'guess-rates',
      'our-pairings',
    ]);
    for (const [, svg] of drawings) expect(svg).toMatch(/^<svg .*<\/svg>$/s);
  });

  it.each(charts.map((chart) => [chart.id]))(
    '%s: no ellipsis, no value that is not one, ids of its own that resolve',
    (id) => {
      const svg = drawing(id);
      expect(svg).not.toMatch(/\u2026|NaN|Infinity|undefined/);
      const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map((match) => match[1] ?? '');
      expect(new Set(ids).size).toBe(ids.length);
      for (const own of ids) expect(own.startsWith(`${id}-`)).toBe(true);
      for (const [, target] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(target);
    },
  );

  it.each(charts.map((chart) => [chart.id]))('%s: one named image, nothing inside speaks to assistive tools', (id) => {
    const svg = drawing(id);
    expect(svg.match(/ role="/g)).toHaveLength(1);
    expect(svg.match(/ aria-/g)).toHaveLength(2);
    expect(svg).toContain(`aria-labelledby="${id}-name ${id}-words"`);
  });

  it.each(charts.map((chart) => [chart.id]))('%s: text is at least 13 pixels', (id) => {
    const sizes = [...drawing(id).matchAll(/font-size="(\d+)(?:px)?"/g)].map((match) => Number(match[1]));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(13);
  });

  it('gives the same bytes again, and in another order', async () => {
    for (const chart of [...charts].reverse()) expect(await drawChart(chart)).toBe(drawing(chart.id));
  });

  it('draws one dot for each answer and one diamond for each film share', () => {
    const classes = plan.forecast.forecasts.find(
      (entry) => entry.target === 'answer' && entry.situation === 'all',
    )?.classes;
    const marks = drawing('forecast-overall').match(/stroke-width="(?:2|1\.5)"/g);
    expect(classes).toHaveLength(7);
    expect(marks?.length).toBeGreaterThanOrEqual(2 * 7);
    for (const entry of classes ?? [])
      expect(drawing('forecast-overall')).toContain(`${entry.film.count} of ${entry.film.trials}`);
  });

  it('draws one cell for every situation and answer, hatched where there was no snap', () => {
    const svg = drawing('answers-by-situation');
    const cells = matrixCells(plan);
    const numbers = svg.match(/>\d+%<\/text>/g);
    expect(numbers).toHaveLength(cells.length * 7);
    const none = cells.filter((cell) => cell.ownSnaps === 0).length;
    expect(none).toBeGreaterThan(0);
    expect(svg.match(/fill="url\(#answers-by-situation-hatch\)"/g)).toHaveLength(none * 7);
  });

  it('marks a habit that was never charted as no snaps instead of 0%', () => {
    const svg = drawing('protection-habits');
    expect(svg).toContain('>no snaps</text>');
    expect(svg.match(/fill="url\(#protection-habits-hatch\)"/g)).toHaveLength(1);
  });

  it('takes every colour from the page', () => {
    for (const [, svg] of drawings) {
      const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map((match) => match[1] ?? '');
      for (const colour of colours) expect(colour).toMatch(/^(?:var\(--[a-z0-9]+\)|url\(#[\w-]+\)|none|transparent)$/);
    }
  });

  it('fails on any warning of the chart library', async () => {
    const [chart] = charts;
    const misspelt = {
      ...chart,
      spec: { data: { values: [{ a: 1 }] }, mark: 'bar', encoding: { x: { field: 'b', type: 'quantitative' } } },
    };
    await expect(drawChart(misspelt as ChartView)).rejects.toThrow(/Infinite extent/);
  });

  it('loads nothing', async () => {
    const loader = refusingLoader();
    for (const load of [loader.load, loader.http, loader.file, loader.sanitize])
      await expect(load()).rejects.toThrow('load nothing');
    const [chart] = charts;
    const reaching = { ...chart, spec: { data: { url: 'data.json' }, mark: 'point', encoding: {} } };
    await expect(drawChart(reaching as ChartView)).rejects.toThrow('load nothing');
  });

  it('draws nothing for a chart without data', async () => {
    const [chart] = charts;
    expect(chart && (await drawChart({ ...chart, spec: null }))).toBe('');
  });
});
