import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { builtDesk, type DeskPage, openDesk, storedFile } from './desk-page.ts';

describe.skipIf(chromiumPath === null)('the desk on the demo season', () => {
  let browser: Browser;
  let desk: DeskPage;
  let built: ReturnType<typeof builtDesk>;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
    desk = await openDesk(browser, built.address);
    await desk.page.getByLabel('Copy a season folder into this browser').setInputFiles(join(built.home, 'season'));
    await desk.page.getByRole('button', { name: 'Plan', exact: true }).click();
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });

  it.each(['week-07', 'week-08', 'week-09'])('gives the report of %s byte for byte', async (week) => {
    await desk.page.getByRole('combobox', { name: 'Week' }).selectOption(week);
    await desk.page.getByRole('button', { name: 'Work out the plan' }).click();
    await desk.page.getByText('Done.').waitFor({ timeout: 60_000 });
    built.run('report', join('season', week));
    for (const file of ['report.json', 'report.html', 'call-sheet.html', 'tip-sheet.html']) {
      const path = join(week, 'out', file);
      const terminal = readFileSync(join(built.home, 'season', path), 'utf8');
      expect((await storedFile(desk.page, 'season', path)) === terminal, file).toBe(true);
    }
  });

  it('asks nobody for anything and throws nothing', () => {
    expect(desk.requests).toEqual([]);
    expect(desk.errors).toEqual([]);
  });
});
