import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { readWeekSettings } from '../../src/ingest/settings-text.ts';
import { chromiumPath, launchBrowser } from './browser.ts';
import { newSeason, pressButton, tabTo } from './desk-keys.ts';
import { builtDesk, type DeskPage, openDesk, storedFile, takeSeason } from './desk-page.ts';

const WEEK = `# Kept by hand.
opponent: Cedar Falls # at home
menu:
  # Six is enough.
  size: 6
  ban: [Ghost]
weather: rain
`;

describe.skipIf(chromiumPath === null)('the settings of a week as a form', () => {
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

  const weekFile = async (season = 'season') => (await storedFile(desk.page, season, 'week-01/week.yaml')) ?? '';
  async function settings() {
    const read = readWeekSettings(await weekFile());
    if (read.kind === 'problems') throw new Error(await weekFile());
    return read.value;
  }
  async function openForm(): Promise<void> {
    await desk.page.keyboard.press('Alt+Digit4');
    await desk.page.getByRole('heading', { name: /The plan for/ }).waitFor();
    await pressButton(desk.page, 'Settings of the week: opponent, date, practice days, menu, calls to carry');
  }
  async function type(label: string, text: string): Promise<void> {
    await tabTo(desk.page, (words) => words.startsWith(label));
    await desk.page.keyboard.press('Control+a');
    await desk.page.keyboard.type(text);
    await desk.page.keyboard.press('Tab');
  }

  it('is filled in by keyboard alone and writes week.yaml, saved at once', async () => {
    await newSeason(desk.page);
    await openForm();
    await type('Opponent:', 'Pine Hollow');
    await type('Date:', '2026-10-23');
    await pressButton(desk.page, 'Practice week');
    await pressButton(desk.page, 'Add a day');
    await type('Mon period 1: minutes', '15');
    await type('Mon period 1: reps', '30');
    await pressButton(desk.page, 'The menu');
    await type('Size:', '7');
    await pressButton(desk.page, 'Must carry: Field Under');
    await pressButton(desk.page, 'Never carry: Base');
    await pressButton(desk.page, 'Call sheet');
    await pressButton(desk.page, 'Up: 3rd and long');
    await expect.poll(async () => (await settings()).sheet.order).toContain('third_long');
    const { opponent, date, menu, practice, sheet } = await settings();
    expect({ opponent, date, size: menu.size, must: menu.must, ban: menu.ban }).toEqual({
      ...{ opponent: 'Pine Hollow', date: '2026-10-23', size: 7, must: ['Field Under'], ban: ['Base'] },
    });
    expect(practice.days).toMatchObject([{ day: 'Mon', periods: [{ minutes: 15, reps: 30, contact: 'control' }] }]);
    expect(sheet.order.indexOf('third_long')).toBeLessThan(sheet.order.indexOf('third_medium'));
    expect(await weekFile()).toContain('# most calls carried');
    expect(await desk.page.locator('.season-line select').textContent()).toContain('Pine Hollow');
  });

  it('says what is wrong as it is typed, saves nothing wrong, and saves what is right again', async () => {
    await newSeason(desk.page);
    await openForm();
    await type('Snaps:', 'many');
    await desk.page.getByText('"many" is not a number.').first().waitFor();
    await desk.page.getByText('Not saved until this is mended').waitFor();
    expect(await desk.page.getByLabel(/^Snaps:/).getAttribute('aria-invalid')).toBe('true');
    expect(await weekFile()).not.toContain('snaps: many');
    await desk.page.getByLabel(/^Snaps:/).focus();
    await type('Snaps:', '55');
    await expect.poll(weekFile).toContain('snaps: 55');
  });

  it('leaves comments and unknown keys where they are, and names what was wrong before', async () => {
    await takeSeason(desk.page, 'kept', { 'week-01/week.yaml': WEEK });
    await openForm();
    await desk.page.getByText('"weather"').first().waitFor();
    await pressButton(desk.page, 'The menu');
    await type('Size:', '8');
    await expect.poll(() => weekFile('kept')).toBe(WEEK.replace('size: 6', 'size: 8'));
    await pressButton(desk.page, 'Never carry: Ghost');
    await expect.poll(() => weekFile('kept')).toContain('ban: []');
    await desk.page.getByRole('button', { name: 'As text' }).click();
    await desk.page.getByLabel('Settings of the week as text').fill('opponent: Cedar Falls\nweather: rain\n');
    await desk.page.getByRole('button', { name: 'Keep the text' }).click();
    await expect.poll(() => weekFile('kept')).toBe('opponent: Cedar Falls\nweather: rain\n');
  });

  it('asks whether a name close to another week’s opponent is the same team', async () => {
    const weeks = { 'week-01/week.yaml': 'opponent: Pine Hollow\n', 'week-02/week.yaml': 'opponent: Cedar Falls\n' };
    await takeSeason(desk.page, 'teams', weeks);
    await openForm();
    await type('Opponent:', 'pine holow');
    await desk.page.getByText('Close to "Pine Hollow" of week-01').waitFor();
    await desk.page.keyboard.press('Alt+Digit8');
    await type('Next opponent', 'PineHollow');
    await desk.page.getByText('Close to "Pine Hollow" of week-01').waitFor();
  });
});
