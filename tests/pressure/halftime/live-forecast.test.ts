import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, joinFilms, type SnapRecord } from '../../../src/game/film.ts';
import { PLAY_KINDS } from '../../../src/game/vocabulary.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { liveForecasts } from '../../../src/pressure/halftime/live-forecast.ts';
import { liveTallies, liveTotals, NO_SITUATION } from '../../../src/pressure/halftime/live-tally.ts';
import { inventedForecast } from '../../report/invented-forecast.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Nobody' }).situations;
const chapter = inventedForecast();
const anySnap: fc.Arbitrary<SnapRecord> = fc.record({
  down: fc.integer({ min: 1, max: 4 }),
  to_go: fc.integer({ min: 1, max: 15 }),
  play_kind: fc.constantFrom(...PLAY_KINDS),
});
const snaps = fc.array(anySnap, { maxLength: 25 });

function tonightOf(records: readonly SnapRecord[], discount: number) {
  return liveForecasts(chapter, liveTallies(filmFromRecords(records), cuts), discount);
}

describe("Sunday's forecast with tonight's snaps", () => {
  it('is untouched at a discount of 0', () => {
    fc.assert(
      fc.property(snaps, (records) => {
        tonightOf(records, 0).forEach((live, i) => {
          const sunday = chapter.forecasts[i];
          expect(live.classes.map(({ name, share, low, high, alpha }) => ({ name, share, low, high, alpha }))).toEqual(
            sunday?.classes.map(({ name, share, low, high, alpha }) => ({ name, share, low, high, alpha })),
          );
        });
      }),
      { numRuns: 8 },
    );
  });

  it('pools film and tonight at a discount of 1: pseudo-counts plus counts', () => {
    fc.assert(
      fc.property(snaps, (records) => {
        const totals = new Map(
          liveTallies(filmFromRecords(records), cuts).map((tally) => [tally.target, liveTotals(tally)]),
        );
        for (const live of tonightOf(records, 1).filter(({ situation }) => situation === 'all')) {
          const sunday = chapter.forecasts.find(
            ({ target, situation }) => target === live.target && situation === 'all',
          );
          live.classes.forEach(({ alpha }, k) => {
            expect(alpha).toBeCloseTo((sunday?.classes[k]?.alpha ?? 0) + (totals.get(live.target)?.[k] ?? 0), 9);
          });
        }
      }),
      { numRuns: 8 },
    );
  });

  it('a situation that had all the snaps pools them too, and nothing else', () => {
    const records = Array(6).fill({ down: 3, to_go: 12, play_kind: 'screen' });
    const live = tonightOf(records, 1).find(
      ({ target, situation }) => target === 'answer' && situation === 'third_long',
    );
    const sunday = chapter.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'third_long');
    const added = live?.classes.map(({ alpha }, k) => alpha - (sunday?.classes[k]?.alpha ?? 0));
    for (const [k, count] of [0, 0, 6, 0, 0, 0, 0].entries()) expect(added?.[k]).toBeCloseTo(count, 9);
  });

  it('screens seen elsewhere raise the expectation of screens here, less than screens seen here', () => {
    const screenIn = (situation: string, records: readonly SnapRecord[]) =>
      tonightOf(records, 1)
        .find((live) => live.target === 'answer' && live.situation === situation)
        ?.classes.find(({ name }) => name === 'screen');
    const elsewhere = screenIn('third_long', Array(6).fill({ down: 2, to_go: 9, play_kind: 'screen' }));
    const here = screenIn('third_long', Array(6).fill({ down: 3, to_go: 9, play_kind: 'screen' }));
    expect(elsewhere?.share).toBeGreaterThan(elsewhere?.before ?? 1);
    expect(here?.share).toBeGreaterThan(elsewhere?.share ?? 1);
    expect(elsewhere?.firstHalf).toMatchObject({ count: 0, trials: 0, estimate: null });
  });

  it('a live file in two halves equals one file', () => {
    fc.assert(
      fc.property(snaps, snaps, fc.double({ min: 0, max: 1, noNaN: true }), (first, second, discount) => {
        const joined = joinFilms([filmFromRecords(first, 'live-1.csv'), filmFromRecords(second, 'live-2.csv')]);
        const halves = liveForecasts(chapter, liveTallies(joined, cuts), discount);
        expect(halves).toEqual(tonightOf([...first, ...second], discount));
      }),
      { numRuns: 8 },
    );
  });

  it('shares still sum to one and lie in their intervals', () => {
    fc.assert(
      fc.property(snaps, fc.double({ min: 0, max: 1, noNaN: true }), (records, discount) => {
        for (const { classes } of tonightOf(records, discount)) {
          expect(classes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        }
      }),
      { numRuns: 8 },
    );
  });

  it('a snap without a situation counts for all snaps only', () => {
    const [answers] = liveTallies(filmFromRecords([{ play_kind: 'run' }]), cuts);
    expect([...(answers?.bySituation.keys() ?? [])]).toEqual([NO_SITUATION]);
  });

  it('a forecast pooled with all snaps carries the weight of all snaps', () => {
    const pooled = chapter.forecasts.map((forecast) =>
      forecast.target === 'motion' && forecast.situation !== 'all'
        ? { ...forecast, classes: forecast.classes.map((entry) => ({ ...entry, alpha: Number.POSITIVE_INFINITY })) }
        : forecast,
    );
    const records = Array(5).fill({ down: 3, to_go: 12, motion: 'fast' });
    const tallies = liveTallies(filmFromRecords(records), cuts);
    const live = liveForecasts({ ...chapter, forecasts: pooled }, tallies, 1);
    const found = live.find(({ target, situation }) => target === 'motion' && situation === 'third_long');
    expect(found?.classes.every(({ share, alpha }) => share > 0 && share < 1 && Number.isFinite(alpha))).toBe(true);
    expect(found?.classes[0]?.share).toBeGreaterThan(found?.classes[0]?.before ?? 1);
  });
});
