import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../src/game/film.ts';
import { halftimeUpdate } from '../../src/pressure/halftime/halftime.ts';
import { practiceScript } from '../../src/pressure/practice/script.ts';
import { renderHalftime } from '../../src/report/halftime/render-halftime.ts';
import { renderScript } from '../../src/report/practice/render-script.ts';
import { renderCallSheet } from '../../src/report/render-call-sheet.ts';
import { renderReport } from '../../src/report/render-report.ts';
import { renderTipSheet } from '../../src/report/render-tip-sheet.ts';
import { renderWristband } from '../../src/report/render-wristband.ts';
import { numberedCalls } from '../../src/report/sheet/call-numbers.ts';
import { percent } from '../../src/report/words/percent.ts';
import { situationLabel } from '../../src/report/words/situation-label.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
if (plan.menu?.kind !== 'menu' || plan.library === null) throw new Error('the invented plan has calls and a menu');
const { menu, library } = plan;
const film = filmFromRecords([{ play_kind: 'run' }, { play_kind: 'quick' }, { play_kind: 'dropback' }]);
const script = practiceScript({ ...plan, library, menu, chart: film });
const head = { opponent: plan.opponent, us: plan.us, date: plan.date, invented: true };
const update = halftimeUpdate({ plan, live: filmFromRecords([{ down: 1, to_go: 10, play_kind: 'run' }]), film: null });
const pages = {
  report: await renderReport(plan, { full: true }),
  'call sheet': await renderCallSheet(plan),
  'tip sheet': await renderTipSheet(plan),
};
const [wristband, scriptPage, halftime] = [
  await renderWristband(plan),
  await renderScript(script, head),
  await renderHalftime(update, 0),
];

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
    const rows = [...pages['call sheet'].matchAll(/class="where">([^<]+)<\/th>(.*?)<\/tr>/gs)];
    const planned = rows.flatMap(([, label, row = '']) => {
      const id = menu.situations.find((situation) => situationLabel(situation.id) === label)?.id;
      return [...row.matchAll(/<bdi>([^<]+)<\/bdi>.*?class="d">(\d\d)(?:-(\d\d))?</gs)].map(([, call, from, to]) => ({
        seconds: Number(to ?? from) - Number(from) + 1,
        share:
          menu.calls.find((entry) => entry.call === call)?.mix.find(({ situation }) => situation === id)?.share ?? 0,
      }));
    });
    expect(planned.length).toBeGreaterThan(10);
    for (const { seconds, share } of planned) expect(Math.abs(seconds / 60 - share)).toBeLessThanOrEqual(0.05);
  });

  it('the call sheet and the wristband number the calls alike, and name the same ones', () => {
    const numbered = numberedCalls(plan).map(({ number, call }) => ({ number, name: call.name }));
    expect(numbered.length).toBeGreaterThan(5);
    for (const { number, name } of numbered) {
      const written = new RegExp(`(^|\\s)${number} ${name}(\\s|$)`);
      expect(text(pages['call sheet']), `${number} ${name}`).toMatch(written);
      expect(text(wristband), `${number} ${name}`).toMatch(written);
    }
  });

  it('the report’s reps a call are those the script says the menu asks for', () => {
    for (const { call, asked } of script.calls.filter(({ family }) => family !== 'base')) {
      expect(asked).toBe(menu.calls.find((entry) => entry.call === call)?.reps);
      const row = new RegExp(`id="reps-table"[\\s\\S]*?>${call}</bdi></th>.*?<td class="n"[^>]*>${asked}</td>`);
      expect(pages.report, call).toMatch(row);
    }
    expect(text(scriptPage)).toContain(`${script.reps.length} reps`);
  });

  it('halftime’s Sunday is the report’s: shares of the forecast and calls planned', () => {
    const all = plan.forecast.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
    for (const { share } of all?.classes ?? []) expect(text(halftime)).toContain(percent(share));
    for (const { call, planned } of update.calls)
      expect(planned).toBe(menu.calls.find((entry) => entry.call === call)?.expectedCalls);
  });
});
