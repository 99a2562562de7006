import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { archiveWeight } from '../../../src/pressure/archive/archive-weight.ts';
import { countStyle, styleCodes, styleDistance, withoutStyle } from '../../../src/pressure/archive/style-distance.ts';
import { forecastWeek } from '../../../src/pressure/forecast/week/forecast.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Nobody' });
const snaps = (size: number, [offense, name, play_kind]: readonly [string, string, string]): SnapRecord[] =>
  Array(size).fill({ offense, game: name, play_kind });

describe('the archive’s weight', () => {
  const chart = filmFromRecords([...snaps(25, ['Us next', 'g1', 'run']), ...snaps(25, ['Us next', 'g2', 'run'])]);
  const archive = filmFromRecords([
    ...snaps(25, ['Far', 'f1', 'quick']),
    ...snaps(20, ['Near', 'n1', 'run']),
    ...snaps(20, ['Near', 'n2', 'quick']),
    ...snaps(5, ['Small', 's1', 'run']),
  ]);
  const forecast = forecastWeek({ chart, archive, settings });
  const weight = archiveWeight({ chart, archive, settings, forecast });

  it('names the offenses with games and snaps, the most alike first, the unknown last', () => {
    expect(weight.offenses).toEqual([
      { offense: 'Near', games: 2, snaps: 40, style: 0.5, yards: null },
      { offense: 'Far', games: 1, snaps: 25, style: 1, yards: null },
      { offense: 'Small', games: 1, snaps: 5, style: null, yards: null },
    ]);
    expect(weight).toMatchObject({ offenseGames: 4, snaps: 70, ownGames: 0 });
  });

  it('says for each target how much their own film counts, as the forecast has it, and null where nobody charted it', () => {
    const use = (target: string) => weight.uses.find((entry) => entry.target === target);
    const told = forecast.forecasts.find((one) => one.target === 'run_or_pass' && one.situation === 'all');
    expect(use('run_or_pass')).toEqual({ target: 'run_or_pass', games: 4, ownShare: told?.ownShare });
    expect(told?.ownShare).toBeGreaterThan(0.5);
    expect(use('motion')).toEqual({ target: 'motion', games: 0, ownShare: null });
    expect(use('screen')).toMatchObject({ ownShare: 0 });
  });

  it('counts a game for a target once somebody charted it there, on however few of its snaps', () => {
    const games = (motions: readonly (string | undefined)[]) =>
      filmFromRecords(
        motions.map((motion, i) => ({
          offense: 'Far',
          game: `f${i % 2}`,
          play_kind: 'run',
          ...(motion && { motion }),
        })),
      );
    const motionGames = (archive: Film) =>
      archiveWeight({ chart, archive, settings, forecast }).uses.find(({ target }) => target === 'motion')?.games;
    expect(motionGames(games(['fast', undefined, undefined, undefined]))).toBe(1);
    expect(motionGames(games(['fast', undefined, undefined, 'none']))).toBe(2);
  });

  it('sets yards a snap beside the opponent’s, from the snaps with a charted gain', () => {
    const gained = (offense: string, gains: readonly number[]): SnapRecord[] =>
      gains.map((gain) => ({ offense, game: 'g', play_kind: 'run', gain }));
    const level = archiveWeight({
      chart: filmFromRecords([...gained('Us next', [2, 4]), { play_kind: 'run' }]),
      archive: filmFromRecords(gained('Far', [7, 8, 9])),
      settings,
      forecast,
    });
    expect([level.ownYards, level.offenses[0]?.yards]).toEqual([3, 8]);
  });

  it('no archive is an answer of its own', () => {
    expect(archiveWeight({ chart, archive: null, settings, forecast })).toMatchObject({
      offenses: [],
      offenseGames: 0,
      snaps: 0,
    });
  });

  it('one game of the opponent has no distance from itself', () => {
    const single = filmFromRecords(snaps(25, ['Us next', 'g1', 'run']));
    expect(archiveWeight({ chart: single, archive: null, settings, forecast }).ownGames).toBeNull();
  });
});

const allRows = (chart: Film) => Array.from({ length: chart.size }, (_, i) => i);
const styleOf = (chart: Film, rows = allRows(chart)) => countStyle(styleCodes(chart, settings.situations), rows);

describe('distance in style', () => {
  const kind = fc.constantFrom('run', 'quick', 'dropback', 'screen');
  const film = fc
    .array(kind, { minLength: 20, maxLength: 40 })
    .map((kinds) =>
      filmFromRecords(kinds.map((play_kind, i) => ({ play_kind, motion: i % 3 === 0 ? 'fast' : 'none' }))),
    );
  it('is 0 to itself, the same both ways, and between 0 and 1', () => {
    fc.assert(
      fc.property(film, film, (one, other) => {
        expect(styleDistance(styleOf(one), styleOf(one))).toBeCloseTo(0, 12);
        const there = styleDistance(styleOf(one), styleOf(other)) ?? -1;
        expect(there).toBeCloseTo(styleDistance(styleOf(other), styleOf(one)) ?? -2, 12);
        expect(there).toBeGreaterThanOrEqual(0);
        expect(there).toBeLessThanOrEqual(1);
      }),
      { numRuns: 40 },
    );
  });

  it('counts the whole less a part as it counts the rest', () => {
    fc.assert(
      fc.property(film, fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }), (whole, inPart) => {
        const part = allRows(whole).filter((row) => inPart[row]);
        const rest = allRows(whole).filter((row) => !inPart[row]);
        expect(withoutStyle(styleOf(whole), styleOf(whole, part))).toEqual(styleOf(whole, rest));
      }),
      { numRuns: 40 },
    );
  });
});
