import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import type { Browser, BrowserContext, Page } from 'playwright-core';

/** The program and the desk as the build makes them, in a folder of their own. */
export function builtDesk() {
  const home = mkdtempSync(join(tmpdir(), 'desk-'));
  const dist = join(home, 'dist');
  const built = spawnSync(process.execPath, ['scripts/build.mjs', dist], { encoding: 'utf8' });
  if (!existsSync(join(dist, 'desk.html'))) throw new Error(`the desk was not built: ${built.stderr}`);
  cpSync('data/demo/season', join(home, 'season'), { recursive: true });
  return {
    home,
    address: `file://${join(dist, 'desk.html')}`,
    /** Runs the command line, standing in the folder that holds `season`. */
    run: (...args: string[]) => {
      const { status, stderr } = spawnSync(process.execPath, [resolve(dist, 'cli.js'), ...args], {
        cwd: home,
        encoding: 'utf8',
      });
      if (status !== 0) throw new Error(`${args.join(' ')}: ${stderr}`);
    },
    remove: () => rmSync(home, { recursive: true, force: true }),
  };
}

/** A desk in a browser of its own, cut off from every network, with what it asked for and complained of. */
export interface DeskPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Addresses asked for other than the page's own file, what it made itself and what the browser refused. */
  readonly requests: string[];
  readonly errors: string[];
}

/** The browser itself refused, and nothing was asked for: by the page's policy, or a file by a frame without an origin. */
const REFUSED = ['csp', 'other'];

/** Opens the desk offline. */
export async function openDesk(browser: Browser, address: string): Promise<DeskPage> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, acceptDownloads: true });
  await context.setOffline(true);
  const page = await context.newPage();
  const requests: string[] = [];
  const errors: string[] = [];
  page.on('request', (request) => {
    if (!/^(blob|about|data):/.test(request.url()) && request.url() !== address) requests.push(request.url());
  });
  page.on('requestfailed', (request) => {
    const asked = requests.indexOf(request.url());
    if (asked >= 0 && REFUSED.includes(request.failure()?.errorText ?? '')) requests.splice(asked, 1);
  });
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(address);
  return { page, context, requests, errors };
}

/** Opens the desk offline with the season in the built program's folder on it. */
export async function openDeskWithSeason(browser: Browser, built: ReturnType<typeof builtDesk>): Promise<DeskPage> {
  const desk = await openDesk(browser, built.address);
  await desk.page.getByLabel('Copy a season folder into this browser').setInputFiles(join(built.home, 'season'));
  await desk.page.getByRole('application').waitFor();
  return desk;
}

/** What stands in the browser's own storage at a path of a season. */
export async function storedFile(page: Page, season: string, path: string): Promise<string | null> {
  return page.evaluate(
    ([id, name]) =>
      new Promise<string | null>((resolvePromise, reject) => {
        const opening = indexedDB.open('pressure-plan');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result
            .transaction('files')
            .objectStore('files')
            .get([`browser ${id}`, name ?? '']);
          reading.onsuccess = () => {
            opening.result.close();
            resolvePromise(reading.result === undefined ? null : new TextDecoder().decode(reading.result));
          };
        };
      }),
    [season, path] as const,
  );
}

/** Brings a season into the browser as a .zip, and waits for the strip. */
export async function takeSeason(page: Page, name: string, files: Readonly<Record<string, string>>): Promise<void> {
  const zip = zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])));
  await page
    .getByLabel('Copy a season from a .zip')
    .setInputFiles({ name: `${name}.zip`, mimeType: 'application/zip', buffer: Buffer.from(zip) });
  await page.getByRole('application').waitFor();
}
