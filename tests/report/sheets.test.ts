import fc from 'fast-check';
import { parse } from 'node-html-parser';
import { describe, expect, it } from 'vitest';
import type { MenuResult } from '../../src/pressure/menu/result.ts';
import { renderCallSheet } from '../../src/report/render-call-sheet.ts';
import { renderTipSheet } from '../../src/report/render-tip-sheet.ts';
import { renderWristband, wristbandRows } from '../../src/report/render-wristband.ts';
import { numberedCalls } from '../../src/report/sheet/call-numbers.ts';
import { CLOSE, type ClockRow, clockRule } from '../../src/report/sheet/clock-rule.ts';
import { lookTable, SHEET_LOOKS } from '../../src/report/sheet/look-changes.ts';
import { breakLines } from '../../src/report/sheet/our-tells.ts';
import { protectLines } from '../../src/report/sheet/player-lines.ts';
import { sheetRows } from '../../src/report/sheet/sheet-row.ts';
import { signed } from '../../src/report/words/number-words.ts';
import { situationLabel } from '../../src/report/words/situation-label.ts';
import { majoritySure } from '../../src/report/words/sure-words.ts';
import { share } from '../../src/stats/share.ts';
import { hostilePlan } from './hostile-plan.ts';
import { inventedPlan } from './invented-plan.ts';

const plan = inventedPlan();
const callSheet = await renderCallSheet(plan);
const tipSheet = await renderTipSheet(plan);
const menu = plan.menu as Extract<MenuResult, { kind: 'menu' }>;

/** A menu of three calls on two paths in two situations, by hand. */
function handMenu(
  shares: readonly (readonly [number, number, number])[],
  most = 0.7,
): Extract<MenuResult, { kind: 'menu' }> {
  const calls = [
    { call: 'Rake Roof', path: 'rake', coverage: 'roof' },
    { call: 'Rake Lock', path: 'rake', coverage: 'lock' },
    { call: 'Torch', path: 'torch', coverage: 'roof' },
  ];
  const snaps = [20, 8];
  const uses = (k: number) => shares.reduce((sum, row, i) => sum + (row[k] ?? 0) * (snaps[i] ?? 0), 0);
  const rake = uses(0) + uses(1);
  return {
    ...menu,
    calls: calls.map((call, k) => ({
      ...call,
      family: 'three_under' as const,
      mix: shares.map((row, i) => ({ situation: `s${i}`, share: row[k] ?? 0 })),
      expectedCalls: uses(k),
      reps: 5,
      isNew: false,
      right: 0.4,
      wrong: 0.2,
    })),
    situations: shares.map((_, i) => ({
      id: `s${i}`,
      label: `S${i}`,
      expectedSnaps: snaps[i] ?? 0,
      rate: 1,
      baseShare: 0,
      worst: { answer: 'screen', points: 0 } as const,
    })),
    pairings: [0, 1].map((k) => ({
      path: 'rake',
      coverage: k === 0 ? 'roof' : 'lock',
      share: rake === 0 ? 0 : uses(k) / rake,
      calls: rake,
      most,
      uncounted: 0,
    })),
  };
}

/** Every second of a row in the order of its calls. */
function secondsOf(calls: ClockRow['calls']): readonly number[] {
  return calls.flatMap(({ first, seconds }) => Array.from({ length: seconds }, (_, i) => first + i));
}

/** Calls a game of one call if the rule is kept. */
function usesOf(made: typeof menu, rule: readonly ClockRow[], call: string): number {
  return rule.reduce((sum, { situation, calls }) => {
    const snaps = made.situations.find(({ id }) => id === situation)?.expectedSnaps ?? 0;
    return sum + (snaps * (calls.find((entry) => entry.call === call)?.seconds ?? 0)) / 60;
  }, 0);
}

/** How far a share of the row is from its plan at most. */
function farthest(calls: ClockRow['calls']): number {
  return Math.max(...calls.map(({ share: planned, seconds }) => Math.abs(seconds / 60 - planned)));
}

/** Whether some second of some situation calls it. */
function reached(rule: readonly ClockRow[], call: string): boolean {
  return rule.some(({ calls }) => calls.some((entry) => entry.call === call && entry.seconds > 0));
}

describe('clockRule', () => {
  const cut = fc.double({ min: 0, max: 1, noNaN: true });
  const row = fc.tuple(cut, cut, cut, cut).map(([a, b, c, base]) => {
    const sum = a + b + c + base + 1e-9;
    return [a / sum, b / sum, c / sum] as const;
  });

  it('gives out all sixty seconds once, keeps every share within five points, and reaches every call of the mix', () => {
    fc.assert(
      fc.property(row, row, (first, second) => {
        const made = handMenu([first, second], 1);
        const rule = clockRule(made);
        expect(rule).not.toBeNull();
        for (const { calls } of rule ?? []) {
          expect(secondsOf(calls)).toEqual(Array.from({ length: 60 }, (_, i) => i));
          expect(farthest(calls)).toBeLessThanOrEqual(CLOSE);
        }
        const called = made.calls.filter(({ mix }) => mix.some((part) => part.share > 1e-6));
        for (const { call } of called) expect(reached(rule ?? [], call)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it('lets no coverage follow its path more often than planned or allowed', () => {
    fc.assert(
      fc.property(row, row, (first, second) => {
        const made = handMenu([first, second], 0.7);
        const rule = clockRule(made);
        const [roof, lock] = ['Rake Roof', 'Rake Lock'].map((call) => usesOf(made, rule ?? [], call));
        const all = (roof ?? 0) + (lock ?? 0);
        fc.pre(rule !== null && all > 0 && made.pairings.every(({ share: planned }) => planned < 1));
        [roof, lock].forEach((uses, i) => {
          expect((uses ?? 0) / all).toBeLessThanOrEqual(Math.max(made.pairings[i]?.share ?? 0, 0.7) + 1e-5);
        });
      }),
      { numRuns: 200 },
    );
  });

  it('agrees with a mix shared out by hand', () => {
    // 60 x (0.25, 0.5, 0.2, 0.05) = 15, 30, 12, 3.
    const [only] = clockRule(handMenu([[0.5, 0.2, 0.05]], 1)) ?? [];
    expect(only?.calls.map(({ call, first, last }) => [call, first, last])).toEqual([
      ['Base', 0, 14],
      ['Rake Roof', 15, 44],
      ['Rake Lock', 45, 56],
      ['Torch', 57, 59],
    ]);
  });

  it('gives a call that rounds to nothing one second where it is called most', () => {
    const rule =
      clockRule(
        handMenu(
          [
            [0.5, 0.2, 0.004],
            [0.5, 0.2, 0],
          ],
          1,
        ),
      ) ?? [];
    expect(rule[0]?.calls.find(({ call }) => call === 'Torch')?.seconds).toBe(1);
  });
});

describe('the call sheet', () => {
  it('lists every situation of the menu, the field zones and two minute', () => {
    const labels = menu.situations.map(({ id }) => situationLabel(id));
    expect(labels.length).toBeGreaterThan(5);
    for (const label of [...labels, 'Backed up', 'Open field', 'Red zone', 'Goal line', 'Two minute'])
      expect(callSheet).toContain(`class="where">${label}</th>`);
  });

  it('names the base calls, numbers every call, and says the side to send it to', () => {
    for (const { number, call } of numberedCalls(plan))
      expect(callSheet).toContain(`${number} ${call.family === 'base' ? '' : '<bdi>'}${call.name}`);
    expect(callSheet.match(/▸ /g)?.length).toBeGreaterThan(menu.situations.length);
  });

  it('says for each look what each pressure does, and what their film shows of it', () => {
    const { columns, rows, notOnFilm, notCharted } = lookTable(plan);
    const silent = [...notOnFilm, ...notCharted];
    expect(rows.length).toBeGreaterThan(4);
    expect(columns.length + silent.length).toBe(SHEET_LOOKS.length);
    for (const { cells } of rows) expect(cells).toHaveLength(columns.length);
    for (const look of silent) expect(callSheet).toContain(look);
    expect(rows.flatMap(({ cells }) => cells).every((cell) => cell === '' || /^(stay|base|→ .+)\??$/.test(cell))).toBe(
      true,
    );
  });

  it('follows the coach’s own order of situations, the rest after it', () => {
    const own = {
      ...plan,
      settings: { ...plan.settings, sheet: { order: ['third_long' as const, 'second_short' as const] } },
    };
    const ids = sheetRows(own, menu).rows.map(({ id }) => id);
    expect(ids.slice(0, 2)).toEqual(['third_long', 'second_short']);
    expect([...ids].sort()).toEqual(menu.situations.map(({ id }) => id).sort());
  });

  it('lists calls by points and claims no mix when a library is there but no menu was chosen', async () => {
    const scored = await renderCallSheet({ ...plan, menu: null });
    expect(scored).toContain('No menu was chosen');
    const rows = parse(scored)
      .querySelectorAll('tr')
      .map((row) => [row.querySelector('th.where')?.text, row.querySelector('td.calls')?.text ?? ''] as const)
      .filter(([label]) => label !== undefined);
    // Situations expected at least once on Friday, the most frequent first.
    const expected = [...plan.scores.situations]
      .filter(({ expectedSnaps }) => expectedSnaps >= 1)
      .sort((a, b) => b.expectedSnaps - a.expectedSnaps);
    expect(rows.map(([label]) => label)).toEqual(expected.map(({ id }) => situationLabel(id)));
    rows.forEach(([, words], i) => {
      const here = plan.scores.calls.filter(({ situation }) => situation === expected[i]?.id);
      const best = here.filter(({ family }) => family !== 'base').sort((a, b) => b.points.mean - a.points.mean);
      const firstThree = best.slice(0, 3).map(({ call, points }) => `${call} ${signed(points.mean)}`);
      expect(words.split('; ').map((part) => part.replace(/ \(.*$/, ''))).toEqual(firstThree);
    });
  });

  it('without a library says so, and names the limits that clash', async () => {
    expect(await renderCallSheet({ ...plan, menu: null, library: null, ownFilm: null })).toContain('No call library');
    const clash = await renderCallSheet({
      ...plan,
      menu: { kind: 'infeasible', clashing: [{ kind: 'reps', limit: 120 }], notes: [] },
    });
    expect(clash).toContain('<li>at most 120 practice reps</li>');
  });

  it('carries the day of the game and no seed', async () => {
    const dated = await renderCallSheet({ ...plan, settings: { ...plan.settings, date: '2026-11-06' } });
    expect(dated).toContain('Fri Nov 6, 2026');
    expect(dated.slice(dated.indexOf('<body>'))).not.toMatch(/seed/);
  });
});

describe('the wristband', () => {
  it('numbers the calls as the call sheet does, on the card and in the CSV', async () => {
    const band = await renderWristband(plan);
    const numbered = numberedCalls(plan);
    for (const { number, call } of numbered) expect(band).toContain(`<b>${number}</b> <bdi>${call.name}</bdi>`);
    expect(
      wristbandRows(plan)
        .slice(1)
        .map(([number, call]) => [number, call]),
    ).toEqual(numbered.map(({ number, call }) => [String(number), call.name]));
  });
});

describe('the tip sheet', () => {
  it('names every pressure carried, in words for players, and explains near and far', () => {
    for (const name of ['Rake', 'Anvil', 'Torch', 'Latch Spy', 'Afterburn'])
      expect(tipSheet).toContain(`<bdi>${name}</bdi>`);
    expect(tipSheet).not.toContain('<bdi>Torch Zero</bdi>');
    expect(tipSheet).toContain('near: the side we send it to');
    expect(tipSheet).toContain('athletic trainer');
  });
});

describe('majoritySure', () => {
  it('is at most a lean under 20 snaps, and no difference where run and pass are even', () => {
    expect(majoritySure({ count: 17, trials: 18 })).toBe('lean');
    expect(majoritySure({ count: 27, trials: 31 })).toBe('clear');
    expect(majoritySure({ count: 50, trials: 100 })).toBe('no difference');
    // Mass of Beta(k + 1/2, n - k + 1/2) above one half by summing 200,000 strips: 11 of 20 .6721, 12 of 20 .8142.
    expect(majoritySure({ count: 12, trials: 20 })).toBe('likely');
    expect(majoritySure({ count: 11, trials: 20 })).toBe('lean');
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

  it('names one job with its count where it is more than half, and two where nothing is', () => {
    expect(jobs(33, 10, 10)).toBe('The back stays in to block 33 of 53 (62%).');
    expect(jobs(33, 32, 22)).toBe('The back stays in to block 33 of 87 (38%); the back gets out wide 32 of 87 (37%).');
  });

  it('says thin where a column was charted on fewer than 20 passes, and orders nothing off six', () => {
    expect(jobs(5, 2, 1)).toBe('The back stays in to block 5 of 8 (63%), thin.');
    const { mix } = plan.protection;
    const slides = (away: number, of: number) =>
      protectLines({
        ...plan,
        protection: { ...plan.protection, mix: { ...mix, slideToBack: share(of - away, of) } },
      }).find((line) => line.startsWith('Line'));
    expect(slides(5, 9)).toBe('Line slides away from the back 5 of 9 (56%), thin: too few to say, read it.');
    expect(slides(5, 6)).toBe('Line slides away from the back 5 of 6 (83%), thin: lean.');
    expect(slides(10, 10)).toBe('Line slides away from the back 10 of 10 (100%), thin: lean.');
    expect(slides(30, 58)).toBe('Line slides away from the back 30 of 58 (52%): both ways, read it.');
  });
});

describe('breakLines', () => {
  it('names no change of a path that is not carried this week', () => {
    const film = plan.ownFilm;
    if (film === null) throw new Error('the invented plan has our film');
    const [swap] = film.remedy.swaps;
    if (swap === undefined) throw new Error('the invented film has a swap');
    const swaps = [{ ...swap, path: 'not carried at all' }];
    expect(breakLines({ ...plan, ownFilm: { ...film, remedy: { ...film.remedy, swaps } } })).toEqual([]);
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
