import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chapterOf, shuffledLog } from './own-log.ts';

const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const chapters = SEEDS.map((seed) => chapterOf(shuffledLog(seed, 240)));
const count = (told: (chapter: (typeof chapters)[number]) => boolean) => chapters.filter(told).length;

// Each bound is the 99.9% point of the number of ten logs that a test at its own level calls by chance
// (binomial, 10 trials at .05: 4; at the false discovery rate .1: 5).
describe('a shuffled log is called nothing', () => {
  it('no pairing is called predictable', () => {
    expect(count(({ predictability }) => (predictability.p ?? 1) < 0.05)).toBeLessThanOrEqual(4);
  });

  it('neither turn, family nor side is said to give the coverage away', () => {
    expect(count(({ clues }) => clues.some(({ adjusted }) => (adjusted ?? 1) < 0.05))).toBeLessThanOrEqual(4);
  });

  it('no split of the pressure rate stands out', () => {
    for (const { pressureSplits } of chapters) expect(pressureSplits.length).toBeGreaterThan(10);
    expect(
      count(({ pressureSplits }) => pressureSplits.some(({ adjusted }) => (adjusted ?? 1) < 0.05)),
    ).toBeLessThanOrEqual(4);
  });

  it('no tell is found, among tens of thousands looked at', () => {
    for (const { tellsLooked } of chapters) expect(tellsLooked).toBeGreaterThan(5000);
    expect(count(({ tells }) => tells.length > 0)).toBeLessThanOrEqual(5);
  });

  it('no path is said to be shown early more than others', () => {
    expect(count(({ earlyShows }) => earlyShows.some(({ adjusted }) => (adjusted ?? 1) < 0.05))).toBeLessThanOrEqual(4);
  });

  it('none of their changes is said to cost or to gain', () => {
    expect(
      count(({ lookChanges }) => lookChanges.difference.low > 0 || lookChanges.difference.high < 0),
    ).toBeLessThanOrEqual(4);
  });

  it('the reader who knows the path gains nothing that is sure', () => {
    const gains = chapters.map(({ guesses }) => guesses.find(({ knows }) => knows === 'path')?.gain);
    expect(gains.filter((gain) => gain && gain.low > 0).length).toBeLessThanOrEqual(4);
  });

  it('no swap is asked for', () => {
    for (const { remedy } of chapters) expect(remedy).toMatchObject({ swaps: [], earliest: 0, costPoints: 0 });
  });
});

describe('names do not matter', () => {
  it('other words for paths, coverages and formations change no number', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (seed) => {
        const log = shuffledLog(seed, 120);
        const renamed = log.map((snap) => ({
          ...snap,
          path: `z ${snap['path']}`,
          coverage: `q ${snap['coverage']}`,
          formation: `x ${snap['formation']}`,
        }));
        const numbersOf = (text: unknown) =>
          JSON.parse(
            JSON.stringify(text, (key, value) =>
              ['path', 'coverage', 'value', 'seen', 'follows'].includes(key) ? undefined : value,
            ),
          );
        const [first, second] = [chapterOf(log), chapterOf(renamed)];
        for (const key of ['guesses', 'clues', 'pressureSplits', 'lookChanges', 'remedy', 'tellsLooked'] as const) {
          expect(numbersOf(second[key])).toEqual(numbersOf(first[key]));
        }
      }),
      { numRuns: 4, seed: 7 },
    );
  });
});

describe('a planted habit is found', () => {
  it('pressure after every look shown early', () => {
    const log = shuffledLog(11, 240).map((snap) => (snap['shown_early'] === 'yes' ? { ...snap, family: 'hot' } : snap));
    const { tells, pressureSplits } = chapterOf(log);
    expect(tells[0]).toMatchObject({
      asks: 'pressure',
      seen: [{ feature: 'shown_early', value: 'yes' }],
      follows: 'pressure',
    });
    expect(pressureSplits.find(({ by }) => by === 'shown_early')?.adjusted).toBeLessThan(0.01);
  });

  it('a change that always beats our early look', () => {
    const log = shuffledLog(12, 240).map((snap) => {
      if (snap['shown_early'] !== 'yes') return snap;
      return { ...snap, gain: snap['checked'] === 'yes' ? 15 : -1 };
    });
    const { lookChanges } = chapterOf(log);
    expect(lookChanges.difference.low).toBeGreaterThan(0);
    expect(lookChanges.difference.estimate).toBe(1);
  });
});
