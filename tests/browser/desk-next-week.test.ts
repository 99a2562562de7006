import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { builtDesk, type DeskPage, openDesk, storedFile } from './desk-page.ts';

/** Invented: a staff's own headers, to be read in the next week too. */
const PROFILE = 'columns:\n  down: Dn\n  to_go: Dist\n  play_kind: Kind\n';

describe.skipIf(chromiumPath === null)('the next week at the desk', () => {
  let browser: Browser;
  let desk: DeskPage;
  let built: ReturnType<typeof builtDesk>;
  beforeAll(async () => {
    built = builtDesk();
    writeFileSync(join(built.home, 'season', 'week-09', 'profile.yaml'), PROFILE);
    browser = await launchBrowser();
    desk = await openDesk(browser, built.address);
    await desk.page.getByLabel('Copy a season folder into this browser').setInputFiles(join(built.home, 'season'));
    await desk.page.getByRole('button', { name: 'Season', exact: true }).click();
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });

  it('begins with the files the command line makes: settings, practice days and profile of the last one', async () => {
    await desk.page.getByLabel('Next opponent').fill('Pine Hollow');
    await desk.page.getByRole('button', { name: 'Start the next week' }).click();
    await desk.page.getByText('Made week-10.').waitFor();
    built.run('new', 'season', '--week', '10');
    const folder = join(built.home, 'season', 'week-10');
    expect(readdirSync(folder).sort()).toEqual(['opponent.csv', 'profile.yaml', 'week.yaml']);
    for (const name of readdirSync(folder)) {
      const terminal = readFileSync(join(folder, name), 'utf8');
      const wanted = terminal.replace('Name of the opponent', 'Pine Hollow');
      expect([name, await storedFile(desk.page, 'season', `week-10/${name}`)]).toEqual([name, wanted]);
    }
    expect(await storedFile(desk.page, 'season', 'week-10/profile.yaml')).toBe(PROFILE);
    expect([desk.requests, desk.errors]).toEqual([[], []]);
  });
});
