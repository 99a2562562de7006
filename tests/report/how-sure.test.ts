import { describe, expect, it } from 'vitest';
import { sureOf as engineSure, SURE } from '../../src/pressure/others/sure.ts';
import { renderReport } from '../../src/report/render-report.ts';
import { renderTipSheet } from '../../src/report/render-tip-sheet.ts';
import { belowZeroSure, majoritySure, SURE_LEVELS, sureOf, sureWord } from '../../src/report/words/sure-words.ts';
import { inventedPlan } from './invented-plan.ts';

/** The four phrases, with the chance from which each is said; the project's own definition, no source. */
const MEANT = [
  ['clear', 0.95],
  ['likely', 0.8],
  ['lean', 0.65],
  ['no difference', 0],
] as const;

describe('clear, likely, lean, no difference', () => {
  it('mean 95, 80 and 65 chances in 100 on every page, and in the engine', () => {
    expect(SURE_LEVELS.map(({ id, least }) => [id, least])).toEqual(MEANT.map(([id, least]) => [id, least]));
    for (const [id, least] of MEANT) {
      expect(sureOf(least + 1e-9)).toBe(id);
      const word = engineSure(1 - least - 1e-9);
      expect(word === 'none' ? 'no difference' : word).toBe(id);
    }
    expect(SURE).toHaveLength(MEANT.length);
  });

  it('are explained in the glossary of the report with the same chances', async () => {
    const page = await renderReport(inventedPlan(), { full: true });
    const glossary = page.slice(page.indexOf('id="glossary"'));
    for (const [id, least] of MEANT.filter(([, chance]) => chance > 0))
      expect(glossary).toMatch(new RegExp(`${id}</dt><dd>at least ${100 * least} chances in 100`));
    expect(glossary).toContain('a lean at most, never an order');
  });

  it('are a lean at most under 20 snaps, whatever the chance', () => {
    expect(sureWord('clear', { trials: 19 })).toBe('lean');
    expect(sureWord('clear', { trials: 20 })).toBe('clear');
    expect(sureWord('likely', { trials: 14 })).toBe('lean');
    expect(sureWord('none', { trials: 200 })).toBe('no difference');
    expect(majoritySure({ count: 19, trials: 19 })).toBe('lean');
  });

  // Normal tail areas: a mean 1.64, 0.84 and 0.39 standard errors below zero has 95, 80 and 65 chances in 100 (any table).
  it('follow a figure’s interval by the normal tail', () => {
    const figure = (errors: number) => ({ mean: -errors, low: -errors - 1.96, high: -errors + 1.96 });
    expect([1.66, 1.62, 0.85, 0.83, 0.4, 0.38].map((errors) => belowZeroSure(figure(errors)))).toEqual([
      'clear',
      'likely',
      'likely',
      'lean',
      'lean',
      'no difference',
    ]);
  });

  it('say the same of the slide on the first screen and on the tip sheet', async () => {
    const plan = inventedPlan();
    const slide = plan.protection.mix.slideToBack;
    const sure = majoritySure(slide);
    const [report, tips] = [await renderReport(plan), await renderTipSheet(plan)];
    expect(slide.trials).toBeGreaterThan(0);
    const said = { clear: /send it/, likely: /: lean /, lean: /: lean /, 'no difference': /no side to live on/ }[sure];
    const tip = { clear: /\)\.<\/li>/, likely: /: likely\./, lean: /: lean\./, 'no difference': /both ways, read it/ }[
      sure
    ];
    expect(report.slice(report.indexOf('They slide'), report.indexOf('They slide') + 200)).toMatch(said);
    expect(tips.slice(tips.indexOf('Line slides'), tips.indexOf('Line slides') + 200)).toMatch(tip);
  });
});
