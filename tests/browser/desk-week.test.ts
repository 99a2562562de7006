import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { STARTER_DEFENSE } from '../../src/ingest/starter-defense.ts';
import { chromiumPath, launchBrowser } from './browser.ts';
import { newSeason, press, pressButton, watchPrinter } from './desk-keys.ts';
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

  it('goes from an empty browser to a printed call sheet by keyboard alone, a game of 60 snaps typed', async () => {
    await newSeason(desk.page);
    const keys = snapKeys(60, 'plan');
    await press(desk.page, keys);
    const perSnap = keys.length / 60;
    expect(perSnap).toBeLessThan(14);
    await desk.page.getByText('60 charted').waitFor();
    await desk.page.keyboard.press('Alt+Digit4');
    await pressButton(desk.page, 'Work out the plan');
    await desk.page.getByText('Done.').waitFor({ timeout: 60_000 });
    const printed = await watchPrinter(desk.page);
    await pressButton(desk.page, 'Call sheet');
    await pressButton(desk.page, 'Print this page');
    expect((await printed())[0]?.title).toContain('Cedar Falls');
    for (const sheet of ['Tip sheet', 'Wristband']) {
      await pressButton(desk.page, sheet);
      await pressButton(desk.page, 'Print this page');
      expect((await printed())[0]?.title, sheet).toMatch(
        new RegExp(`${sheet}.*Cedar Falls|Cedar Falls.*${sheet}`, 'i'),
      );
    }
    const sheet = (await storedFile(desk.page, 'season', 'week-01/opponent.csv')) ?? '';
    expect(sheet.split('\n').filter((line) => line.startsWith('Cedar Falls,'))).toHaveLength(60);
  });

  it('is reloaded in the middle of a snap and stands where it stood', async () => {
    await newSeason(desk.page);
    await press(desk.page, [...snapKeys(3, 'plan'), 'm', '1']);
    await desk.page.getByText('Where the back stands').last().waitFor();
    const before = await desk.page.locator('.strip').textContent();
    await desk.page.reload();
    await desk.page.getByRole('application').waitFor();
    expect(await desk.page.locator('.strip').textContent()).toBe(before);
    await press(desk.page, ['b', 'r', '4', 'Space']);
    await desk.page.getByText('4 charted').waitFor();
  });

  it('says when the storage is full, keeps what was typed on the page, and writes it once there is room', async () => {
    await newSeason(desk.page);
    await desk.page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      Object.assign(window, { room: () => (IDBObjectStore.prototype.put = put) });
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await press(desk.page, snapKeys(1, 'plan'));
    await desk.page.getByRole('alert').getByText('no room left').waitFor();
    await desk.page.evaluate(() => (window as never as { room: () => void }).room());
    await press(desk.page, snapKeys(1, 'plan', 1));
    await desk.page.getByText('2 charted').waitFor();
    await expect
      .poll(
        async () =>
          ((await storedFile(desk.page, 'season', 'week-01/opponent.csv')) ?? '').match(/^Cedar Falls,/gm)?.length,
      )
      .toBe(2);
  });

  it('lets one tab type at a time', async () => {
    await newSeason(desk.page);
    await press(desk.page, snapKeys(2, 'plan'));
    await desk.page.waitForTimeout(500);
    const second = await desk.context.newPage();
    await second.goto(built.address);
    await second.getByText('open in another tab').waitFor();
    await second.getByRole('button', { name: 'Type here instead' }).click();
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
      { name: 'defense.yaml', text: STARTER_DEFENSE.replace('name: Base,', `name: '${bad}',`) },
      { name: 'week-01/out/report.html', text: `<script>top.hit=1</script>${bad}` },
    ];
    const { zipSync, strToU8 } = await import('fflate');
    const zip = zipSync(Object.fromEntries(files.map(({ name, text }) => [name, strToU8(text)])));
    await desk.page
      .getByLabel('Copy a season from a .zip')
      .setInputFiles({ name: 'bad.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
    await desk.page.getByRole('application').waitFor();
    for (const view of [1, 2, 3, 4, 5, 6, 7, 8]) {
      await desk.page.keyboard.press(`Alt+Digit${view}`);
      await desk.page.waitForTimeout(120);
    }
    await desk.page.keyboard.press('Alt+Digit3');
    await desk.page.getByText('11 calls').waitFor();
    await desk.page.getByRole('button', { name: 'Change it: <img' }).click();
    await desk.page.getByRole('heading', { name: '<img' }).waitFor();
    await desk.page.keyboard.press('Alt+Digit2');
    const sheet = { name: `${bad.replace('/', '')}.csv`, mimeType: 'text/csv', buffer: Buffer.from(evil) };
    await desk.page.getByLabel('A sheet of their film').setInputFiles(sheet);
    await desk.page.getByText(/snaps? read/).waitFor();
    await desk.page.keyboard.press('Alt+Digit4');
    await desk.page.getByText('Settings of the week').click();
    await desk.page.getByRole('button', { name: 'The menu' }).click();
    await desk.page.getByRole('button', { name: `Must carry: ${bad}` }).click();
    await desk.page.getByRole('button', { name: 'Work out the plan' }).click();
    await desk.page.getByText('Done.').or(desk.page.locator('main .problem')).first().waitFor({ timeout: 60_000 });
    expect(await desk.page.evaluate(() => (window as never as { hit?: number }).hit)).toBeUndefined();
  });
});
