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
    await desk.page.getByText('Not saved until you fix this').waitFor();
    expect(await desk.page.getByLabel(/^Snaps:/).getAttribute('aria-invalid')).toBe('true');
    expect(await weekFile()).not.toContain('snaps: many');
    await desk.page.getByLabel(/^Snaps:/).focus();
    await type('Snaps:', '55');
    await expect.poll(weekFile).toContain('snaps: 55');
  });

  const summary = () => desk.page.getByText('Settings of the week:');

  it('keeps a faulty value at every key: the page opened again shows it with its fault', async () => {
    await newSeason(desk.page);
    await openForm();
    await tabTo(desk.page, (words) => words.startsWith('Snaps:'));
    await desk.page.keyboard.type('man');
    await desk.page.keyboard.type('y');
    await desk.page.reload();
    await desk.page.getByRole('heading', { name: /The plan for/ }).waitFor();
    await desk.page.getByText('You typed this earlier and it is not saved.').waitFor();
    await desk.page.getByText('Not saved until you fix this').waitFor();
    const snaps = desk.page.getByLabel(/^Snaps:/);
    expect(await snaps.inputValue()).toBe('many');
    expect(await snaps.getAttribute('aria-invalid')).toBe('true');
    expect(await weekFile()).not.toContain('snaps: many');
    await snaps.focus();
    await type('Snaps:', '55');
    await expect.poll(weekFile).toContain('snaps: 55');
    await desk.page.reload();
    await summary().click();
    expect(await desk.page.getByLabel(/^Snaps:/).inputValue()).toBe('55');
    await expect.poll(() => desk.page.getByText('You typed this earlier').count()).toBe(0);
  });

  it('keeps a sound value that was typed and not left, as one to save or to put away', async () => {
    await newSeason(desk.page);
    await openForm();
    await tabTo(desk.page, (words) => words.startsWith('Date:'));
    await desk.page.keyboard.type('2026-10-23');
    await desk.page.reload();
    await desk.page.getByRole('button', { name: 'Save it' }).waitFor();
    await pressButton(desk.page, 'Save it');
    await expect.poll(weekFile).toContain('2026-10-23');
    await tabTo(desk.page, (words) => words.startsWith('Date:'));
    await desk.page.keyboard.type('x');
    await desk.page.reload();
    await desk.page.getByRole('button', { name: 'Go back to the file' }).waitFor();
    await pressButton(desk.page, 'Go back to the file');
    await expect.poll(() => desk.page.getByLabel(/^Date:/).inputValue()).toBe('2026-10-23');
    await expect.poll(() => desk.page.getByText('You typed this earlier').count()).toBe(0);
  });

  it('keeps the settings typed as text, and a call half changed', async () => {
    await newSeason(desk.page);
    await openForm();
    await desk.page.getByRole('button', { name: 'As text' }).click();
    await desk.page.getByLabel('Settings of the week as text').fill('opponent: [');
    await desk.page.reload();
    await desk.page.getByText('You typed this earlier').waitFor();
    expect(await desk.page.getByLabel('Settings of the week as text').inputValue()).toBe('opponent: [');
    await desk.page.keyboard.press('Alt+Digit3');
    await desk.page.getByRole('button', { name: 'Change it: Field Under' }).click();
    await desk.page.getByLabel('Name on the field').fill('Field Over');
    await desk.page.reload();
    await desk.page.getByRole('button', { name: 'Keep the call' }).click();
    await desk.page.getByRole('button', { name: 'Change it: Field Over' }).waitFor();
    expect(await storedFile(desk.page, 'season', 'defense.yaml')).not.toContain('name: Field Under,');
  });

  it('forgets what was typed with the season that is deleted', async () => {
    await newSeason(desk.page);
    await openForm();
    await tabTo(desk.page, (words) => words.startsWith('Snaps:'));
    await desk.page.keyboard.type('many');
    await desk.page.getByRole('button', { name: 'Close the season' }).click();
    await desk.page.getByRole('button', { name: 'Delete from this browser: season' }).click();
    await desk.page.getByRole('button', { name: 'Delete from this browser now' }).click();
    await expect.poll(() => desk.page.getByText('Your seasons').count()).toBe(0);
    await newSeason(desk.page);
    await openForm();
    expect(await desk.page.getByLabel(/^Snaps:/).inputValue()).toBe('60');
    expect(await desk.page.getByText('You typed').count()).toBe(0);
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
