import type { Browser, Page } from 'playwright-core';

/** A page to press keys on: how it is opened, ready for them. */
export interface KeyPage {
  readonly name: string;
  readonly open: (page: Page) => Promise<void>;
}

/** Keys pressed on one page in one run. */
interface KeyRun {
  /** Milliseconds from each key to the frame that shows it, in order. */
  readonly times: readonly number[];
  /** CPU milliseconds of the longest task on the page's own thread, however busy the machine is. */
  readonly longestTask: number;
}

const KEYS = 200;
const DRIVE = ['/', '2', '5', ' ', ...'m1br4 m1br4 m1br4 '];

/** The longest pause between two keys, in milliseconds: the sheet is written and counted in between, at any moment. */
const LONGEST_PAUSE = 700;

/** Presses the same keys after the same pauses on every page in turn, so that a busy machine hits all alike. */
export async function keyRuns(browser: Browser, pages: readonly KeyPage[], runs: number): Promise<void> {
  const found = pages.map(() => [] as KeyRun[]);
  for (let run = 0; run < runs; run++)
    for (const [i, each] of pages.entries()) found[i]?.push(await keysOn(browser, each));
  pages.forEach(({ name }, i) => {
    for (const { times, longestTask } of found[i] ?? [])
      console.log(`  ${name}: ${said(times)}; longest task ${longestTask.toFixed(1)} ms of CPU`);
    console.log(`${name}, all runs: ${said((found[i] ?? []).flatMap(({ times }) => times))} (aims 16 and 50)`);
  });
}

async function keysOn(browser: Browser, { open }: KeyPage): Promise<KeyRun> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await open(page);
  await page.waitForTimeout(3000);
  await browser.startTracing(page, { categories: ['toplevel', 'devtools.timeline'] });
  await pressKeys(page);
  const events = tracedEvents(await browser.stopTracing());
  await context.close();
  return { times: keyTimes(events), longestTask: longestTask(events) };
}

async function pressKeys(page: Page): Promise<void> {
  let seed = 7;
  for (let i = 0; i < KEYS; i++) {
    await page.keyboard.press(DRIVE[i % DRIVE.length] ?? 'm', { delay: 5 });
    seed = (seed * 16_807) % 2_147_483_647;
    await page.waitForTimeout((LONGEST_PAUSE * seed) / 2_147_483_647);
  }
  await page.waitForTimeout(1000);
}

/** One piece of a browser's trace; `tdur` is CPU time in microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly tdur?: number;
  readonly args: { readonly name?: string; readonly data?: { readonly type?: string; readonly duration?: number } };
}

function tracedEvents(trace: Buffer): readonly TraceEvent[] {
  return (JSON.parse(trace.toString()) as { readonly traceEvents: readonly TraceEvent[] }).traceEvents;
}

/**
 * From each key to the next frame on screen, as the browser itself takes it.
 *
 * @see W3C, "Event Timing API" (2024): duration, from the key's time stamp to the next paint
 */
function keyTimes(events: readonly TraceEvent[]): number[] {
  return events.flatMap(({ name, ph, args: { data } }) =>
    name === 'EventTiming' && ph === 'b' && data?.type === 'keydown' ? [data.duration ?? Number.NaN] : [],
  );
}

function longestTask(events: readonly TraceEvent[]): number {
  const threads = events.filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain');
  const places = new Set(threads.map(({ pid, tid }) => `${pid} ${tid}`));
  const tasks = events.filter(({ name, pid, tid }) => /RunTask/.test(name) && places.has(`${pid} ${tid}`));
  return Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000;
}

function said(times: readonly number[]): string {
  const sorted = [...times].sort((one, other) => one - other);
  const at = (share: number) => (sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN).toFixed(0);
  return `${times.length} keys: median ${at(0.5)} ms, 95 of 100 under ${at(0.95)}, 99 under ${at(0.99)}, worst ${at(1)}`;
}
