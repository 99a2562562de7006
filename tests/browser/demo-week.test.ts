import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSeason, run } from '../end-to-end/program.ts';
import { chromiumPath, hasPdfTools, launchBrowser, openPage, pdfPages } from './browser.ts';

/** The pages the built program really writes for the demo week, by the pages of tests an invented plan may miss. */
describe.skipIf(chromiumPath === null || !hasPdfTools)('the demo week on paper', () => {
  let browser: Browser;
  let out: string;
  let season: string;

  beforeAll(async () => {
    season = demoSeason();
    const week = join(season, 'week-09');
    for (const command of ['report', 'script']) expect(run([command, week]).code).toBe(0);
    out = join(week, 'out');
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    rmSync(season, { recursive: true, force: true });
  });

  it.each([
    ['call-sheet', 1],
    ['wristband', 1],
    ['tip-sheet', 1],
    ['report', 8],
    ['script', 8],
  ])('%s keeps to %i sides at most', async (name, sides) => {
    const { page } = await openPage(browser, `file://${join(out, `${name}.html`)}`);
    const path = join(out, `${name}.pdf`);
    await page.pdf({ path, preferCSSPageSize: true });
    await page.close();
    expect(pdfPages(path).length).toBeLessThanOrEqual(sides);
  });

  it.each([1280, 820, 390])('no page is wider than a window of %i', async (width) => {
    for (const name of ['report', 'call-sheet', 'tip-sheet', 'script']) {
      const { page } = await openPage(browser, `file://${join(out, `${name}.html`)}`);
      await page.setViewportSize({ width, height: 900 });
      expect(await page.evaluate('document.documentElement.scrollWidth'), name).toBeLessThanOrEqual(width);
      await page.close();
    }
  });
});
