import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, joinFilms, type SnapRecord } from '../../../src/game/film.ts';
import { PLAY_KINDS } from '../../../src/game/vocabulary.ts';
import { halftimeUpdate } from '../../../src/pressure/halftime/halftime.ts';
import { ourFirstHalf } from '../../../src/pressure/halftime/our-first-half.ts';
import { rankCalls } from '../../../src/pressure/halftime/rank-calls.ts';
import { inventedPlan } from '../../report/invented-plan.ts';

const plan = inventedPlan();
const withDiscount = (live_discount: number) => ({ ...plan, settings: { ...plan.settings, live_discount } });
const anySnap: fc.Arbitrary<SnapRecord> = fc.record(
  {
    down: fc.integer({ min: 1, max: 4 }),
    to_go: fc.integer({ min: 1, max: 15 }),
    play_kind: fc.constantFrom(...PLAY_KINDS),
    gain: fc.integer({ min: -5, max: 25 }),
    call: fc.constantFrom('Rake', 'Torch', 'Steady', 'Nothing we know'),
  },
  { requiredKeys: ['down', 'to_go', 'play_kind'] },
);
const snaps = fc.array(anySnap, { maxLength: 20 });
const live = (records: readonly SnapRecord[]) => filmFromRecords(records, 'live.csv');

describe('the halftime update', () => {
  it('at a discount of 0 every call and family stands where Sunday left it', () => {
    fc.assert(
      fc.property(snaps, (records) => {
        const { calls, families } = halftimeUpdate({ plan: withDiscount(0), live: live(records), film: null });
        for (const entry of [...calls, ...families]) expect(entry.now).toBe(entry.before);
        calls.forEach(({ rankBefore }, i) => {
          expect(rankBefore).toBe(i + 1);
        });
      }),
      { numRuns: 6 },
    );
  });

  it('a live file in two halves equals one file, calls and all', () => {
    fc.assert(
      fc.property(snaps, snaps, (first, second) => {
        const two = halftimeUpdate({ plan, live: joinFilms([live(first), live(second)]), film: null });
        expect(two).toEqual(halftimeUpdate({ plan, live: live([...first, ...second]), film: null }));
      }),
      { numRuns: 6 },
    );
  });

  it('without live snaps nothing has moved', () => {
    const { moved, calls, liveSnaps } = halftimeUpdate({ plan, live: live([]), film: null });
    expect(moved).toMatchObject({ looked: 0, moved: [] });
    expect(liveSnaps).toBe(0);
    for (const { before, now, used } of calls) expect([now, used]).toEqual([before, 0]);
  });

  it('ranks only the carried calls, without the base of the menu being lost', () => {
    const { calls } = halftimeUpdate({ plan, live: live([]), film: null });
    const carried = plan.menu?.kind === 'menu' ? plan.menu.calls.map(({ call }) => call) : [];
    expect(calls.map(({ call }) => call).sort()).toEqual([...carried].sort());
  });

  it('more of an answer moves a call by its points against that answer', () => {
    const records = Array(20).fill({ down: 3, to_go: 12, play_kind: 'screen' });
    const { forecasts, calls } = halftimeUpdate({ plan, live: live(records), film: null });
    const answers = forecasts.find(({ target, situation }) => target === 'answer' && situation === 'third_long');
    const score = plan.scores.calls.find(({ call, situation }) => call === 'Rake' && situation === 'third_long');
    const expected = answers?.classes.reduce((sum, { name, share, before }) => {
      const points = score?.byAnswer.find(({ answer }) => answer === name)?.points ?? 0;
      return sum + (share - before) * points;
    }, 0);
    const rake = calls.find(({ call }) => call === 'Rake')?.bySituation.find((s) => s.situation === 'third_long');
    expect((rake?.now ?? 0) - (rake?.before ?? 0)).toBeCloseTo(expected ?? Number.NaN, 9);
    expect(rankCalls({ scores: plan.scores, live: forecasts }, [])).toEqual([]);
  });

  it('counts the calls already used, whatever their spelling, and what is planned', () => {
    const records = ['Rake', 'rake ', 'Torch'].map((call) => ({ down: 1, to_go: 10, play_kind: 'run', call }));
    const { calls } = halftimeUpdate({ plan, live: live(records), film: null });
    expect(calls.find(({ call }) => call === 'Rake')?.used).toBe(2);
    expect(calls.find(({ call }) => call === 'Latch')?.used).toBe(0);
    expect(calls.every(({ planned }) => planned >= 0)).toBe(true);
  });

  it('warns of a pressure path that went with one coverage too often, and names what breaks it', () => {
    const records = Array(4).fill({ down: 1, to_go: 10, play_kind: 'run', call: 'Rake' });
    expect(halftimeUpdate({ plan, live: live(records), film: null }).warnings).toEqual([
      { path: 'rake', coverage: 'three deep', count: 4, trials: 4, instead: ['Rake Man'] },
    ]);
    const base = Array(4).fill({ down: 1, to_go: 10, play_kind: 'run', call: 'Steady' });
    expect(halftimeUpdate({ plan, live: live(base), film: null }).warnings).toEqual([]);
  });

  it('without a library or menu it still says what moved', () => {
    const bare = { ...plan, library: null, menu: null };
    const { calls, ours, warnings } = halftimeUpdate({
      plan: bare,
      live: live([{ down: 1, to_go: 10, play_kind: 'run', call: 'Rake' }]),
      film: null,
    });
    expect([calls, warnings]).toEqual([[], []]);
    expect(ours).toMatchObject({ charted: { count: 1, trials: 1 }, pressures: { trials: 0, estimate: null } });
  });
});

describe('our own tendency tonight', () => {
  it('a call held on a stop, a loss or a takeaway, of the snaps with a known outcome', () => {
    const chart = live([
      { down: 1, to_go: 10, gain: 2, play_kind: 'run', call: 'Rake' },
      { down: 1, to_go: 10, gain: 8, play_kind: 'run', call: 'Rake' },
      { down: 1, to_go: 10, play_kind: 'run', call: 'Rake' },
      { down: 1, to_go: 10, gain: 3, play_kind: 'run', call: 'Unheard' },
    ]);
    const ours = ourFirstHalf(chart, plan.library);
    expect(ours.calls[0]).toMatchObject({ call: 'Rake', snaps: 3, held: { count: 1, trials: 2 } });
    expect(ours.unknown).toEqual(['Unheard']);
    expect(ours.pressures).toMatchObject({ count: 3, trials: 3 });
    expect(ours.paths).toMatchObject([{ path: 'rake', coverage: 'three deep', share: { count: 3, trials: 3 } }]);
  });
});
