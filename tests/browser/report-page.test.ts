import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderReport } from '../../src/report/render-report.ts';
import { asForecast, supposeScores, type WhatIfModel } from '../../src/report/view/what-if.ts';
import { whatIfModel } from '../../src/report/view/what-if-model.ts';
import { signed } from '../../src/report/words/number-words.ts';
import { hostilePlan } from '../report/hostile-plan.ts';
import { inventedPlan } from '../report/invented-plan.ts';
import { axeFaults, bundledPageScript, chromiumPath, launchBrowser, openPage, pageFolder } from './browser.ts';
import { chartTextProblems, contrastProblems, overflowingScrollers } from './page-measures.ts';

const folder = pageFolder();
const plan = inventedPlan();
let browser: Browser;
let address: string;
let hostile: string;

describe.skipIf(chromiumPath === null)('the report in a browser', () => {
  beforeAll(async () => {
    const script = await bundledPageScript();
    address = folder.write('report.html', await renderReport(plan, { script }));
    hostile = folder.write('hostile.html', await renderReport(hostilePlan(), { script }));
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    folder.remove();
  });

  it.each(['light', 'dark'] as const)(
    '%s: asks for nothing but itself, says nothing, and axe finds no fault',
    async (scheme) => {
      const { page, requests, messages } = await openPage(browser, address, { scheme, before: axe.source });
      expect(await axeFaults(page)).toEqual([]);
      expect(requests).toEqual([address]);
      expect(messages).toEqual([]);
      await page.close();
    },
  );

  it.each(['light', 'dark'] as const)(
    '%s: chart text has a contrast of 4.5 to 1 on whatever lies under it',
    async (scheme) => {
      // WCAG 2.2, 1.4.3 for text; axe cannot judge text in SVG.
      const { page } = await openPage(browser, address, { scheme });
      const { problems, checked } = await page.evaluate(contrastProblems);
      expect(checked).toBeGreaterThan(80);
      expect(problems).toEqual([]);
      await page.close();
    },
  );

  it('keeps every text inside its drawing, also in a font 15% wider, at three widths', async () => {
    for (const width of [1280, 820, 390]) {
      const { page } = await openPage(browser, address, { width });
      expect(await page.evaluate(chartTextProblems, '0')).toEqual([]);
      // Letters are about 0.53 em wide on average, so 0.08 em between them is 15% more.
      expect(await page.evaluate(chartTextProblems, '0.08em')).toEqual([]);
      await page.close();
    }
  });

  it('fits 820 and 390 pixels without scrolling sideways, with hostile names too', async () => {
    for (const target of [address, hostile]) {
      for (const width of [820, 390]) {
        const { page } = await openPage(browser, target, { width });
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide).toBeLessThanOrEqual(width);
        await page.close();
      }
    }
  });

  it('stays whole under hostile names', async () => {
    const { page, requests, messages } = await openPage(browser, hostile);
    expect(
      await page.evaluate(() => [
        document.scripts.length,
        document.images.length,
        document.querySelectorAll('main > section').length,
      ]),
    ).toEqual([1, 0, 8]);
    expect(requests).toEqual([hostile]);
    expect(messages).toEqual([]);
    expect(await page.evaluate(chartTextProblems, '0')).toEqual([]);
    await page.close();
  });

  it('is complete without script: every section, table and drawing, no dead control', async () => {
    const { page } = await openPage(browser, address, { script: 'off' });
    expect(await page.locator('main > section').count()).toBe(8);
    expect(await page.locator('.strips .draw').count()).toBeGreaterThan(20);
    expect(await page.locator('.drawing svg').count()).toBe(1);
    expect(await page.locator('table.grid').count()).toBe(4);
    expect(await page.locator('button, select, input').count()).toBe(0);
    expect(await page.locator('#what-if').isVisible()).toBe(false);
    await page.close();
  });

  it('can be walked by keyboard: skip link, contents, buttons, sorting by the heading', async () => {
    const { page } = await openPage(browser, address);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the plan');
    const seen: string[] = [];
    for (let i = 0; i < 12; i++) {
      await page.keyboard.press('Tab');
      seen.push(await page.evaluate(() => `${document.activeElement?.tagName} ${document.activeElement?.textContent}`));
    }
    expect(seen).toContain('A Calls');
    expect(seen).toContain('BUTTON Print everything');
    await page.locator('details').evaluateAll((all) => {
      for (const details of all) (details as HTMLDetailsElement).open = true;
    });
    await page.locator('#race-table thead button').nth(2).focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('#race-table thead th[aria-sort]').getAttribute('aria-sort')).toBe('ascending');
    const home = await page
      .locator('#race-table tbody td:nth-child(3)')
      .evaluateAll((cells) => cells.map((cell) => Number((cell as HTMLElement).dataset['v'])));
    expect(home.length).toBeGreaterThan(4);
    expect(home).toEqual([...home].sort((a, b) => a - b));
    await page.close();
  });

  it('finds rows by words typed, and says how many', async () => {
    const { page } = await openPage(browser, address);
    await page
      .locator('#answers-by-situation details')
      .evaluate((details) => ((details as HTMLDetailsElement).open = true));
    await page.locator('#answers-by-situation input').fill('3rd screen');
    expect(await page.locator('#answers-by-situation-table tbody tr:visible').count()).toBe(3);
    expect(await page.locator('#answers-by-situation .find span').textContent()).toBe('3 of 91 rows');
    await page.close();
  });

  it('what-if starts from the plan and re-ranks our calls as the plan would', async () => {
    const model = whatIfModel(plan) as WhatIfModel;
    const { page } = await openPage(browser, address);
    for (const id of ['all', 'third_long']) {
      await page.locator('#what-if select').selectOption(id);
      const situation = model.situations.find((entry) => entry.id === id);
      if (!situation) throw new Error('the situation is in the model');
      const start = asForecast(model, situation);
      const written = (supposed: typeof start) =>
        supposeScores(model, situation, supposed).map((score) => [score.call, signed(score.points)]);
      expect(await ranked(page)).toEqual(written(start));
      await page.locator('#what-if input[type=range]').nth(0).fill('20');
      await page.locator('#what-if input[type=range]').nth(1).fill('60');
      await page.locator('#what-if input[type=range]').nth(3).fill('50');
      expect(await ranked(page)).toEqual(written({ ...start, run: 0.2, screen: 0.6, trust: 0.5 }));
    }
    await page.close();
  });

  it('opens the folded part a link points into', async () => {
    const { page } = await openPage(browser, `${address}#fates-table`);
    expect(await page.locator('#fates-table').isVisible()).toBe(true);
    await page.close();
  });

  it('turns dark and light by its own switch', async () => {
    const { page } = await openPage(browser, address);
    const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    expect(await paper()).toBe('rgb(255, 255, 255)');
    await page.getByRole('button', { name: 'Dark page' }).click();
    expect(await paper()).toBe('rgb(22, 22, 22)');
    await page.close();
  });

  it('on paper lets no table or drawing run over the edge', async () => {
    // Letter landscape less half an inch at either side is 10 inches, 960 CSS pixels.
    const { page } = await openPage(browser, address, { width: 960 });
    await page.emulateMedia({ media: 'print' });
    expect(await page.evaluate(overflowingScrollers)).toEqual([]);
    await page.close();
  });
});

async function ranked(page: {
  locator: (selector: string) => { evaluateAll: <T>(read: (rows: Element[]) => T) => Promise<T> };
}) {
  return page
    .locator('#what-if-table tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) => [(row as HTMLElement).dataset['key'], row.querySelector('td')?.textContent ?? '']),
    );
}
