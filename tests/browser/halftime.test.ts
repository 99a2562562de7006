import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../src/game/film.ts';
import { type HalftimeUpdate, halftimeUpdate } from '../../src/pressure/halftime/halftime.ts';
import { RUSH_GROUPS } from '../../src/pressure/snap/rush-group.ts';
import { renderHalftime } from '../../src/report/halftime/render-halftime.ts';
import { share } from '../../src/stats/share.ts';
import { inventedPlan } from '../report/invented-plan.ts';
import { chromiumPath, launchBrowser } from './browser.ts';

/** The fullest page there can be: more of everything than is shown. */
function fullest(): HalftimeUpdate {
  const plan = inventedPlan();
  const live = filmFromRecords(Array(30).fill({ down: 3, to_go: 12, play_kind: 'screen', call: 'Rake' }));
  const update = halftimeUpdate({ plan, live, film: null });
  const habit = {
    target: 'screen' as const,
    situation: 'second_medium',
    name: 'screen',
    expected: 0.124,
    firstHalf: share(9, 12),
    p: 0.001,
    adjusted: 0.04,
  };
  const overtaking = {
    call: 'Boundary Lantern 1',
    over: 'Boundary Lantern 2',
    snaps: ['3', '9', '12', '17', '21', '25', '30'],
  };
  const long = 'A path with quite a long name';
  const [call] = update.calls;
  if (!call) throw new Error('the invented plan carries calls');
  return {
    ...update,
    moved: { ...update.moved, moved: Array(9).fill(habit), looksSo: Array(9).fill(habit) },
    calls: Array.from({ length: 14 }, (_, i) => ({
      ...call,
      call: `Boundary Lantern ${i}`,
      rankBefore: 15 - i,
      fit: { before: -0.21, now: -0.18 },
    })),
    situations: update.situations.map((entry) => ({
      ...entry,
      calls: [
        { call: 'Boundary Lantern 1', before: 0.1, now: 0.2 },
        { call: 'Boundary Lantern 2', before: 0.2, now: 0.1 },
      ],
      overtakings: entry.situation === 'first_ten' ? [overtaking] : [],
    })),
    byRush: RUSH_GROUPS.map((group) => ({
      group,
      snaps: 12,
      runs: share(5, 12),
      passes: (['quick', 'screen', 'dropback', 'movement'] as const).map((answer) => ({ answer, count: 2 })),
      held: share(7, 12),
    })),
    warnings: Array(5).fill({
      path: long,
      coverage: 'three deep three under',
      count: 7,
      trials: 8,
      instead: ['Rake Man', 'Anvil Hold'],
    }),
  };
}

describe.skipIf(chromiumPath === null)('the halftime page in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(async () => {
    await browser?.close();
  });

  it('fits one screen of a tablet (1024 by 768) at its fullest, without a request or a message', async () => {
    const page = await browser.newPage({ viewport: { width: 1024, height: 768 } });
    const heard: string[] = [];
    page.on('console', (message) => heard.push(message.text()));
    page.on('request', (request) => heard.push(request.url()));
    await page.setContent(await renderHalftime(fullest(), 3));
    const size = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.scrollHeight,
    ]);
    expect(size[0]).toBeLessThanOrEqual(1024);
    expect(size[1]).toBeLessThanOrEqual(768);
    expect(heard).toEqual([]);
    await page.close();
  });
});
