import type { AxeResults } from 'axe-core';
import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { builtDesk, type DeskPage, openDesk } from './desk-page.ts';

const VIEWS = ['Chart', 'Sheets', 'Calls', 'Plan', 'Practice', 'Tonight', 'Monday', 'Season'];

describe.skipIf(chromiumPath === null)('every view of the desk', () => {
  let browser: Browser;
  let built: ReturnType<typeof builtDesk>;
  let desk: DeskPage;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
    desk = await openDesk(browser, built.address);
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });

  /** What axe finds wrong on the page as it stands, and whether the page is wider than the window. */
  async function faults(width: number): Promise<string[]> {
    const { violations }: AxeResults = await desk.page.evaluate(
      `(() => { ${axe.source}; return window.axe.run(document, { iframes: false }); })()`,
    );
    const wide = await desk.page.evaluate(() => document.documentElement.scrollWidth);
    return [...violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`), ...(wide > width ? [`${wide} wide`] : [])];
  }

  it.each([
    [1280, 'light'],
    [820, 'dark'],
    [390, 'light'],
    [1280, 'dark'],
    [390, 'dark'],
    [820, 'light'],
  ] as const)('passes axe and fits %i pixels in %s', async (width, colorScheme) => {
    await desk.page.setViewportSize({ width, height: 900 });
    await desk.page.emulateMedia({ colorScheme });
    const found: string[] = [];
    const demo = desk.page.getByRole('button', { name: 'Open the invented demo' });
    if (await demo.isVisible()) {
      found.push(...(await faults(width)));
      await demo.click();
      await desk.page.getByRole('application').waitFor();
    }
    for (const view of VIEWS) {
      await desk.page.getByRole('button', { name: view, exact: true }).click();
      await desk.page.locator('h1').waitFor();
      found.push(...(await faults(width)).map((fault) => `${view}: ${fault}`));
    }
    expect(found).toEqual([]);
    expect(desk.errors).toEqual([]);
  });
});
