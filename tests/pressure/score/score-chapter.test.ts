import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { FAMILIES } from '../../../src/game/vocabulary.ts';
import { scoreChapter } from '../../../src/pressure/score/score-chapter.ts';
import { MENU_DRAW_COUNT } from '../../../src/pressure/score/score-draws.ts';
import { SITUATIONS } from '../../../src/pressure/snap/situation.ts';
import { demoDefense } from '../demo-defense.ts';
import { inventedRecords, inventedSettings } from '../invented-offense.ts';
import { expectedScores, plainInput, racedInput } from './expected-scores.ts';

const chart = filmFromRecords(inventedRecords({ scrambles: 0.2 }));
const input = racedInput({ chart });
const { chapter, draws } = scoreChapter(input);
const inAll = (family: (typeof FAMILIES)[number]) => {
  const found = chapter.families.find((one) => one.family === family && one.situation === 'all');
  if (!found) throw new Error(`${family} is not scored`);
  return found;
};

describe('the chapter of scores', () => {
  it('holds every family of the mission in every situation and over all of them, all first', () => {
    expect(chapter.families).toHaveLength(FAMILIES.length * (1 + SITUATIONS.length));
    for (const id of ['all', ...SITUATIONS.map((one) => one.id)]) {
      const here = chapter.families.filter(({ situation }) => situation === id).map(({ family }) => family);
      expect(here).toEqual([...FAMILIES]);
    }
    expect(chapter.families[0]?.situation).toBe('all');
  });

  it('has every family of the mission in the library, with its rules written', () => {
    for (const family of FAMILIES) {
      const own = demoDefense.calls.filter((call) => call.family === family);
      expect(own.length, family).toBeGreaterThan(0);
      expect(
        own.some(({ rules }) => rules.length > 0),
        family,
      ).toBe(true);
    }
  });

  it('is centred on the exact expectation', () => {
    const expected = expectedScores(input);
    for (const family of FAMILIES) expect(inAll(family).points.mean).toBeCloseTo(expected[family], 9);
  });

  it('adds up: parts by answer to the mean, weights to 1, chances of being best to 1', () => {
    for (const score of chapter.families) {
      expect(score.answers.reduce((sum, { points }) => sum + points, 0)).toBeCloseTo(score.points.mean, 9);
      const { judgement, openData, ownFilm } = score.weights;
      expect(judgement + openData + ownFilm).toBeCloseTo(1, 9);
    }
    const best = chapter.families.filter(({ situation }) => situation === 'all');
    expect(best.reduce((sum, { chanceBest }) => sum + chanceBest, 0)).toBeCloseTo(1, 9);
  });

  it('says no clear difference exactly where the 80% interval holds nothing and the base is nothing itself', () => {
    for (const { points, verdict } of chapter.families) {
      const clear = points.low > 0 ? 'ahead of base' : points.high < 0 ? 'behind base' : 'no clear difference';
      expect(verdict).toBe(clear);
    }
    expect(inAll('base').points).toEqual({ mean: 0, low: 0, high: 0 });
  });

  it('gives the menu draws whose mean is the score of the call', () => {
    expect(draws.count).toBe(MENU_DRAW_COUNT);
    const [c, s] = [draws.calls.indexOf('Harrow Extra'), draws.situations.indexOf('third_long')];
    const values = Array.from(
      { length: draws.count },
      (_, i) => draws.points[(i * draws.calls.length + c) * draws.situations.length + s] ?? 0,
    );
    const score = chapter.calls.find(({ call, situation }) => call === 'Harrow Extra' && situation === 'third_long');
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    // A thousand of four thousand draws: their mean is within four standard errors of the whole.
    const spread = Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
    expect(Math.abs(mean - (score?.points.mean ?? Number.NaN))).toBeLessThan((4 * spread) / Math.sqrt(draws.count));
  });

  it('is the same for the same input, and scores only the families asked for with the base', () => {
    const settings = inventedSettings({ families: ['hot'] });
    const few = plainInput({ chart, settings });
    expect(JSON.stringify(scoreChapter(few).chapter)).toBe(JSON.stringify(scoreChapter(few).chapter));
    expect(new Set(scoreChapter(few).chapter.families.map(({ family }) => family))).toEqual(new Set(['base', 'hot']));
  });
});

describe('what the scores could not be made from', () => {
  it('is said: no library, no film of ours, runs', () => {
    const notes = scoreChapter(plainInput({ chart })).chapter.notes?.join(' ') ?? '';
    expect(notes).toContain('There is no call library');
    expect(notes).toContain('There is no film of our own pressures');
    expect(notes).toContain('Open data cannot tell the families apart against runs (48% of the snaps expected)');
  });

  it('is said of six rushers and quick throws where a call of six was raced', () => {
    expect(chapter.notes?.some((note) => note.includes('34% where the race gives 20%'))).toBe(true);
    expect(scoreChapter(plainInput({ chart })).chapter.notes?.some((note) => note.includes('34%'))).toBe(false);
  });

  it('is said when their answers were not charted', () => {
    const bare = filmFromRecords(Array.from({ length: 40 }, () => ({ down: 1, to_go: 10, ball_on: 60 })));
    const { chapter: told } = scoreChapter(plainInput({ chart: bare }));
    expect(told.notes?.[0]).toContain('Their answers were not charted');
    const reasons = told.families.find(({ family, situation }) => family === 'hot' && situation === 'all')?.reasons;
    expect(reasons?.join(' ')).toContain('an ordinary offense stands in, so this ranks nothing');
  });
});
