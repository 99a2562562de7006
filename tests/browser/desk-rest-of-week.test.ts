import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { callNames } from '../../src/season/edit-yaml.ts';
import { chromiumPath, launchBrowser } from './browser.ts';
import { looksWrong } from './desk-axe.ts';
import { press, pressButton, tabTo, watchPrinter } from './desk-keys.ts';
import { builtDesk, type DeskPage, openDeskWithSeason, storedFile } from './desk-page.ts';

const LATER = { timeout: 30_000 };

/** A sheet with headers and codes of its own. */
const FOREIGN = [
  'Quarter,Down,Distance,Ball,Hash mark,Type,Yards,Outcome',
  ...Array.from({ length: 24 }, (_, i) => {
    const isRun = i % 2 === 0;
    const spot = i % 4 === 0 ? -25 - i : 45 - i;
    return `${1 + Math.floor(i / 6)},${1 + (i % 3)},${10 - (i % 3) * 3},${spot},${'LMR'[i % 3]},${isRun ? 'Run' : 'Pass'},${i % 7},${isRun ? 'Rush' : 'Complete'}`;
  }),
].join('\r\n');

/** After Sunday, on the demo's last week: every other view, by keyboard, each page the command line's byte for byte. */
describe.skipIf(chromiumPath === null)('the rest of the week at the desk', () => {
  let browser: Browser;
  let built: ReturnType<typeof builtDesk>;
  let desk: DeskPage;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
    built.run('report', 'season/week-09');
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });
  beforeEach(async () => {
    desk = await openDeskWithSeason(browser, built);
  });
  afterEach(async () => {
    expect(await looksWrong(desk.page, 1280)).toEqual([]);
    expect({ requests: desk.requests, errors: desk.errors }).toEqual({ requests: [], errors: [] });
    await desk.context.close();
  });

  const stored = (path: string) => storedFile(desk.page, 'season', path);
  const onDisk = (path: string) => readFileSync(join(built.home, 'season', path), 'utf8');
  async function turnTo(view: number, heading: RegExp): Promise<void> {
    await desk.page.keyboard.press(`Alt+Digit${view}`);
    await desk.page.getByRole('heading', { name: heading, level: 1 }).waitFor();
  }
  async function expectSame(...pages: readonly string[]): Promise<void> {
    for (const page of pages) {
      const path = join('week-09', 'out', page);
      await expect.poll(async () => (await stored(path)) === onDisk(path), { ...LATER, message: page }).toBe(true);
    }
  }

  it('Practice writes the script the command line writes, and prints it', async () => {
    await turnTo(5, /Practice/);
    await pressButton(desk.page, 'Write the script');
    await desk.page.getByText('Done.').waitFor(LATER);
    built.run('script', 'season/week-09');
    await expectSame('script.html');
    await desk.page.getByText('licensed athletic trainers').first().waitFor();
    const printed = await watchPrinter(desk.page);
    await pressButton(desk.page, 'Print this page');
    expect((await printed())[0]?.text).toMatch(/Practice script: Harrow Creek/);
  });

  it('Tonight charts the first half by the same strip, and the plan beside it follows every snap', async () => {
    await turnTo(6, /Tonight/);
    const before = await desk.page
      .locator('.strip')
      .getByText(/charted/)
      .textContent();
    const charted = Number(/(\d+) charted/.exec(before ?? '')?.[1]);
    expect(charted).toBe(30);
    await press(desk.page, ['1', 'm', '1', 'b', 'r', '4', 'Space']);
    await desk.page.locator('.side').getByText('31 snaps tonight').waitFor(LATER);
    expect(await stored('week-09/out/halftime.html')).toContain('31 snaps tonight');
    await press(desk.page, ['2', '5', 'Space', '1', 'm', '1', 'b', 'q', 'c', '3', 'Space', '6', 'b', 'hold']);
    await desk.page.locator('.side').getByText('32 snaps tonight').waitFor(LATER);
    expect(((await stored('week-09/live.csv')) ?? '').trim().split('\n')).toHaveLength(
      onDisk('week-09/live.csv').trim().split('\n').length + 2,
    );
    await desk.page.getByRole('button', { name: "Sunday's call sheet" }).click();
    await desk.page.frameLocator('.shelf iframe').getByText('Harrow Creek').first().waitFor();
  });

  it('Tonight gives the halftime page the command line gives', async () => {
    await turnTo(6, /Tonight/);
    await pressButton(desk.page, 'Update the plan');
    await desk.page.getByText('30 snaps tonight').first().waitFor(LATER);
    built.run('halftime', 'season/week-09', '--live', 'season/week-09/live.csv');
    await expectSame('halftime.html');
  });

  it('Monday reviews the game as the command line does, and Season shows the season', async () => {
    await turnTo(7, /Monday after Harrow Creek/);
    await pressButton(desk.page, 'Review the game');
    await desk.page.getByText('Done.').waitFor(LATER);
    built.run('review', 'season/week-09');
    await expectSame('review.html', 'review.json', 'season.html');
    expect(await looksWrong(desk.page, 1280)).toEqual([]);
    await turnTo(8, /Season/);
    await desk.page.getByText('week-09: Harrow Creek, planned').waitFor();
    await desk.page.frameLocator('.shelf iframe').getByText('Harrow Creek').first().waitFor();
  });

  it('Season starts the next week by keyboard, and hands a copy over that holds every file', async () => {
    await turnTo(8, /Season/);
    await tabTo(desk.page, (words) => words.startsWith('Next opponent'));
    await desk.page.keyboard.type('Pine Hollow');
    await desk.page.keyboard.press('Enter');
    await desk.page.getByText('Made week-10').waitFor();
    expect(await stored('week-10/week.yaml')).toContain('opponent: Pine Hollow');
    const download = desk.page.waitForEvent('download');
    await pressButton(desk.page, 'Save a copy of the season (.zip)');
    const copy = await download;
    expect(copy.suggestedFilename()).toBe('season.zip');
    const files = unzipSync(readFileSync(await copy.path()));
    for (const path of ['defense.yaml', 'ours.csv', 'week-09/opponent-latest.csv'])
      expect(Buffer.from(files[`season/${path}`] ?? []).toString(), path).toBe(onDisk(path));
    expect(Object.keys(files)).toContain('season/week-10/opponent.csv');
  });

  it('Sheets adopts a sheet with headers of its own as the command line does', async () => {
    await turnTo(2, /Sheets/);
    const sheet = { name: 'theirs.csv', mimeType: 'text/csv', buffer: Buffer.from(FOREIGN) };
    await desk.page.getByLabel('A sheet of their film').setInputFiles(sheet);
    await desk.page.getByRole('heading', { name: /24 snaps read/ }).waitFor(LATER);
    expect(await looksWrong(desk.page, 1280)).toEqual([]);
    writeFileSync(join(built.home, 'theirs.csv'), FOREIGN);
    built.run('adopt', 'theirs.csv', '--output', 'adopted');
    await pressButton(desk.page, 'Keep theirs.csv in week-09');
    await expect.poll(() => stored('week-09/opponent-theirs.csv'), LATER).toBe(FOREIGN);
    expect(await stored('week-09/profile.yaml')).toBe(readFileSync(join(built.home, 'adopted/profile.yaml'), 'utf8'));
    await desk.page.getByText('read through profile.yaml').waitFor();
  });

  it('Sheets asks what the values do not tell, and an answer by keyboard changes the profile', async () => {
    await turnTo(2, /Sheets/);
    const sheet = { name: 'theirs.csv', mimeType: 'text/csv', buffer: Buffer.from(FOREIGN) };
    await desk.page.getByLabel('A sheet of their film').setInputFiles(sheet);
    await desk.page.getByRole('heading', { name: /24 snaps read/ }).waitFor(LATER);
    await pressButton(desk.page, 'Keep theirs.csv in week-09');
    await expect.poll(() => stored('week-09/profile.yaml'), LATER).toMatch(/^ {2}down:/m);
    const unanswered = await stored('week-09/profile.yaml');
    await desk.page.getByLabel('A sheet of their film').setInputFiles(sheet);
    const question = desk.page.locator('.question label').first();
    const words = ((await question.textContent()) ?? '').trim();
    await tabTo(desk.page, (label) => label === words);
    await desk.page.keyboard.press('ArrowDown');
    await pressButton(desk.page, 'Keep theirs.csv in week-09');
    await expect.poll(() => stored('week-09/profile.yaml'), LATER).not.toBe(unanswered);
  });

  it('Calls takes a new call like another by keyboard, and says as it is typed what it leaves open', async () => {
    const calls = callNames(onDisk('defense.yaml')).length;
    await turnTo(3, new RegExp(`${calls} calls`));
    await pressButton(desk.page, 'New one like it: Stay Roof');
    await desk.page.getByText('Sound: eleven men').waitFor(LATER);
    await tabTo(desk.page, (words) => words.startsWith('Name on the field'));
    await desk.page.keyboard.press('Control+a');
    await desk.page.keyboard.type('Stay Post');
    await tabTo(desk.page, (words) => words.startsWith('Middle safety'));
    await desk.page.keyboard.press('Home');
    await desk.page.locator('.faults li').first().waitFor(LATER);
    expect(await desk.page.locator('.faults').textContent()).toMatch(/Middle safety|deep middle/i);
    await desk.page.getByLabel('Middle safety').first().selectOption({ label: 'deep third middle' });
    await desk.page.getByText('Sound: eleven men').waitFor(LATER);
    await pressButton(desk.page, 'Keep the call');
    await desk.page.getByRole('heading', { name: `${calls + 1} calls` }).waitFor(LATER);
    expect(callNames((await stored('defense.yaml')) ?? '')).toContain('Stay Post');
  });
});
