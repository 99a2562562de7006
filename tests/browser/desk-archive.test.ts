import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath, launchBrowser } from './browser.ts';
import { builtDesk, type DeskPage, openDesk, storedFile, takeSeason } from './desk-page.ts';

const ROWS = 100_000;
const GAME = 125;
const SLOW = { timeout: 120_000 };

/** An archive of invented offenses, each of four games. */
function archive(): string {
  const rows = Array.from({ length: ROWS }, (_, i) => {
    const game = Math.floor(i / GAME);
    const [down, spot] = [1 + (i % 3), 20 + (i % 60)];
    const side = spot < 50 ? `own ${spot}` : spot === 50 ? '50' : `opp ${100 - spot}`;
    const kind = ['run', 'quick', 'screen', 'dropback'][(i * 7 + game) % 4];
    return `offense ${Math.floor(game / 4)},game ${game},${(i % GAME) + 1},${down},${10 - 3 * (down - 1)},${side},${kind},${i % 9}`;
  });
  return `offense,game,snap,down,to_go,ball_on,play_kind,gain\r\n${rows.join('\r\n')}\r\n`;
}

describe.skipIf(chromiumPath === null)('an archive of 100,000 snaps at the desk', () => {
  let browser: Browser;
  let built: ReturnType<typeof builtDesk>;
  let desk: DeskPage;
  beforeAll(async () => {
    built = builtDesk();
    browser = await launchBrowser();
    desk = await openDesk(browser, built.address);
  });
  afterAll(async () => {
    await browser?.close();
    built?.remove();
  });

  it('is taken in, planned with, canceled half way and planned again, as on the command line', SLOW, async () => {
    const files = {
      'week-01/week.yaml': 'opponent: Harrow Creek\n',
      'week-01/opponent.csv': readFileSync('data/demo/season/week-09/opponent-latest.csv', 'utf8'),
      'archive/long.csv': archive(),
    };
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(join(built.home, 'long', path, '..'), { recursive: true });
      writeFileSync(join(built.home, 'long', path), text);
    }
    await takeSeason(desk.page, 'long', files);
    await desk.page.keyboard.press('Alt+Digit4');
    await desk.page.getByRole('button', { name: 'Work out the plan' }).click();
    await desk.page.getByRole('button', { name: 'Cancel' }).click();
    expect(await storedFile(desk.page, 'long', 'week-01/out/report.json')).toBeNull();
    await desk.page.getByRole('button', { name: 'Work out the plan' }).click();
    await desk.page.getByText('Done.').waitFor(SLOW);
    built.run('report', 'long/week-01');
    const terminal = readFileSync(join(built.home, 'long/week-01/out/report.json'), 'utf8');
    expect((await storedFile(desk.page, 'long', 'week-01/out/report.json')) === terminal).toBe(true);
    expect({ requests: desk.requests, errors: desk.errors }).toEqual({ requests: [], errors: [] });
  });
});
