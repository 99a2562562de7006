import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CallLibrary } from '../../src/game/call-library.ts';
import { checkLibrary } from '../../src/pressure/soundness/soundness.ts';
import { renderCalls } from '../../src/report/render-calls.ts';
import { demoCall, demoDefense } from '../pressure/demo-defense.ts';
import { axeFaults, chromiumPath, hasPdfTools, launchBrowser, openPage, pageFolder, pdfPages } from './browser.ts';
import { chartTextProblems, contrastProblems } from './page-measures.ts';

const folder = pageFolder();
let browser: Browser;
let address: string;
let hostile: string;

/** A library of one unsound call and one sound one, with names that are long, or markup. */
function hostileLibrary(): CallLibrary {
  const [one, other] = [demoCall('Latch Lock'), demoCall('Hackle Extra')];
  const unsound = { ...one, name: '<img src=x onerror=alert(1)>', cover: one.cover.slice(1) };
  return { ...demoDefense, calls: [unsound, { ...other, name: 'Hackle '.repeat(12), coverage: 'x'.repeat(80) }] };
}

const page = (library: CallLibrary) => renderCalls(library, checkLibrary(library));

describe.skipIf(chromiumPath === null)('the page of calls in a browser', () => {
  beforeAll(async () => {
    address = folder.write('calls.html', await page(demoDefense));
    hostile = folder.write('hostile.html', await page(hostileLibrary()));
    browser = await launchBrowser();
  });

  afterAll(async () => {
    await browser?.close();
    folder.remove();
  });

  it.each(['light', 'dark'] as const)(
    '%s: asks for nothing but itself, says nothing, and axe finds no fault',
    async (scheme) => {
      for (const target of [address, hostile]) {
        const { page, requests, messages } = await openPage(browser, target, { scheme, before: axe.source });
        expect(await axeFaults(page)).toEqual([]);
        expect([requests, messages]).toEqual([[target], []]);
        await page.close();
      }
    },
  );

  it.each(['light', 'dark'] as const)('%s: the letters of the men stand out from the field', async (scheme) => {
    // WCAG 2.2, 1.4.3 for text; axe cannot judge text in SVG.
    const { page } = await openPage(browser, address, { scheme });
    const { problems, checked } = await page.evaluate(contrastProblems);
    expect(checked).toBe(11 * demoDefense.calls.length);
    expect(problems).toEqual([]);
    await page.close();
  });

  it('fits its window and keeps every text inside its drawing, with hostile names too', async () => {
    for (const target of [address, hostile]) {
      for (const width of [1280, 820, 390]) {
        const { page } = await openPage(browser, target, { width });
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        expect(await page.evaluate(chartTextProblems, '0')).toEqual([]);
        await page.close();
      }
    }
  });

  it('draws every call where a coach sees it, and is whole without script', async () => {
    const { page } = await openPage(browser, address, { script: 'off' });
    const drawings = page.locator('svg.field');
    expect(await drawings.count()).toBe(demoDefense.calls.length);
    for (const drawing of await drawings.all()) expect((await drawing.boundingBox())?.width ?? 0).toBeGreaterThan(200);
    await page.close();
  });

  it.skipIf(!hasPdfTools)('prints every call once', async () => {
    const { page } = await openPage(browser, address);
    const path = folder.path('calls.pdf');
    await page.pdf({ path, preferCSSPageSize: true });
    const printed = pdfPages(path).join('\n');
    for (const { name } of demoDefense.calls) expect(printed).toContain(name);
    await page.close();
  });
});
