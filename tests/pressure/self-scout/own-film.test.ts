import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { ownFilmChapter } from '../../../src/pressure/self-scout/own-film.ts';
import { createRandom } from '../../../src/stats/random.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Harrow Creek' });
const chapterOf = (records: readonly SnapRecord[]) =>
  ownFilmChapter({ ownFilm: filmFromRecords(records), library: null, settings, scores: null, seed: 1 });

const paths = ['one', 'two', 'three', 'four', 'five', 'six'];
const coverages = ['a', 'b', 'c', 'd', 'e'];

function shuffledLog(seed: number, size: number): SnapRecord[] {
  const random = createRandom(`log ${seed}`);
  return Array.from({ length: size }, (_, i) => ({
    game: `g${i % 6}`,
    down: 3,
    to_go: 8,
    family: 'hot',
    path: paths[random.integer(paths.length)]!,
    coverage: coverages[random.integer(coverages.length)]!,
  }));
}

/** Pressure depends on the down alone; hash and receivers are drawn apart from it. */
function situationLog(size: number): SnapRecord[] {
  const random = createRandom('no tells');
  return Array.from({ length: size }, (_, i) => {
    const spot = random.uniform() < 0.4 ? { down: 3, to_go: 8, rate: 0.7 } : { down: 1, to_go: 10, rate: 0.3 };
    return {
      game: `g${i % 6}`,
      down: spot.down,
      to_go: spot.to_go,
      hash: ['left', 'middle', 'right'][random.integer(3)]!,
      receivers: ['2x2', '3x1'][random.integer(2)]!,
      family: random.uniform() < spot.rate ? 'hot' : 'base',
    };
  });
}

describe('ownFilmChapter', () => {
  it('shows the U of .13 that chance alone gives 60 independent pairings of 6 x 5', () => {
    // Source: simulation of 3,000 independent tables, 6 pressures x 5 coverages, N = 60: mean Theil U .132 (R 4.2.2).
    const found = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => chapterOf(shuffledLog(seed, 60)).predictability);
    const mean = found.reduce((sum, { chance }) => sum + (chance ?? 0), 0) / found.length;
    expect(Math.abs(mean - 0.132)).toBeLessThan(0.03);
    expect(found.filter(({ p }) => (p ?? 1) >= 0.05).length).toBeGreaterThanOrEqual(6);
  });

  it('calls one coverage behind every path predictable', () => {
    const log = shuffledLog(1, 60).map((snap) => ({ ...snap, coverage: `behind ${snap['path']}` }));
    const { predictability, guesses } = chapterOf(log);
    expect(predictability.theilU).toBeCloseTo(1, 10);
    expect(predictability.p).toBeLessThan(0.01);
    expect(guesses.find(({ knows }) => knows === 'path')?.share).toMatchObject({ count: 60, trials: 60 });
  });

  it('pairs paths and coverages of pressures, not of the base', () => {
    const snap = { game: 'g', down: 1, to_go: 10, path: 'stay', coverage: 'roof' };
    const { pairings } = chapterOf([
      { ...snap, family: 'base' },
      { ...snap, family: 'hot', path: 'dash' },
    ]);
    expect(pairings.map(({ path, snaps }) => [path, snaps])).toEqual([['dash', 1]]);
  });

  it('claims no gain for a reader who guesses no better than blind', () => {
    const log: SnapRecord[] = Array.from({ length: 120 }, (_, i) => {
      const path = i % 2 === 0 ? 'p' : 'q';
      const coverage = path === 'p' || i % 3 === 0 ? 'a' : ['a', 'a', 'b'][(i % 5) % 3]!;
      return { game: `g${i % 6}`, down: 1, to_go: 10, family: 'hot', path, coverage };
    });
    const { guesses } = chapterOf(log);
    expect(guesses[2]?.share.count).toBeLessThanOrEqual(guesses[0]?.share.count ?? 0);
    expect(guesses[2]?.gain?.low ?? 0).toBeLessThanOrEqual(0);
  });

  it('names no other coverage without a library', () => {
    const log = ['x', 'y', 'z'].flatMap((game) =>
      Array.from(
        { length: 4 },
        (): SnapRecord => ({ game, down: 1, to_go: 10, family: 'hot', path: 'p', coverage: 'a' }),
      ),
    );
    expect(chapterOf(log).remedy).toMatchObject({ swaps: [], library: false });
  });

  it('leaves the guessed game out of what the reader knows', () => {
    const log: SnapRecord[] = ['x', 'y', 'z', 'w'].flatMap((game) =>
      Array.from({ length: 5 }, () => ({ game, down: 1, to_go: 10, family: 'hot', path: 'p', coverage: game })),
    );
    expect(chapterOf(log).guesses.every(({ share }) => share.count === 0)).toBe(true);
  });

  it('keeps what was not charted out of every share', () => {
    const { pressureRates, shownEarly, predictability, guesses } = chapterOf([
      { game: 'g', down: 1, to_go: 10, family: 'hot' },
      { game: 'g', down: 1, to_go: 10 },
    ]);
    expect(pressureRates).toEqual([
      { by: 'down', value: '1', share: expect.objectContaining({ count: 1, trials: 1 }), expected: null },
      {
        by: 'distance',
        value: 'up_to_10',
        share: expect.objectContaining({ count: 1, trials: 1 }),
        expected: null,
      },
      { by: 'situation', value: 'first_ten', share: expect.objectContaining({ count: 1, trials: 1 }), expected: null },
    ]);
    expect(shownEarly).toMatchObject({ trials: 0, estimate: null });
    expect(predictability.theilU).toBeNull();
    expect(guesses).toEqual([]);
  });

  it('does not depend on the names of paths and coverages', () => {
    const log = shuffledLog(3, 80);
    const renamed = log.map((snap) => ({ ...snap, path: `z${snap['path']}`, coverage: `q${snap['coverage']}` }));
    const [a, b] = [chapterOf(log), chapterOf(renamed)];
    expect(b.predictability.theilU).toBeCloseTo(a.predictability.theilU ?? -1, 12);
    expect(b.pressureRates).toEqual(a.pressureRates);
  });

  it('finds none of our tells in a log that follows the situation alone', () => {
    const log = situationLog(300);
    expect(chapterOf(log).tells).toEqual([]);
  });
});
