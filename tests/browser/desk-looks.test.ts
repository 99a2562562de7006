import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { looksWrong } from './desk-axe.ts';
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
      found.push(...(await looksWrong(desk.page, width)));
      await demo.click();
      await desk.page.getByRole('application').waitFor();
    }
    for (const view of VIEWS) {
      await desk.page.getByRole('button', { name: view, exact: true }).click();
      await desk.page.locator('h1').waitFor();
      found.push(...(await looksWrong(desk.page, width)).map((fault) => `${view}: ${fault}`));
    }
    await desk.page.getByRole('button', { name: 'Calls', exact: true }).click();
    await desk.page
      .getByRole('button', { name: /New one like it/ })
      .first()
      .click();
    await desk.page.getByText('Our eleven').waitFor();
    found.push(...(await looksWrong(desk.page, width)).map((fault) => `a call: ${fault}`));
    await desk.page.getByRole('button', { name: 'Plan', exact: true }).click();
    await desk.page.getByText('Settings of the week').click();
    for (const part of await desk.page.locator('.settings .tabs button').all()) {
      await part.click();
      const words = await part.textContent();
      found.push(...(await looksWrong(desk.page, width)).map((fault) => `settings, ${words}: ${fault}`));
    }
    expect(found).toEqual([]);
    expect(desk.errors).toEqual([]);
  });
});
