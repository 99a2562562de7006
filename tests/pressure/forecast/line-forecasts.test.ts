import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { forecastFilm } from '../../../src/pressure/forecast/forecast-film.ts';
import { LINE_TARGETS, lineForecasts } from '../../../src/pressure/forecast/line-forecasts.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;
const film = (own: readonly SnapRecord[], archive: readonly SnapRecord[] | null = null) =>
  forecastFilm(filmFromRecords(own), archive === null ? null : filmFromRecords(archive), cuts);

const times = (count: number, snap: SnapRecord): SnapRecord[] =>
  Array.from({ length: count }, (_, i) => ({ game: `w${i % 4}`, ...snap }));
const gun = { down: 1, to_go: 10, quarterback_depth: 'shotgun' };
const under = { down: 2, to_go: 2, quarterback_depth: 'under_center' };
const own = [
  ...times(30, { ...gun, receivers: '3x1', play_kind: 'quick' }),
  ...times(10, { ...gun, receivers: '2x2', play_kind: 'run' }),
  ...times(36, { ...under, receivers: '2x2', play_kind: 'run' }),
  ...times(4, { ...under, receivers: '2x2', play_kind: 'dropback' }),
];

describe('lineForecasts', () => {
  const lines = lineForecasts(film(own), 60);
  const find = (look: string, situation = 'all') => lines.find((l) => l.look === look && l.situation === situation);
  const passOf = (look: string) => find(look)?.forecasts[0]?.classes.find(({ name }) => name === 'pass');

  it('speaks of the looks they have shown, and of no other', () => {
    expect(lines.filter(({ situation }) => situation === 'all').map(({ look, snaps }) => [look, snaps])).toEqual([
      ['under_center', 40],
      ['shotgun', 40],
      ['balanced', 50],
      ['trips', 30],
    ]);
  });

  it('answers each question at the line, with shares that sum to 1 within their intervals', () => {
    for (const { forecasts } of lines) {
      expect(forecasts.map(({ target }) => target)).toEqual(LINE_TARGETS);
      for (const { classes } of forecasts) {
        expect(classes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(classes.every(({ low, share, high }) => low <= share && share <= high)).toBe(true);
      }
    }
  });

  it('tells the looks apart, with the plain count beside the forecast', () => {
    expect(passOf('shotgun')?.film).toMatchObject({ count: 30, trials: 40 });
    expect(passOf('under_center')?.film).toMatchObject({ count: 4, trials: 40 });
    expect(passOf('shotgun')!.share).toBeGreaterThan(0.6);
    expect(passOf('under_center')!.share).toBeLessThan(0.25);
    expect(passOf('trips')!.share).toBeGreaterThan(passOf('balanced')!.share);
  });

  it('splits by down and distance only from ten snaps on', () => {
    const inner = lines.filter(({ situation }) => situation !== 'all');
    expect(inner.map(({ look, situation, snaps }) => [look, situation, snaps])).toEqual([
      ['under_center', 'second_short', 40],
      ['shotgun', 'first_ten', 40],
      ['balanced', 'first_ten', 10],
      ['balanced', 'second_short', 40],
      ['trips', 'first_ten', 30],
    ]);
  });

  it("shares out Friday's snaps as their film does", () => {
    const next = (look: string) => find(look)!.forecasts[0]!.nextSnaps;
    expect(next('under_center') + next('shotgun')).toBeCloseTo(60, 9);
    expect(next('trips')).toBeCloseTo((60 * 30) / 80, 9);
    const [run, screen] = find('shotgun')!.forecasts;
    expect(screen!.nextSnaps).toBeCloseTo(run!.nextSnaps * passOf('shotgun')!.share, 9);
  });

  it('says nothing where no look was charted, and takes archives of any kind', () => {
    const blank = own.map(({ quarterback_depth: _, receivers: __, ...rest }) => rest as SnapRecord);
    expect(lineForecasts(film(blank), 60)).toEqual([]);
    expect(lineForecasts(film(blank, own), 60)).toEqual([]);
    expect(lineForecasts(film(own, blank), 60)).toHaveLength(lines.length);
    expect(lineForecasts(film([]), 60)).toEqual([]);
  });

  it('comes nearer to the film with an archive that does the very same: its cells bear the film out', () => {
    const off = (all: typeof lines) =>
      all.flatMap(({ forecasts }) =>
        forecasts.flatMap(({ classes }) =>
          classes.flatMap(({ share, film: { estimate } }) => (estimate === null ? [] : [Math.abs(share - estimate)])),
        ),
      );
    const [alone, joined] = [off(lines), off(lineForecasts(film(own, own), 60))];
    expect(joined).toHaveLength(alone.length);
    joined.forEach((distance, i) => {
      expect(distance).toBeLessThan(alone[i]! + 0.01);
    });
  });
});
