import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { liveTallies } from '../../../src/pressure/halftime/live-tally.ts';
import { movedHabits } from '../../../src/pressure/halftime/moved.ts';
import { createRandom } from '../../../src/stats/random.ts';
import { inventedForecast } from '../../report/invented-forecast.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Nobody' }).situations;
const chapter = inventedForecast();
const searchOf = (records: readonly SnapRecord[]) => movedHabits(chapter, liveTallies(filmFromRecords(records), cuts));

describe('what truly moved tonight', () => {
  it('thirty screens in a row are a new habit', () => {
    const { moved, looked } = searchOf(Array(30).fill({ down: 1, to_go: 10, play_kind: 'screen' }));
    const screens = moved.find(({ name, situation }) => name === 'screen' && situation === 'all');
    expect(screens).toMatchObject({ firstHalf: { count: 30, trials: 30 } });
    expect(screens?.adjusted).toBeLessThan(0.01);
    expect(looked).toBeGreaterThan(0);
  });

  it('fewer than five snaps are not looked at', () => {
    expect(searchOf(Array(4).fill({ down: 1, to_go: 10, play_kind: 'screen' }))).toMatchObject({
      looked: 0,
      moved: [],
      looksSo: [],
    });
  });

  it('more third and longs are no new habit: the expectation follows tonight’s situations', () => {
    const { moved, looksSo } = searchOf(Array(12).fill({ down: 3, to_go: 12, play_kind: 'dropback' }));
    const all = [...moved, ...looksSo].find(({ target, situation, name }) => {
      return target === 'answer' && situation === 'all' && name === 'dropback';
    });
    const here = chapter.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'third_long');
    expect(all?.expected).toBeCloseTo(here?.classes.find(({ name }) => name === 'dropback')?.share ?? -1, 9);
  });

  it('a class of two is tested once', () => {
    const { moved, looksSo } = searchOf(Array(30).fill({ down: 1, to_go: 10, play_kind: 'screen' }));
    const names = [...moved, ...looksSo].filter(({ target }) => target === 'run_or_pass').map(({ name }) => name);
    expect(names.every((name) => name === 'run')).toBe(true);
  });

  it('snaps drawn from the forecast itself rarely move: at most one night in seven shows anything', () => {
    const random = createRandom('nights');
    const shares = chapter.forecasts.find(({ target, situation }) => target === 'answer' && situation === 'first_ten');
    const kinds = shares?.classes ?? [];
    const nights = Array.from({ length: 60 }, () => {
      const records = Array.from({ length: 30 }, () => {
        let rest = random.uniform();
        const drawn = kinds.find(({ share }) => {
          rest -= share;
          return rest < 0;
        });
        return { down: 1, to_go: 10, play_kind: drawn?.name ?? 'run' };
      });
      const answers = { ...chapter, forecasts: chapter.forecasts.filter(({ target }) => target === 'answer') };
      return movedHabits(answers, liveTallies(filmFromRecords(records), cuts)).moved.length > 0;
    });
    expect(nights.filter(Boolean).length / nights.length).toBeLessThanOrEqual(1 / 7);
  });
});
