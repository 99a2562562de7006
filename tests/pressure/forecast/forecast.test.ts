import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { SITUATIONS } from '../../../src/game/situations.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { Forecast, Target } from '../../../src/pressure/forecast/forecast-result.ts';
import { TARGETS } from '../../../src/pressure/forecast/forecast-result.ts';
import { forecastWeek } from '../../../src/pressure/forecast/week/forecast.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Cinder Vale', snaps: 60 });

const snap = fc.record<SnapRecord>({
  game: fc.constantFrom('w01', 'w02', 'w03'),
  down: fc.integer({ min: 1, max: 4 }),
  to_go: fc.integer({ min: 1, max: 15 }),
  ball_on: fc.integer({ min: 1, max: 99 }),
  quarter: fc.integer({ min: 1, max: 4 }),
  play_kind: fc.constantFrom('run', 'screen', 'quick', 'dropback', 'pass'),
  quarterback_depth: fc.constantFrom('shotgun', 'under_center'),
}) as fc.Arbitrary<SnapRecord>;
const film = fc.array(snap, { minLength: 1, maxLength: 60 });

const forecastOf = (records: readonly SnapRecord[], archive: readonly SnapRecord[] | null = null) =>
  forecastWeek({
    chart: filmFromRecords(records),
    archive: archive === null ? null : filmFromRecords(archive),
    settings,
  });

function find(forecasts: readonly Forecast[], target: Target, situation: string): Forecast {
  const found = forecasts.find((forecast) => forecast.target === target && forecast.situation === situation);
  if (!found) throw new Error(`no forecast of ${target} in ${situation}`);
  return found;
}

const runs = (count: number, passes: number, game = 'w01'): SnapRecord[] => [
  ...Array.from({ length: count }, (): SnapRecord => ({ game, down: 1, to_go: 10, play_kind: 'run' })),
  ...Array.from({ length: passes }, (): SnapRecord => ({ game, down: 1, to_go: 10, play_kind: 'quick' })),
];

describe('forecastWeek', () => {
  it('speaks of every target over all snaps and in every situation', () => {
    const { forecasts } = forecastOf(runs(5, 5));
    expect(forecasts.map(({ target, situation }) => `${target} ${situation}`)).toEqual(
      TARGETS.flatMap((target) => ['all', ...SITUATIONS.map(({ id }) => id)].map((id) => `${target} ${id}`)),
    );
  });

  it('gives shares that sum to 1 within their intervals, and counts within what is expected', () => {
    fc.assert(
      fc.property(film, fc.option(film), (own, archive) => {
        for (const { classes, expected, nextSnaps } of forecastOf(own, archive).forecasts) {
          expect(classes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
          expect(classes.every(({ share, low, high }) => low <= share + 1e-9 && share - 1e-9 <= high)).toBe(true);
          expect(expected.every(({ low, high }) => 0 <= low && low <= high && high <= Math.round(nextSnaps))).toBe(
            true,
          );
        }
      }),
      { numRuns: 20 },
    );
  });

  it('is narrower with more film of the same kind', () => {
    const widthOf = (games: number) => {
      const records = Array.from({ length: games }, (_, i) => runs(12, 8, `w${i}`)).flat();
      const { classes } = find(forecastOf(records).forecasts, 'run_or_pass', 'all');
      return classes[0]!.high - classes[0]!.low;
    };
    const widths = [1, 2, 4, 8, 16].map(widthOf);
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    expect(widths.at(-1)).toBeLessThan(widths[0]! / 2);
  });

  it('says how much their own film counts, which is all where there is no other', () => {
    fc.assert(
      fc.property(film, film, (own, archive) => {
        const alone = forecastOf(own).forecasts.filter(({ situation }) => situation === 'all');
        for (const { ownShare, ownSnaps } of alone) expect(ownShare).toBe(Number(ownSnaps > 0));
        const shares = forecastOf(own, archive).forecasts.map(({ ownShare }) => ownShare);
        expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
        expect(Math.max(...shares)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 15 },
    );
  });

  it('moves toward the archive, and the less the more film there is', () => {
    const archive = runs(400, 100);
    const shareOf = (own: SnapRecord[]) =>
      find(forecastOf(own, archive).forecasts, 'run_or_pass', 'all').classes[0]!.share;
    const [few, many] = [
      shareOf(runs(4, 16)),
      shareOf(Array.from({ length: 60 }, (_, i) => runs(4, 16, `w${i}`)).flat()),
    ];
    expect(few).toBeGreaterThan(many);
    expect(few).toBeLessThan(0.8);
    expect(many).toBeGreaterThan(0.2);
  });

  it('counts no blank: a target nobody charted says so, with even shares and no count forecast of its own', () => {
    const { forecasts } = forecastOf(runs(10, 10));
    const motion = find(forecasts, 'motion', 'all');
    expect(motion.ownSnaps).toBe(0);
    expect(motion.mostlyFrom).toBe('nothing');
    expect(motion.classes.map(({ share }) => share)).toEqual([0.5, 0.5]);
    expect(motion.classes[0]!.film.estimate).toBeNull();
    expect(motion.expected).toEqual([]);
  });

  it('does not take a bare pass for "no screen" in a film that never uses the word', () => {
    const bare = [
      ...runs(5, 0),
      ...Array.from({ length: 9 }, (): SnapRecord => ({ down: 3, to_go: 8, play_kind: 'pass' })),
    ];
    expect(find(forecastOf(bare).forecasts, 'screen', 'all').ownSnaps).toBe(0);
    const told = [...bare, { down: 3, to_go: 8, play_kind: 'screen' }];
    expect(find(forecastOf(told).forecasts, 'screen', 'all').ownSnaps).toBe(10);
  });

  it('gives no count forecast where fewer than five such snaps are expected, and calls fewer than 20 thin', () => {
    const third = Array.from({ length: 3 }, (): SnapRecord => ({ game: 'w01', down: 3, to_go: 9, play_kind: 'quick' }));
    const { forecasts } = forecastOf([...runs(40, 20), ...third]);
    expect(find(forecasts, 'answer', 'third_long')).toMatchObject({ expected: [], thin: true, ownSnaps: 3 });
    expect(find(forecasts, 'answer', 'first_ten').thin).toBe(false);
    expect(find(forecasts, 'answer', 'first_ten').expected).not.toEqual([]);
  });

  it('expects as many snaps on Friday as the week says, spread over the situations', () => {
    fc.assert(
      fc.property(film, fc.option(film), (own, archive) => {
        const { forecasts } = forecastOf(own, archive);
        const spread = SITUATIONS.map(({ id }) => find(forecasts, 'answer', id).nextSnaps);
        expect(spread.reduce((sum, snaps) => sum + snaps, 0)).toBeCloseTo(60, 6);
        expect(find(forecasts, 'answer', 'all').nextSnaps).toBe(60);
      }),
      { numRuns: 15 },
    );
  });

  it('answers an empty chart and a single snap', () => {
    for (const records of [[], runs(1, 0)]) {
      const { forecasts } = forecastOf(records);
      expect(find(forecasts, 'answer', 'all').ownSnaps).toBe(records.length);
    }
  });
});
