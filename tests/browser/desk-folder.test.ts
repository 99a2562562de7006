import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { press } from './desk-keys.ts';
import { builtDesk } from './desk-page.ts';
import { snapKeys } from './typed-game.ts';

/**
 * Folders to write into are real ones as browsers give them, in their origin private file system (WHATWG File System); a
 * page opened from disk is given none, so the same page stands at an address that leads nowhere. One is on the real disk.
 */
const ADDRESS = 'https://desk.invalid/';
const SHEET = 'week-01/opponent.csv';

const SOON = { timeout: 10_000 };

describe.skipIf(chromiumPath === null)('a season in a folder on disk', () => {
  let browser: Browser;
  let built: ReturnType<typeof builtDesk>;
  let context: BrowserContext;
  let page: Page;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });
  beforeEach(async () => {
    context = await browser.newContext();
    await context.setOffline(true);
    const body = readFileSync(new URL(built.address));
    await context.route(ADDRESS, (route) => route.fulfill({ contentType: 'text/html', body }));
    page = await context.newPage();
    await page.goto(ADDRESS);
    await put('season/week-01/week.yaml', 'opponent: Cedar Falls\n');
    await put('season/defense.yaml', readFileSync('data/demo/season/defense.yaml', 'utf8'));
  });
  afterEach(() => context.close());

  /** What another program does in the folder. */
  async function put(path: string, text: string): Promise<void> {
    await page.evaluate(
      async ([names, words]) => {
        let folder = await navigator.storage.getDirectory();
        for (const name of names.slice(0, -1)) folder = await folder.getDirectoryHandle(name, { create: true });
        const file = await folder.getFileHandle(names.at(-1) ?? '', { create: true });
        const stream = await file.createWritable();
        await stream.write(words);
        await stream.close();
      },
      [path.split('/'), text] as const,
    );
  }

  /** What stands in the folder; null where nothing does. */
  function found(path: string): Promise<string | null> {
    return page.evaluate(async (names) => {
      try {
        let folder = await navigator.storage.getDirectory();
        for (const name of names.slice(0, -1)) folder = await folder.getDirectoryHandle(name);
        return await (await (await folder.getFileHandle(names.at(-1) ?? '')).getFile()).text();
      } catch {
        return null;
      }
    }, path.split('/'));
  }

  const snapsIn = async (path: string) => ((await found(path)) ?? '').match(/^Cedar Falls,/gm)?.length ?? 0;

  /** The coach picks a folder. */
  async function openFolder(name = 'season'): Promise<void> {
    await page.evaluate((picked) => {
      const showDirectoryPicker = async () => (await navigator.storage.getDirectory()).getDirectoryHandle(picked);
      Object.assign(window, { showDirectoryPicker });
    }, name);
    await page.getByRole('button', { name: 'Work in a season folder' }).click();
    await page.getByRole('application').waitFor();
  }

  it('is charted into, planned, closed and opened again, all in its own files', async () => {
    await openFolder();
    await page.getByText('Saved in the folder').waitFor();
    await press(page, snapKeys(30, 'plan'));
    await expect.poll(() => snapsIn(`season/${SHEET}`), SOON).toBe(30);
    await page.keyboard.press('Alt+Digit4');
    await page.getByRole('button', { name: 'Work out the plan' }).click();
    await page.getByText('Done.').waitFor({ timeout: 60_000 });
    expect(JSON.parse((await found('season/week-01/out/report.json')) ?? '{}').film.snaps).toBe(30);
    expect(await found('season/week-01/out/call-sheet.html')).toContain('Cedar Falls');
    await page.reload();
    await page.getByText('in a folder on disk').waitFor();
    await page.getByRole('button', { name: 'season', exact: true }).click();
    await page.getByText('30 charted').waitFor();
  });

  it('that another program changes meanwhile loses neither side', async () => {
    await openFolder();
    await press(page, snapKeys(2, 'plan'));
    await expect.poll(() => snapsIn(`season/${SHEET}`), SOON).toBe(2);
    const theirs = `${await found(`season/${SHEET}`)}Cedar Falls,other,9\r\n`;
    await put(`season/${SHEET}`, theirs);
    await press(page, snapKeys(1, 'plan', 2));
    await page.getByText('was changed outside of this page while you charted').waitFor();
    expect(await found(`season/${SHEET}`)).toBe(theirs);
    await page.getByRole('button', { name: /Save mine as kept-/ }).click();
    await expect.poll(() => snapsIn('season/week-01/kept-opponent.csv'), SOON).toBe(3);
    expect(await found(`season/${SHEET}`)).toBe(theirs);
    await page.locator('.strip').getByText('3 charted').waitFor();
  });

  it('that changed while the coach was elsewhere is read again when he comes back, and said', async () => {
    await openFolder();
    await put('season/week-01/week.yaml', 'opponent: Pine Hollow\n');
    await page.evaluate(() => window.dispatchEvent(new Event('focus')));
    await page.getByText('Changed outside of this page, so read again: week-01/week.yaml').waitFor();
    await page.getByRole('heading', { name: 'Chart Pine Hollow' }).waitFor();
  });

  /** The coach picks a folder of the real disk: it is dropped on the page, since no picker can be driven. */
  async function openRealFolder(path: string): Promise<void> {
    await page.evaluate(() => {
      const dropped = new Promise((resolve) => {
        document.addEventListener('dragover', (event) => event.preventDefault());
        document.addEventListener('drop', (event) => {
          event.preventDefault();
          const item = event.dataTransfer?.items[0] as unknown as { getAsFileSystemHandle: () => unknown };
          resolve(item.getAsFileSystemHandle());
        });
      });
      Object.assign(window, { showDirectoryPicker: () => dropped });
    });
    const browserItself = await context.newCDPSession(page);
    const data = { items: [], files: [path], dragOperationsMask: 1 };
    for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
      await browserItself.send('Input.dispatchDragEvent', { type, x: 100, y: 100, data });
    await page.getByRole('button', { name: 'Work in a season folder' }).click();
  }

  it('on the real disk is read, and read again once another program changed or removed what is in it', async () => {
    const folder = join(built.home, 'season');
    await openRealFolder(folder);
    await page.getByRole('heading', { name: 'Chart Harrow Creek' }).waitFor();
    await page.getByText('Saved in the folder').waitFor();
    const week = join(folder, 'week-09', 'week.yaml');
    writeFileSync(week, readFileSync(week, 'utf8').replace('Harrow Creek', 'Pine Hollow'));
    await page.evaluate(() => window.dispatchEvent(new Event('focus')));
    await page.getByText('Changed outside of this page, so read again: week-09/week.yaml').waitFor();
    await page.getByRole('heading', { name: 'Chart Pine Hollow' }).waitFor();
    rmSync(join(folder, 'week-09', 'live.csv'));
    await page.evaluate(() => window.dispatchEvent(new Event('focus')));
    await page.getByText('Changed outside of this page, so read again: week-09/live.csv').waitFor();
  });

  /**
   * Simulated: a browser without a window asks nobody whether a page may write to the disk, and neither answers for the
   * coach nor takes an answer back (its debugging protocol knows no such permission). The error is the one that the
   * interface names.
   *
   * @see WICG, "File System Access" (2024), section 2.3: NotAllowedError where the permission is not granted; from memory
   */
  it('that the browser no longer lets the page into says so, keeps what is typed, and writes it when it may', async () => {
    await openFolder();
    await page.evaluate(() => {
      const { createWritable } = FileSystemFileHandle.prototype;
      Object.assign(window, { allow: () => Object.assign(FileSystemFileHandle.prototype, { createWritable }) });
      FileSystemFileHandle.prototype.createWritable = async () => {
        throw new DOMException('withdrawn', 'NotAllowedError');
      };
    });
    await press(page, snapKeys(1, 'plan'));
    await page.getByRole('alert').getByText('no longer lets this page into the folder').waitFor();
    await page.getByText('Not saved in the folder').waitFor();
    await page.evaluate(() => (window as never as { allow: () => void }).allow());
    await press(page, snapKeys(1, 'plan', 1));
    await expect.poll(() => snapsIn(`season/${SHEET}`), SOON).toBe(2);
  });

  it('that is gone is said to be gone, and what was typed is written when it is back', async () => {
    await openFolder();
    await page.evaluate(async () =>
      (await navigator.storage.getDirectory()).removeEntry('season', { recursive: true }),
    );
    await press(page, snapKeys(1, 'plan'));
    await page.getByRole('alert').getByText('the folder is gone').waitFor();
    await put('season/week-01/week.yaml', 'opponent: Cedar Falls\n');
    await press(page, snapKeys(1, 'plan', 1));
    await expect.poll(() => snapsIn(`season/${SHEET}`), SOON).toBe(2);
  });

  it('of the same name as another is another season', async () => {
    await put('others/season/week-03/week.yaml', 'opponent: Pine Hollow\n');
    await openFolder();
    await page.getByRole('button', { name: 'Close the season' }).click();
    await page.evaluate(() => {
      const others = async () => (await navigator.storage.getDirectory()).getDirectoryHandle('others');
      Object.assign(window, { showDirectoryPicker: async () => (await others()).getDirectoryHandle('season') });
    });
    await page.getByRole('button', { name: 'Work in a season folder' }).click();
    await page.getByRole('heading', { name: 'Chart Pine Hollow' }).waitFor();
    await page.getByRole('button', { name: 'Close the season' }).click();
    await expect.poll(() => page.getByText('in a folder on disk').count()).toBe(2);
    await page.getByRole('button', { name: 'season', exact: true }).first().click();
    await page.getByRole('heading', { name: 'Chart Cedar Falls' }).waitFor();
  });
});
