// The desk in headless Chromium, in one run: first view against an empty page of the same size, a key on screen with 5,000
// snaps charted, and the plan in the worker against the command line's. Prints ratios, and frames for the keys.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { machineLine } from './measure.ts';

const SNAPS = 5000;
const KEYS = 300;
const home = mkdtempSync(join(tmpdir(), 'desk-bench-'));
const dist = join(home, 'dist');
execFileSync('node', ['scripts/build.mjs', dist], { stdio: 'inherit' });
cpSync('data/demo/season', join(home, 'season'), { recursive: true });
const desk = readFileSync(join(dist, 'desk.html'), 'utf8');
const empty = join(home, 'empty.html');
writeFileSync(empty, `<!doctype html><script type="text/plain">${'x'.repeat(desk.length)}</script><p>empty</p>`);

const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});
console.log(machineLine());
console.log(`desk.html: ${(desk.length / 1e6).toFixed(2)} MB with the solver inside`);
await start();
await keys();
await plan();
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
  const [one, other] = [await firstView(join(dist, 'desk.html'), 'h1'), await firstView(empty, 'p')];
  console.log(`first view, desk to an empty page of the same size: ${(one / other).toFixed(2)} (aim 3)`);
}

/** A sheet of snaps that follow from one another, as the desk writes it. */
function longSheet(): string {
  const rows = Array.from({ length: SNAPS }, (_, i) => {
    const [game, at] = [Math.floor(i / 60) + 1, i % 60];
    return `Cedar Falls,game ${game},${at + 1},${Math.floor(at / 3) + 1},${(at % 3) + 1},${10 - 3 * (at % 3)},own ${25 + 3 * (at % 3)},run,3,rush`;
  });
  return `offense,game,snap,drive,down,to_go,ball_on,play_kind,gain,result\r\n${rows.join('\r\n')}\r\n`;
}

/** The same keys on the desk and on an empty page, so that a busy machine hits both alike. */
async function keys(): Promise<void> {
  const page = await (await browser.newContext()).newPage();
  await openSeason(page, { 'week-01/week.yaml': 'opponent: Cedar Falls\n', 'week-01/opponent.csv': longSheet() });
  await page.getByText(`${SNAPS} charted`).waitFor();
  await page.waitForTimeout(3000);
  const blank = await (await browser.newContext()).newPage();
  await blank.goto(`file://${empty}`);
  const said = (times: readonly number[]) =>
    `median ${median(times).toFixed(1)} ms, worst ${Math.max(...times).toFixed(1)} ms`;
  await browser.startTracing(page, { categories: ['toplevel'] });
  const onDesk = await keyTimes(page);
  const longest = longestTask(await browser.stopTracing());
  const onBlank = await keyTimes(blank);
  for (const each of [page, blank]) await each.context().close();
  console.log(`key to screen with ${SNAPS} snaps, ${onDesk.length} keys: ${said(onDesk)} (aims 16 and 50)`);
  console.log(`the same keys on an empty page: ${said(onBlank)}`);
  console.log(`longest the page worked at one go meanwhile: ${longest.toFixed(1)} ms of CPU`);
}

/** One piece of a browser's trace; `tdur` is CPU time in microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

/** CPU milliseconds of the longest task on a page's own thread, however busy the machine is. */
function longestTask(trace: Buffer): number {
  const { traceEvents } = JSON.parse(trace.toString()) as { readonly traceEvents: readonly TraceEvent[] };
  const threads = traceEvents.filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain');
  const places = new Set(threads.map(({ pid, tid }) => `${pid} ${tid}`));
  const tasks = traceEvents.filter(({ name, pid, tid }) => /RunTask/.test(name) && places.has(`${pid} ${tid}`));
  return Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000;
}

async function keyTimes(page: Page): Promise<number[]> {
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { times });
    document.addEventListener(
      'keydown',
      (event) => requestAnimationFrame(() => setTimeout(() => times.push(performance.now() - event.timeStamp))),
      true,
    );
  });
  const drive = ['/', '2', '5', ' ', ...'m1br4 m1br4 m1br4 '];
  for (let i = 0; i < KEYS; i++) await page.keyboard.press(drive[i % drive.length] ?? 'm', { delay: 5 });
  await page.waitForTimeout(300);
  return (await page.evaluate('window.times')) as number[];
}

async function openSeason(page: Page, files: Readonly<Record<string, string>>): Promise<void> {
  const { strToU8, zipSync } = await import('fflate');
  const zip = zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));
  await page.goto(`file://${join(dist, 'desk.html')}`);
  const buffer = Buffer.from(zip);
  await page
    .getByLabel('Copy a season out of a .zip')
    .setInputFiles({ name: 'season.zip', mimeType: 'application/zip', buffer });
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
