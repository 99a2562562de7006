import { describe, expect, it } from 'vitest';
import { refusingLoader } from '../../src/report/chart/quiet-runtime.ts';
import { drawChart } from '../../src/report/layout/draw-chart.ts';
import { reportChapters } from '../../src/report/render-report.ts';
import type { Block, ChartView } from '../../src/report/view/block.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const charts = chartsOf(reportChapters(plan).flatMap(({ blocks }) => blocks));
const plots = charts.filter(({ drawing }) => drawing?.kind === 'plot');
const drawings = new Map<string, string>();
for (const chart of plots) drawings.set(chart.id, await drawChart(chart));

function chartsOf(blocks: readonly Block[]): readonly ChartView[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'chart') return [block.chart];
    return block.kind === 'folded' ? chartsOf(block.blocks) : [];
  });
}

function drawing(id: string): string {
  return drawings.get(id) ?? 'not drawn';
}

describe('the charts of the report', () => {
  it('are there for a full plan, each with something to draw', () => {
    expect(charts.map((chart) => [chart.id, chart.drawing?.kind])).toEqual([
      ['forecast-overall', 'strips'],
      ['answers-by-situation', 'grid'],
      ['tells-by-game', 'grid'],
      ['protection-habits', 'strips'],
      ['race', 'strips'],
      ['race-curves', 'plot'],
      ['guess-rates', 'strips'],
      ['our-pairings', 'grid'],
      ['families-overall', 'strips'],
      ['families-by-situation', 'grid'],
    ]);
  });
});

describe('drawChart', () => {
  it.each(plots.map((chart) => [chart.id]))(
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

  it.each(plots.map((chart) => [chart.id]))('%s: one named image, nothing inside speaks to assistive tools', (id) => {
    const svg = drawing(id);
    expect(svg.match(/ role="/g)).toHaveLength(1);
    expect(svg.match(/ aria-/g)).toHaveLength(2);
    expect(svg).toContain(`aria-labelledby="${id}-name ${id}-words"`);
  });

  it.each(plots.map((chart) => [chart.id]))('%s: text is at least 13 pixels', (id) => {
    const sizes = [...drawing(id).matchAll(/font-size="(\d+)(?:px)?"/g)].map((match) => Number(match[1]));
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(13);
  });

  it('gives the same bytes again, and in another order', async () => {
    for (const chart of [...plots].reverse()) expect(await drawChart(chart)).toBe(drawing(chart.id));
  });

  it('takes every color from the page', () => {
    for (const [, svg] of drawings) {
      const colors = [...svg.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map((match) => match[1] ?? '');
      for (const color of colors) expect(color).toMatch(/^(?:var\(--[a-z0-9]+\)|url\(#[\w-]+\)|none|transparent)$/);
    }
  });

  it('fails on any warning of the chart library', async () => {
    const [chart] = plots;
    const misspelt = {
      ...chart,
      drawing: {
        kind: 'plot',
        spec: { data: { values: [{ a: 1 }] }, mark: 'bar', encoding: { x: { field: 'b', type: 'quantitative' } } },
      },
    };
    await expect(drawChart(misspelt as ChartView)).rejects.toThrow(/Infinite extent/);
  });

  it('loads nothing', async () => {
    const loader = refusingLoader();
    for (const load of [loader.load, loader.http, loader.file, loader.sanitize])
      await expect(load()).rejects.toThrow('load nothing');
    const [chart] = plots;
    const reaching = {
      ...chart,
      drawing: { kind: 'plot', spec: { data: { url: 'data.json' }, mark: 'point', encoding: {} } },
    };
    await expect(drawChart(reaching as ChartView)).rejects.toThrow('load nothing');
  });

  it('draws nothing for a chart without data', async () => {
    const [chart] = plots;
    expect(chart && (await drawChart({ ...chart, drawing: null }))).toBe('');
  });
});
