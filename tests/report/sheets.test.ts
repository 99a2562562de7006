import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { renderCallSheet } from '../../src/report/render-call-sheet.ts';
import { renderTipSheet } from '../../src/report/render-tip-sheet.ts';
import { clockDigits } from '../../src/report/sheet/clock-digits.ts';
import { leaveRows } from '../../src/report/sheet/leave-it.ts';
import { tellsToBreak } from '../../src/report/sheet/our-tells.ts';
import { protectLines } from '../../src/report/sheet/player-lines.ts';
import { situationLines } from '../../src/report/sheet/situation-line.ts';
import { share } from '../../src/stats/share.ts';
import { hostilePlan } from './hostile-plan.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const callSheet = await renderCallSheet(plan);
const tipSheet = await renderTipSheet(plan);

describe('clockDigits', () => {
  it('shares out all ten digits once, most called first', () => {
    const mix = fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(mix, (shares) => {
        const calls = clockDigits(shares.map((share, i) => ({ call: `c${i}`, share })));
        expect(calls.reduce((sum, call) => sum + call.tenths, 0)).toBe(10);
        const digits = calls.flatMap(({ digits }) => spelled(digits));
        expect(digits).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
      }),
      { numRuns: 100 },
    );
  });

  it('agrees with largest remainders by hand, and gives nothing for nothing', () => {
    // 10 x (0.62, 0.23, 0.15) = 6.2, 2.3, 1.5: whole parts 6, 2, 1, and the tenth digit to the remainder 0.5.
    const calls = clockDigits([
      { call: 'b', share: 0.23 },
      { call: 'a', share: 0.62 },
      { call: 'c', share: 0.15 },
    ]);
    expect(calls).toEqual([
      { call: 'a', tenths: 6, digits: '0-5' },
      { call: 'b', tenths: 2, digits: '6-7' },
      { call: 'c', tenths: 2, digits: '8-9' },
    ]);
    expect(clockDigits([{ call: 'a', share: 0 }])).toEqual([]);
  });
});

describe('the call sheet', () => {
  it('lists every situation of the menu', () => {
    const labels = plan.menu?.kind === 'menu' ? plan.menu.situations.map((situation) => situation.label) : [];
    expect(labels.length).toBeGreaterThan(5);
    for (const label of labels) expect(callSheet).toContain(`class="where">${label}</th>`);
  });

  it('says when to leave a call, what to do at a screen alert and at a look to the sideline', () => {
    for (const words of ['Trips', 'Empty', 'Fast motion', 'Screen alert on', 'Look to the sideline', 'Ours to break']) {
      expect(callSheet).toContain(words);
    }
  });

  it('leaves the base its digits when no base call is named', () => {
    const menu = plan.menu;
    if (menu?.kind !== 'menu') throw new Error('the invented plan has a menu');
    const calls = menu.calls.filter((call) => call.family !== 'base');
    for (const line of situationLines(plan, { ...menu, calls })) {
      const base = line.calls.find(({ call }) => call === 'Base');
      const sent = calls.reduce(
        (sum, call) => sum + (call.mix.find((part) => part.situation === line.id)?.share ?? 0),
        0,
      );
      expect(Math.abs((base?.tenths ?? 0) - 10 * (1 - sent))).toBeLessThan(1);
    }
  });

  it('puts calls with the same rules in one row, and says where a call has no rule', () => {
    const rows = leaveRows(plan);
    expect(rows.map((row) => row.empty)).toContain('no rule: leave it');
    expect(rows.flatMap((row) => row.calls.split(', '))).toHaveLength(7);
    expect(new Set(rows.map(({ trips, empty, motion }) => [trips, empty, motion].join())).size).toBe(rows.length);
  });

  it('lists calls by score and claims no mix when a library is there but no menu was chosen', async () => {
    const scored = await renderCallSheet({ ...plan, menu: null });
    expect(scored).not.toContain('No call library was given');
    expect(scored).toContain('no menu was chosen');
    const best = plan.scores.calls.find((score) => score.family !== 'base');
    expect(scored).toContain(best?.call ?? 'a call');
  });

  it('without a menu or without our film says so', async () => {
    const bare = await renderCallSheet({ ...plan, menu: null, library: null, ownFilm: null });
    expect(bare).toContain('No call library was given');
    expect(bare).toContain('nothing is known of our tells');
    const clash = await renderCallSheet({ ...plan, menu: { kind: 'infeasible', clashing: ['120 repetitions'] } });
    expect(clash).toContain('<li>120 repetitions</li>');
  });
});

describe('the tip sheet', () => {
  it('names every pressure carried, in words for players', () => {
    for (const name of ['Rake', 'Anvil', 'Torch', 'Latch Spy', 'Afterburn'])
      expect(tipSheet).toContain(`<bdi>${name}</bdi>`);
    expect(tipSheet).not.toContain('<bdi>Torch Zero</bdi>');
    expect(tipSheet).toContain('athletic trainer');
  });

  it('carries no percent', () => {
    expect(tipSheet.slice(tipSheet.indexOf('<body>'))).not.toMatch(/\d%/);
  });
});

describe('protectLines', () => {
  const jobs = (blocks: number, wide: number, inside: number) =>
    protectLines({
      ...plan,
      protection: {
        ...plan.protection,
        mix: {
          ...plan.protection.mix,
          backJobs: [
            { job: 'blocks', share: share(blocks, blocks + wide + inside) },
            { job: 'releases_wide', share: share(wide, blocks + wide + inside) },
            { job: 'releases_inside', share: share(inside, blocks + wide + inside) },
          ],
        },
      },
    }).at(-1);

  it('says "mostly" of what is more than half, and names two where nothing is', () => {
    expect(jobs(33, 10, 10)).toBe('Back on a pass: mostly stays and blocks.');
    expect(jobs(33, 32, 22)).toBe('Back on a pass: stays and blocks or gets out wide.');
  });
});

describe('tellsToBreak', () => {
  it('names no swap of a path that is not carried this week', () => {
    const film = plan.ownFilm;
    if (film === null) throw new Error('the invented plan has our film');
    const swap = { situation: 'first_ten', coverage: 'a', instead: 'b', snaps: 2, ...film.remedy.swaps[0] };
    const withSwaps = {
      ...plan,
      ownFilm: { ...film, tells: [], remedy: { ...film.remedy, swaps: [{ ...swap, path: 'not carried at all' }] } },
    };
    expect(tellsToBreak(withSwaps)).toEqual(['None stood out.']);
  });
});

describe('both sheets', () => {
  it('are small, deterministic, said to be invented, and carry their cautions', async () => {
    expect(await renderCallSheet(inventedPlan())).toBe(callSheet);
    expect(await renderTipSheet(inventedPlan())).toBe(tipSheet);
    expect(callSheet.length).toBeLessThan(120 * 1024);
    expect(callSheet).toContain('state association');
    for (const sheet of [callSheet, tipSheet]) expect(sheet).toContain('Invented data');
  });

  it('keep hostile names as text', async () => {
    for (const sheet of [await renderCallSheet(hostilePlan()), await renderTipSheet(hostilePlan())]) {
      expect(sheet).not.toMatch(/<script|<img/);
      expect(sheet).not.toMatch(/NaN|undefined/);
    }
  });
});

function spelled(digits: string): readonly number[] {
  if (digits === '') return [];
  const [first = 0, last = first] = digits.split('-').map(Number);
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
