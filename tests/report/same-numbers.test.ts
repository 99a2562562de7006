import { describe, expect, it } from 'vitest';
import { renderCallSheet } from '../../src/report/render-call-sheet.ts';
import { renderReport } from '../../src/report/render-report.ts';
import { renderTipSheet } from '../../src/report/render-tip-sheet.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const pages = {
  report: await renderReport(plan, { full: true }),
  'call sheet': await renderCallSheet(plan),
  'tip sheet': await renderTipSheet(plan),
};

function text(page: string): string {
  return page
    .slice(page.indexOf('<body>'))
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', "'")
    .replace(/\s+/g, ' ');
}

/** Every "19 of 23 (83%)" of a page. */
function counts(page: string): readonly { readonly whole: string; readonly count: number; readonly of: number }[] {
  return [...text(page).matchAll(/(\d+) of (\d+) \((?:under |over )?(\d+)%\)/g)].map(([whole, count, of]) => ({
    whole,
    count: Number(count),
    of: Number(of),
  }));
}

describe('numbers on the pages', () => {
  it.each(Object.entries(pages))('%s: every percent is that of its own count', (_name, page) => {
    const found = counts(page);
    expect(found.length).toBeGreaterThan(5);
    for (const { whole, count, of } of found) {
      const percent = Number(/\((?:under |over )?(\d+)%\)/.exec(whole)?.[1]);
      expect(Math.abs((100 * count) / of - percent), whole).toBeLessThanOrEqual(1);
      expect(count).toBeLessThanOrEqual(of);
    }
  });

  it('what the sheets count on film stands in the report with the same count', () => {
    const known = new Set(counts(pages.report).map(({ count, of }) => `${count} of ${of}`));
    const sheets = [...counts(pages['call sheet']), ...counts(pages['tip sheet'])];
    expect(sheets.length).toBeGreaterThan(10);
    for (const { count, of } of sheets) {
      const either = [`${count} of ${of}`, `${of - count} of ${of}`];
      expect(
        either.some((written) => known.has(written)),
        either[0],
      ).toBe(true);
    }
  });

  it('the mix of the report and the seconds of the call sheet agree within five points', () => {
    const menu = plan.menu;
    if (menu?.kind !== 'menu') throw new Error('the invented plan has a menu');
    const rows = [...pages['call sheet'].matchAll(/class="where">([^<]+)<\/th>(.*?)<\/tr>/gs)];
    const planned = rows.flatMap(([, label, row = '']) => {
      const id = menu.situations.find((situation) => situation.label === label)?.id;
      return [...row.matchAll(/<bdi>([^<]+)<\/bdi>.*?class="d">(\d\d)(?:-(\d\d))?</gs)].map(([, call, from, to]) => ({
        seconds: Number(to ?? from) - Number(from) + 1,
        share:
          menu.calls.find((entry) => entry.call === call)?.mix.find(({ situation }) => situation === id)?.share ?? 0,
      }));
    });
    expect(planned.length).toBeGreaterThan(10);
    for (const { seconds, share } of planned) expect(Math.abs(seconds / 60 - share)).toBeLessThanOrEqual(0.05);
  });
});
