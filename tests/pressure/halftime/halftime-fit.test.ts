import { describe, expect, it } from 'vitest';
import { filmFromRecords, joinFilms, type SnapRecord } from '../../../src/game/film.ts';
import { fitChapter } from '../../../src/pressure/fit/fit-chapter.ts';
import { firstHalfMarks } from '../../../src/pressure/halftime/first-half-marks.ts';
import { halftimeUpdate } from '../../../src/pressure/halftime/halftime.ts';
import { halftimeFit } from '../../../src/pressure/halftime/halftime-fit.ts';
import { inventedPlan } from '../../report/invented-plan.ts';

const thirdLong = (play_kind: string, more: SnapRecord = {}): SnapRecord => ({
  down: 3,
  to_go: 12,
  play_kind,
  ...more,
});
const film = filmFromRecords([
  ...Array(30).fill({ down: 1, to_go: 10, play_kind: 'run' }),
  ...Array(15).fill(thirdLong('dropback', { back_action: 'blocks' })),
  ...Array(5).fill(thirdLong('screen', { back_action: 'releases_wide' })),
]);
const bare = inventedPlan();
const fit = fitChapter({
  chart: film,
  forecast: bare.forecast,
  cuts: bare.settings.situations,
  library: bare.library,
  pressured: bare.pressured,
  seed: 1,
});
const plan = { ...bare, fit };
const screens = filmFromRecords(Array(15).fill(thirdLong('screen', { back_action: 'releases_wide', snap: 3 })));

describe('fit at halftime', () => {
  it('falls for a call that screens make wrong, by the same rules as on Sunday', () => {
    const update = halftimeUpdate({ plan, live: screens, film });
    expect(update.fitMoved).toBe(true);
    const hurt = update.calls.filter(({ family }) => family === 'hot' || family === 'three_under');
    expect(hurt.length).toBeGreaterThan(0);
    for (const { fit: net } of hurt) expect(net?.now ?? 0).toBeLessThan(net?.before ?? 0);
  });

  it('puts the best fit now first and keeps the place Sunday’s fit gave each call, from one', () => {
    const { calls } = halftimeUpdate({ plan, live: screens, film });
    const order = (when: 'before' | 'now') => calls.map(({ fit: net }) => net?.[when] as number);
    expect(order('now')).toEqual([...order('now')].sort((a, b) => b - a));
    expect(calls.map(({ rankBefore }) => rankBefore).sort((a, b) => a - b)).toEqual(calls.map((_, i) => i + 1));
    const onSunday = [...calls]
      .sort((a, b) => a.rankBefore - b.rankBefore)
      .map(({ fit: net }) => net?.before as number);
    expect(onSunday).toEqual([...onSunday].sort((a, b) => b - a));
  });

  it('stands where Sunday left it without the film, without snaps, or when tonight counts for nothing', () => {
    const nothing = { ...plan, settings: { ...plan.settings, live_discount: 0 } };
    for (const input of [
      { plan, live: screens, film: null },
      { plan, live: filmFromRecords([]), film },
      { plan: nothing, live: screens, film },
    ]) {
      const update = halftimeUpdate(input);
      expect(update.fitMoved).toBe(false);
      for (const { fit: net } of update.calls) expect(net?.now).toBe(net?.before);
    }
  });

  it('is what the fit of a plan made of the same snaps and forecast says of each carried call', () => {
    const { forecasts } = halftimeUpdate({ plan, live: screens, film });
    const shares = plan.forecast.forecasts.map((forecast) => {
      const now = forecasts.find((one) => one.target === forecast.target && one.situation === forecast.situation);
      return now
        ? { ...forecast, classes: forecast.classes.map((one, k) => ({ ...one, ...now.classes[k] })) }
        : forecast;
    });
    const { calls } = fitChapter({
      chart: joinFilms([film, screens]),
      forecast: { ...plan.forecast, forecasts: shares },
      cuts: plan.settings.situations,
      library: plan.library,
      pressured: plan.pressured,
      seed: 1,
    });
    const fitted = halftimeFit({ plan, film, live: screens, forecasts }) ?? [];
    expect(fitted.length).toBeGreaterThan(20);
    for (const { call, situation, net } of fitted)
      expect(net.mean).toBe(calls.find((one) => one.call === call && one.situation === situation)?.net.mean);
  });

  it('is Sunday’s fit in the sheet’s order where nothing came', () => {
    const update = halftimeUpdate({ plan, live: filmFromRecords([]), film });
    const there = update.situations.find(({ situation }) => situation === 'third_long')?.calls ?? [];
    expect(there.length).toBeGreaterThan(2);
    for (const { call, before } of there) {
      const sunday = fit.calls.find((one) => one.call === call && one.situation === 'third_long');
      expect(before).toBe(sunday?.net.mean);
    }
    expect(update.situations.every(({ overtakings }) => overtakings.length === 0)).toBe(true);
  });

  it('marks a snap for every call that can be judged on it, by number or by row', () => {
    const library = bare.library;
    if (!library) throw new Error('the invented plan has a library');
    const live = filmFromRecords([thirdLong('screen', { snap: 12 }), { down: 1, to_go: 10 }]);
    const [screen, unknown] = firstHalfMarks(live, library, bare.settings.situations);
    expect([screen?.name, screen?.situation]).toEqual(['12', 'third_long']);
    const base = library.calls.find(({ family }) => family === 'base')?.name ?? '';
    expect(screen?.nets.get(base)).toBe(1);
    expect(unknown?.name).toBe('row 3');
    expect(unknown?.nets.has(base)).toBe(false);
  });
});
