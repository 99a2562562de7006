import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { builtDesk, type DeskPage, openDeskWithSeason } from './desk-page.ts';

/** A page of a season that somebody put there: it tries to run something, to go elsewhere, and to reach the desk. */
const HOSTILE = `<!doctype html><title>x</title><meta http-equiv="refresh" content="0;url=https://elsewhere.invalid/">
<script>top.hit = 1</script><img src="https://elsewhere.invalid/i.png" onerror="top.hit = 1">
<body onload="top.hit = 1" onkeydown="top.hit = 1">
<p>Hostile <a href="javascript:void(top.hit=1)">one</a> <a href="https://elsewhere.invalid/" target="_top">two</a>
<a href="https://elsewhere.invalid/">three</a></p>
<form action="https://elsewhere.invalid/" target="_top"><button>four</button></form>
<iframe srcdoc="<script>top.hit = 1</script>"></iframe>`;

describe.skipIf(chromiumPath === null)('pages in view at the desk', () => {
  let browser: Browser;
  let built: ReturnType<typeof builtDesk>;
  let desk: DeskPage;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
    built.run('report', 'season/week-09');
    built.run('halftime', 'season/week-09', '--live', 'season/week-09/live.csv');
    writeFileSync(join(built.home, 'season/week-09/out/tip-sheet.html'), HOSTILE);
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });
  beforeEach(async () => {
    desk = await openDeskWithSeason(browser, built);
  });
  afterEach(async () => {
    expect({ requests: desk.requests, errors: desk.errors }).toEqual({ requests: [], errors: [] });
    await desk.context.close();
  });

  const inFrame = () => desk.page.frameLocator('.shelf iframe');
  /** What has the focus, on the desk itself. */
  const focus = () => desk.page.evaluate(() => document.activeElement?.textContent || document.activeElement?.tagName);
  async function clickInto(sheet: string): Promise<void> {
    await desk.page.keyboard.press('Alt+Digit4');
    await desk.page.getByRole('button', { name: sheet, exact: true }).click();
    await inFrame().getByText('Harrow Creek').first().click();
    expect(await focus()).toBe('IFRAME');
  }

  it.each(['Report', 'Call sheet'])('%s with the focus inside hears the keys of the desk', async (sheet) => {
    await clickInto(sheet);
    await desk.page.keyboard.press('Escape');
    await expect.poll(focus).toBe('Plan');
    await inFrame().getByText('Harrow Creek').first().click();
    await desk.page.keyboard.press('Alt+Digit3');
    await desk.page.getByRole('heading', { name: /\d+ calls/ }).waitFor();
  });

  it('beside the strip offers our calls by the numbers of the wristband, the carried ones first', async () => {
    await desk.page.keyboard.press('Alt+Digit4');
    await desk.page.getByRole('button', { name: 'Wristband' }).click();
    const wristband = ((await inFrame().locator('body').textContent()) ?? '').replaceAll(/\s+/g, ' ');
    await desk.page.keyboard.press('Alt+Digit6');
    await desk.page.getByText('Our call').first().waitFor();
    const offered = (await desk.page.locator('.choices button').allTextContents()).map((text) =>
      text.replaceAll(/\s+/g, ' '),
    );
    expect(offered).toHaveLength(28);
    for (const call of offered.slice(0, 9)) expect(wristband, call).toContain(call);
    expect(wristband).not.toContain(offered.at(-1)?.slice(2));
  });

  it('takes a snap typed while the focus stands in the plan beside the strip', async () => {
    await desk.page.keyboard.press('Alt+Digit6');
    await inFrame().getByText('Harrow Creek').first().click();
    expect(await focus()).toBe('IFRAME');
    await desk.page.keyboard.press('1');
    await desk.page.keyboard.press('m');
    const stops = desk.page.locator('.stops li');
    await expect.poll(() => stops.filter({ hasText: 'Hash' }).locator('b').textContent()).toBe('middle');
    expect(await stops.filter({ hasText: 'Our call' }).locator('b').textContent()).not.toBe('·');
  });

  it('that somebody else put into the season runs nothing, asks for nothing and goes nowhere', async () => {
    await desk.page.keyboard.press('Alt+Digit4');
    await desk.page.getByRole('button', { name: 'Tip sheet' }).click();
    await inFrame().getByText('Hostile').waitFor();
    await desk.page.evaluate(() => {
      for (const link of document.querySelector('iframe')?.contentDocument?.querySelectorAll('a, button') ?? [])
        (link as HTMLElement).click();
    });
    for (const link of ['one', 'two', 'three', 'four']) {
      const there = inFrame().getByText(link, { exact: true });
      if (await there.isVisible()) await there.click({ timeout: 2000 });
    }
    await desk.page.keyboard.press('x');
    await desk.page.waitForTimeout(300);
    expect(await desk.page.evaluate(() => (window as never as { hit?: number }).hit)).toBeUndefined();
    expect(desk.page.url()).toBe(built.address);
    await desk.page.getByRole('heading', { name: /The plan for/ }).waitFor();
  });

  it('that says a key that is none of the desk’s changes nothing', async () => {
    await desk.page.keyboard.press('Alt+Digit4');
    await inFrame().getByText('Harrow Creek').first().waitFor();
    await desk.page.evaluate(() => window.postMessage({ keyForDesk: 'Digit3' }, '*'));
    const [, frame] = desk.page.frames();
    await frame?.evaluate(() => {
      for (const keyForDesk of ['KeyQ', 7, null, { code: 'Digit3' }]) window.parent.postMessage({ keyForDesk }, '*');
    });
    await desk.page.waitForTimeout(200);
    await desk.page.getByRole('heading', { name: /The plan for/ }).waitFor();
  });
});
