// The desk in headless Chromium, in one run: first view against an empty page of the same size, a key on screen with 5,000
// snaps charted against a key on that empty page, and the plan in the worker against the command line's. With the word
// `keys` the keys alone, and with another desk.html behind it both desks in turn.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { chromium, type Page } from 'playwright-core';
import { type KeyPage, keyRuns } from './desk-keys.ts';
import { predictedSeconds } from './keystroke-model.ts';
import { machineLine } from './measure.ts';

const SNAPS = 5000;
const RUNS = 5;
const home = mkdtempSync(join(tmpdir(), 'desk-bench-'));
const dist = join(home, 'dist');
execFileSync('node', ['scripts/build.mjs', dist], { stdio: 'inherit' });
cpSync('data/demo/season', join(home, 'season'), { recursive: true });
const desk = readFileSync(join(dist, 'desk.html'), 'utf8');
const empty = join(home, 'empty.html');
writeFileSync(
  empty,
  `<!doctype html><script type="text/plain">${'x'.repeat(desk.length)}</script><p>empty</p>
<script>let keys = 0; onkeydown = () => { document.querySelector('p').textContent = ++keys; };</script>`,
);

const [only, other] = process.argv.slice(2);
const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});
console.log(machineLine());
console.log(`desk.html: ${(desk.length / 1e6).toFixed(2)} MB with the solver inside`);
if (only !== 'keys') await start();
await keys();
if (only !== 'keys') await plan();
console.log(`seconds a snap by the keystroke-level model, a practiced hand to a learner:`);
for (const line of predictedSeconds()) console.log(`  ${line}`);
await browser.close();
rmSync(home, { recursive: true, force: true });

/** Milliseconds from the beginning of the load to the first view, the median of nine. */
async function firstView(path: string, selector: string): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < 9; i++) {
    const page = await (await browser.newContext()).newPage();
    await page.goto(`file://${path}`);
    await page.waitForSelector(selector);
    times.push(await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0));
    await page.context().close();
  }
  return median(times);
}

async function start(): Promise<void> {
  const [first, blank] = [await firstView(join(dist, 'desk.html'), 'h1'), await firstView(empty, 'p')];
  console.log(`first view, desk to an empty page of the same size: ${(first / blank).toFixed(2)} (aim 3)`);
}

async function keys(): Promise<void> {
  const desks = [join(dist, 'desk.html'), ...(other === undefined ? [] : [resolve(other)])];
  const pages: KeyPage[] = desks.map((path) => ({ name: path, open: (page) => openLongSheet(page, path) }));
  const blank: KeyPage = { name: 'an empty page that shows a number', open: (page) => openEmpty(page) };
  console.log(`key to screen, ${SNAPS} snaps charted:`);
  await keyRuns(browser, [...pages, blank], RUNS);
}

async function openEmpty(page: Page): Promise<void> {
  await page.goto(`file://${empty}`);
}

async function openLongSheet(page: Page, path: string): Promise<void> {
  const files = { 'week-01/week.yaml': 'opponent: Cedar Falls\n', 'week-01/opponent.csv': longSheet() };
  const zip = zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));
  await page.goto(`file://${path}`);
  await page
    .getByLabel('Copy a season from a .zip')
    .setInputFiles({ name: 'season.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
  await page.getByText(`${SNAPS} charted`).waitFor();
}

/** A sheet of snaps that follow from one another, as the desk writes it. */
function longSheet(): string {
  const rows = Array.from({ length: SNAPS }, (_, i) => {
    const [game, at] = [Math.floor(i / 60) + 1, i % 60];
    return `Cedar Falls,game ${game},${at + 1},${Math.floor(at / 3) + 1},${(at % 3) + 1},${10 - 3 * (at % 3)},own ${25 + 3 * (at % 3)},run,3,rush`;
  });
  return `offense,game,snap,drive,down,to_go,ball_on,play_kind,gain,result\r\n${rows.join('\r\n')}\r\n`;
}

async function plan(): Promise<void> {
  const page = await (await browser.newContext()).newPage();
  await page.goto(`file://${join(dist, 'desk.html')}`);
  await page.getByLabel('Copy a season folder into this browser').setInputFiles(join(home, 'season'));
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  const ratios: number[] = [];
  for (let i = 0; i < 3; i++) {
    const began = performance.now();
    await page.getByRole('button', { name: 'Work out the plan' }).click();
    await page.getByText('Done.').or(page.locator('main .problem')).first().waitFor({ timeout: 120_000 });
    if (!(await page.getByText('Done.').isVisible())) throw new Error((await page.locator('main').textContent()) ?? '');
    const inDesk = performance.now() - began;
    await page.getByRole('button', { name: 'Chart', exact: true }).click();
    await page.getByRole('button', { name: 'Plan', exact: true }).click();
    const then = performance.now();
    execFileSync('node', [join(dist, 'cli.js'), 'report', join(home, 'season', 'week-09')], { stdio: 'ignore' });
    ratios.push(inDesk / (performance.now() - then));
  }
  console.log(`the demo week's plan, desk to command line, by the clock: ${median(ratios).toFixed(2)} (aim 1.5)`);
  await page.context().close();
}

function median(values: readonly number[]): number {
  return [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? 0;
}
