import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Depth } from '../../src/desk/chart/chart-fields.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { readChartSheet } from '../../src/season/chart-sheet.ts';
import { chromiumPath, launchBrowser } from './browser.ts';
import { newSeason, press, watchPrinter } from './desk-keys.ts';
import { builtDesk, openDesk, storedFile } from './desk-page.ts';
import { isPassAt, snapKeys } from './typed-game.ts';

const SNAPS = 24;
const LATER = { timeout: 10_000 };

/** Keys of a snap once its names are known and no series begins: most on a run, most on a pass. */
function keysASnap(depth: Depth): { readonly run: number; readonly pass: number } {
  const settled = Array.from({ length: 6 }, (_, i) => 12 + i).filter((index) => index % 6 !== 0);
  const counts = settled.map((index) => [isPassAt(index), snapKeys(1, depth, index).length] as const);
  const most = (isPass: boolean) => Math.max(...counts.filter(([pass]) => pass === isPass).map(([, keys]) => keys));
  return { run: most(false), pass: most(true) };
}

const DEPTHS = [
  { depth: 'quick', charted: ['play_kind', 'gain', 'result'], blank: ['hash', 'protectors', 'personnel'] },
  { depth: 'plan', charted: ['hash', 'receivers', 'back_spot'], blank: ['personnel', 'motion', 'coverage_faced'] },
  { depth: 'full', charted: ['personnel', 'formation', 'motion', 'checked'], blank: [] },
] as const;

describe.skipIf(chromiumPath === null)('a game typed at each depth', () => {
  let browser: Browser;
  let built: ReturnType<typeof builtDesk>;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });

  it.each(DEPTHS)(
    '$depth: every key lands, and the sheet is read without a fault',
    async ({ depth, charted, blank }) => {
      const { page, context, requests, errors } = await openDesk(browser, built.address);
      await newSeason(page);
      await page.getByRole('button', { name: depth, exact: true }).click();
      await page.getByRole('application').focus();
      await press(page, snapKeys(SNAPS, depth));
      await page.getByText(`${SNAPS} charted`).waitFor();
      const sheet = async () => (await storedFile(page, 'season', 'week-01/opponent.csv')) ?? '';
      await expect.poll(async () => readChartSheet(await sheet())?.snaps.length, LATER).toBe(SNAPS);
      const snaps = readChartSheet(await sheet())?.snaps ?? [];
      for (const column of charted)
        expect(
          snaps.filter((snap) => snap[column] === undefined),
          column,
        ).toEqual([]);
      for (const column of blank)
        expect(
          snaps.filter((snap) => snap[column] !== undefined && !isPass(snap)),
          column,
        ).toEqual([]);
      const timed = snaps.filter(({ time_to_throw: time }) => time !== undefined);
      expect(timed).toHaveLength(depth === 'quick' ? 0 : SNAPS / 3);
      const read = readSheet({ file: 'opponent.csv', bytes: Buffer.from(await sheet()) }, { kind: 'opponent' });
      expect(read.problems).toEqual([]);
      expect({ requests, errors }).toEqual({ requests: [], errors: [] });
      await context.close();
    },
  );

  it('takes the keys a snap that the README says', () => {
    const readme = readFileSync('README.md', 'utf8');
    const fellIncomplete = ['s', 'i'];
    expect(readme).toContain(`| quick | ${fellIncomplete.length} to ${keysASnap('quick').pass} |`);
    for (const depth of ['plan', 'full'] as const) {
      const keys = keysASnap(depth);
      expect(readme).toContain(`| ${depth} | ${keys.run} on a run, ${keys.pass} on a pass |`);
    }
  });

  it('prints a blank form with the columns of its depth, and the sheet as it is charted', async () => {
    const { page, context } = await openDesk(browser, built.address);
    await newSeason(page);
    await press(page, snapKeys(2, 'plan'));
    const printed = await watchPrinter(page);
    await page.getByRole('button', { name: 'Print a blank form' }).click();
    const [blank] = await printed();
    expect(blank?.title).toContain('Cedar Falls');
    expect(blank?.text).toMatch(/Hash.*How many protect.*Snap to throw/s);
    expect(blank?.text).not.toMatch(/Motion|own 2/);
    await page.getByRole('button', { name: 'Print this sheet' }).click();
    const [filled] = await printed();
    expect(filled?.text).toMatch(/2 snaps.*own 20.*run/s);
    await context.close();
  });
});

function isPass({ play_kind: kind }: Readonly<Record<string, string | undefined>>): boolean {
  return kind !== 'run';
}
