import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type axe from 'axe-core';
import { build } from 'esbuild';
import { type Browser, chromium, type Page } from 'playwright-core';

/** Where a Chromium usually is; CHROMIUM_PATH goes first. */
const USUAL_PLACES = [
  process.env['CHROMIUM_PATH'] ?? '',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The browser found on this machine, or null; said loudly once when there is none. */
export const chromiumPath = USUAL_PLACES.find((path) => path !== '' && existsSync(path)) ?? null;
if (chromiumPath === null) {
  process.stderr.write(
    '\n*** NO CHROMIUM FOUND: the browser tests are SKIPPED. Install one or set CHROMIUM_PATH to run them. ***\n\n',
  );
}

/** Whether the PDF tools are on this machine; said loudly when they are not. */
export const hasPdfTools = spawnSync('pdftotext', ['-v']).error === undefined;
if (!hasPdfTools) {
  process.stderr.write('\n*** NO PDF TOOLS FOUND (poppler-utils): the print tests are SKIPPED. ***\n\n');
}

/** A browser that talks to nobody. */
export async function launchBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath ?? '',
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

/** The page script as the build makes it. */
export async function bundledPageScript(): Promise<string> {
  const result = await build({
    entryPoints: ['src/report/page-script/main.ts'],
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2020',
    write: false,
  });
  return result.outputFiles[0]?.text ?? '';
}

/** A folder for pages that is gone after the tests. */
export function pageFolder() {
  const folder = mkdtempSync(join(tmpdir(), 'pressure-plan-pages-'));
  return {
    path: (name: string) => join(folder, name),
    write: (name: string, text: string) => {
      writeFileSync(join(folder, name), text);
      return `file://${join(folder, name)}`;
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** What a page asked for and said while it was open. */
export interface Overheard {
  readonly page: Page;
  readonly requests: string[];
  readonly messages: string[];
}

/** Opens a page and listens to everything it asks for or says. */
export async function openPage(browser: Browser, address: string, look: Look = {}): Promise<Overheard> {
  const page = await browser.newPage({
    viewport: { width: look.width ?? 1280, height: 900 },
    colorScheme: look.scheme ?? 'light',
    javaScriptEnabled: look.script !== 'off',
  });
  const requests: string[] = [];
  const messages: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => messages.push(message.text()));
  page.on('pageerror', (error) => messages.push(error.message));
  page.on('dialog', (dialog) => {
    messages.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  if (look.before !== undefined) await page.addInitScript({ content: look.before });
  await page.goto(address);
  return { page, requests, messages };
}

/** What axe finds wrong on a page that was opened with its source as `before`: the rule, and the first places. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  return page.evaluate(async () => {
    const { axe: judge } = window as unknown as { axe: typeof axe };
    const { violations } = await judge.run(document, { resultTypes: ['violations'] });
    return violations.map(({ id, nodes }) => {
      const places = nodes.slice(0, 3).map(({ html }) => html.slice(0, 160));
      return `${id}: ${places.join(' | ')}`;
    });
  });
}

/** How a page is looked at. */
export interface Look {
  readonly width?: number;
  readonly scheme?: 'light' | 'dark';
  readonly script?: 'off';
  /** Script that runs before the page's own. */
  readonly before?: string;
}

/** Text of a PDF, page by page. */
export function pdfPages(path: string): readonly string[] {
  const { stdout } = spawnSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8', maxBuffer: 1 << 26 });
  return stdout.split('\f').slice(0, -1);
}

/** Grey values of one page of a PDF, 0 black to 255 white. */
export function pdfGreys(path: string, page: number): Uint8Array {
  const pages = ['-f', String(page), '-l', String(page)];
  const { stdout } = spawnSync('pdftoppm', ['-gray', '-r', '40', ...pages, path], { maxBuffer: 1 << 26 });
  const header = /^P5\s+\d+\s+\d+\s+\d+\s/.exec(stdout.subarray(0, 40).toString('latin1'))?.[0].length ?? 0;
  return new Uint8Array(stdout.subarray(header));
}
