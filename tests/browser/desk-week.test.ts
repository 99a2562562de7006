import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { builtDesk, type DeskPage, openDesk, storedFile } from './desk-page.ts';
import { snapKeys } from './typed-game.ts';

describe.skipIf(chromiumPath === null)('a week at the desk', () => {
  let browser: Browser;
  let built: ReturnType<typeof builtDesk>;
  let desk: DeskPage;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });
  beforeEach(async () => {
    desk = await openDesk(browser, built.address);
  });
  afterEach(async () => {
    expect(desk.requests).toEqual([]);
    expect(desk.errors).toEqual([]);
    await desk.context.close();
  });

  /** From the start page to the strip, by keyboard alone. */
  async function newSeason(): Promise<void> {
    const { keyboard } = desk.page;
    await desk.page.getByLabel('First opponent').waitFor();
    for (let tabs = 0; tabs < 20 && !(await isAt('First opponent')); tabs++) await keyboard.press('Tab');
    await keyboard.type('Cedar Falls');
    await keyboard.press('Enter');
    await desk.page.getByRole('application', { name: 'Charting strip' }).waitFor();
  }

  function isAt(label: string): Promise<boolean> {
    return desk.page.evaluate(
      (words) => document.activeElement?.closest('label')?.textContent?.includes(words) ?? false,
      label,
    );
  }

  async function press(keys: readonly string[]): Promise<void> {
    for (const key of keys) {
      if (key === 'hold') {
        await desk.page.keyboard.down(' ');
        await desk.page.waitForTimeout(320);
        await desk.page.keyboard.up(' ');
      } else await desk.page.keyboard.press(key);
    }
  }

  /** Presses Tab until the button is reached, then Enter. */
  async function pressButton(name: string): Promise<void> {
    for (let tabs = 0; tabs < 60; tabs++) {
      const here = await desk.page.evaluate(() => document.activeElement?.textContent?.trim());
      if (here === name) return desk.page.keyboard.press('Enter');
      await desk.page.keyboard.press('Tab');
    }
    throw new Error(`no button ${name} within 60 tabs`);
  }

  it('goes from an empty browser to a printed call sheet by keyboard alone, a game of 60 snaps typed', async () => {
    await newSeason();
    const keys = snapKeys(60, 'plan');
    await press(keys);
    const perSnap = keys.length / 60;
    expect(perSnap).toBeLessThan(14);
    await desk.page.getByText('60 charted').waitFor();
    await desk.page.keyboard.press('Alt+Digit4');
    await pressButton('Work out the plan');
    await desk.page.getByText('Done.').waitFor({ timeout: 60_000 });
    await countPrints();
    await pressButton('Call sheet');
    await pressButton('Print this page');
    await desk.page.waitForFunction(() => (window as never as { printed: string[] }).printed.length > 0);
    const printed = await desk.page.evaluate(() => (window as never as { printed: string[] }).printed);
    expect(printed[0]).toContain('Cedar Falls');
    const sheet = (await storedFile(desk.page, 'season', 'week-01/opponent.csv')) ?? '';
    expect(sheet.split('\n').filter((line) => line.startsWith('Cedar Falls,'))).toHaveLength(60);
  });

  /** Notes the title of every frame that the page prints. */
  async function countPrints(): Promise<void> {
    await desk.page.evaluate(() => {
      const printed: string[] = [];
      Object.assign(window, { printed });
      const inside = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, 'contentWindow')?.get;
      Object.defineProperty(HTMLIFrameElement.prototype, 'contentWindow', {
        get(this: HTMLIFrameElement) {
          const frame = inside?.call(this);
          if (frame) frame.print = () => printed.push(frame.document.title);
          return frame;
        },
      });
    });
  }

  it('is reloaded in the middle of a snap and stands where it stood', async () => {
    await newSeason();
    await press([...snapKeys(3, 'plan'), 'm', '1']);
    await desk.page.getByText('Where the back stands').last().waitFor();
    const before = await desk.page.locator('.strip').textContent();
    await desk.page.waitForTimeout(100);
    await desk.page.reload();
    await desk.page.getByRole('application').waitFor();
    expect(await desk.page.locator('.strip').textContent()).toBe(before);
    await press(['b', 'r', '4', 'Space']);
    await desk.page.getByText('4 charted').waitFor();
  });

  it('says when the storage is full, keeps what was typed on the page, and writes it once there is room', async () => {
    await newSeason();
    await desk.page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      Object.assign(window, { room: () => (IDBObjectStore.prototype.put = put) });
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await press(snapKeys(1, 'plan'));
    await desk.page.getByRole('alert').getByText('no room left').waitFor();
    await desk.page.evaluate(() => (window as never as { room: () => void }).room());
    await press(snapKeys(1, 'plan', 1));
    await desk.page.getByText('2 charted').waitFor();
    await expect
      .poll(
        async () =>
          ((await storedFile(desk.page, 'season', 'week-01/opponent.csv')) ?? '').match(/^Cedar Falls,/gm)?.length,
      )
      .toBe(2);
  });

  it('lets one tab type at a time', async () => {
    await newSeason();
    await press(snapKeys(2, 'plan'));
    await desk.page.waitForTimeout(500);
    const second = await desk.context.newPage();
    await second.goto(built.address);
    await second.getByText('open in another tab').waitFor();
    await second.getByRole('button', { name: 'Take the pen' }).click();
    await second.getByText('2 charted').waitFor();
    await desk.page.getByText('open in another tab').waitFor();
    await second.close();
  });

  it('runs nothing that stands in a sheet or a settings file', async () => {
    const bad = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>';
    const evil = `offense,game,down,to_go,ball_on,play_kind,formation\r\n"${bad.replaceAll('"', '""')}","${bad.replaceAll('"', '""')}",1,10,own 25,run,"${bad.replaceAll('"', '""')}"\r\n`;
    const files = [
      { name: 'week-01/week.yaml', text: `opponent: '${bad}'\n` },
      { name: 'week-01/opponent.csv', text: evil },
      { name: 'week-01/out/report.html', text: `<script>top.hit=1</script>${bad}` },
    ];
    const { zipSync, strToU8 } = await import('fflate');
    const zip = zipSync(Object.fromEntries(files.map(({ name, text }) => [name, strToU8(text)])));
    await desk.page
      .getByLabel('Copy a season out of a .zip')
      .setInputFiles({ name: 'bad.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
    await desk.page.getByRole('application').waitFor();
    for (const view of [1, 2, 3, 4, 5, 6, 7, 8]) {
      await desk.page.keyboard.press(`Alt+Digit${view}`);
      await desk.page.waitForTimeout(120);
    }
    expect(await desk.page.evaluate(() => (window as never as { hit?: number }).hit)).toBeUndefined();
  });
});
