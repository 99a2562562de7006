import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { SITUATIONS } from '../../../src/game/situations.ts';
import { protectionChapter } from '../../../src/pressure/protection/protection-chapter.ts';
import { protectionMixWords } from '../../../src/report/words/protection-mix-words.ts';
import { demoDefense } from '../demo-defense.ts';
import { countedForecast, inventedSettings } from '../invented-offense.ts';

const settings = inventedSettings();
const many = (count: number, snap: SnapRecord) => Array.from({ length: count }, () => snap);
const chapterOf = (snaps: SnapRecord[]) => {
  const chart = filmFromRecords(snaps);
  const forecast = countedForecast(chart, settings);
  return protectionChapter({ chart, archive: null, library: demoDefense, settings, forecast });
};
/** Five protect and the back is out wide on first and ten; six with the back in, turned away from him, on third and nine. */
const FIRST: SnapRecord = {
  down: 1,
  to_go: 10,
  ball_on: 60,
  play_kind: 'dropback',
  result: 'complete',
  protectors: 5,
  back_action: 'releases_wide',
  slide: 'left',
  strength: 'left',
  back_spot: 'strong',
};
const THIRD: SnapRecord = { ...FIRST, down: 3, to_go: 9, protectors: 6, back_action: 'blocks', back_spot: 'weak' };
const split = chapterOf([...many(40, FIRST), ...many(40, THIRD)]);
const inSituation = (chapter: typeof split, id: string) => {
  const found = chapter.mix.situations?.find(({ situation }) => situation === id);
  if (!found) throw new Error(`no protection for ${id}`);
  return found;
};
const homeIn = (chapter: typeof split, call: string, id: string) => {
  const line = chapter.race.find((entry) => entry.call === call && entry.answer === 'dropback');
  return line?.bySituation?.find(({ situation }) => situation === id)?.home ?? Number.NaN;
};

describe('protection by situation, where it was charted', () => {
  it('is given for every situation, with the passes it was charted on', () => {
    expect(split.mix.situations?.map(({ situation }) => situation)).toEqual(SITUATIONS.map(({ id }) => id));
    expect(inSituation(split, 'first_ten').charted).toEqual({ protectors: 40, slide: 40, back: 40 });
    expect(inSituation(split, 'fourth_long').charted).toEqual({ protectors: 0, slide: 0, back: 0 });
    expect(protectionMixWords(split.mix)).toContain('forecast for each situation');
  });

  it('follows what they do there: fives and a wide back on first, sixes turned away from him on third and long', () => {
    const [first, third] = [inSituation(split, 'first_ten'), inSituation(split, 'third_long')];
    expect(first.protectors[0]).toBeGreaterThan(0.8);
    expect(third.protectors[1]).toBeGreaterThan(0.8);
    expect(first.slideToBack).toBeGreaterThan(0.8);
    expect(third.slideToBack).toBeLessThan(0.2);
    expect(first.backWide).toBeGreaterThan(0.8);
    expect(third.backWide).toBeLessThan(0.2);
  });

  it('sums to 1 in protectors everywhere', () => {
    for (const { protectors } of split.mix.situations ?? []) {
      expect(protectors.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    }
  });

  it('races the add-on where the back stays in and not where he is out (common practice, no source)', () => {
    const gain = (id: string) => homeIn(split, 'Hackle Extra', id) - homeIn(split, 'Hackle Peel', id);
    expect(gain('third_long')).toBeGreaterThan(0.05);
    expect(gain('third_long')).toBeGreaterThan(gain('first_ten') + 0.03);
  });

  it('is the mix over all passes where every situation is alike', () => {
    const even = chapterOf([...many(60, { ...THIRD, down: 1, to_go: 10 }), ...many(60, THIRD)]);
    for (const call of ['Hackle Extra', 'Latch Roof', 'Stay Roof']) {
      const line = even.race.find((entry) => entry.call === call && entry.answer === 'dropback');
      // All passes are planned with the same shares, but for the rates that keep ten typical snaps (turns, eights).
      expect(Math.abs(homeIn(even, call, 'third_long') - (line?.home ?? Number.NaN))).toBeLessThan(0.01);
    }
  });
});

describe('protection by situation, where nothing was charted', () => {
  it('is not made up: one assumed mix, and no race by situation', () => {
    const bare = chapterOf(many(60, { down: 1, to_go: 10, play_kind: 'dropback', result: 'complete' }));
    expect(bare.mix.source).toBe('assumed');
    expect(bare.mix.situations).toBeUndefined();
    expect(bare.race.every(({ bySituation }) => bySituation === undefined)).toBe(true);
  });

  it('takes fives from the back where only his job was charted', () => {
    const jobs = (snap: SnapRecord) => ({ ...snap, protectors: undefined, slide: undefined }) as unknown as SnapRecord;
    const chapter = chapterOf([...many(40, jobs(FIRST)), ...many(40, jobs(THIRD))]);
    expect(inSituation(chapter, 'first_ten').protectors[0]).toBeGreaterThan(0.8);
    expect(inSituation(chapter, 'third_long').protectors[0]).toBeLessThan(0.25);
    expect(chapter.mix.source).toBe('partly_charted');
  });
});
