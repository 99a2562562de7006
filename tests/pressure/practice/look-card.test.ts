import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { LOOK_KINDS, lookKindLabel } from '../../../src/game/look-kinds.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { lookCards } from '../../../src/pressure/practice/look-card.ts';
import { lookKinds } from '../../../src/pressure/practice/look-card-kind.ts';
import { forecastOf, lookShares, lookSplits } from '../../../src/pressure/practice/look-card-share.ts';
import { cardWords, shownWords } from '../../../src/report/practice/card-words.ts';
import { inventedForecast } from '../../report/invented-forecast.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Nobody' }).situations;
const kindsOf = (...records: SnapRecord[]) => lookKinds(filmFromRecords(records), cuts);

describe('kinds of look', () => {
  it.each([
    [{ play_kind: 'run' }, 'run'],
    [{ play_kind: 'screen', back_spot: 'none' }, 'screen'],
    [{ play_kind: 'dropback' }, 'dropback'],
    [{ play_kind: 'dropback', back_action: 'check_releases' }, 'dropback'],
    [{ play_kind: 'dropback', back_action: 'releases_wide' }, 'wide_release'],
    [{ play_kind: 'dropback', back_action: 'releases_inside' }, 'inside_release'],
    [{ play_kind: 'dropback', back_action: 'releases_wide', protectors: 7 }, 'max_protection'],
    [{ play_kind: 'dropback', back_spot: 'none' }, 'empty'],
    [{ play_kind: 'quick', receivers: '3x2' }, 'empty'],
    [{ play_kind: 'deep_shot', receivers: '3x1' }, 'trips_deep'],
    [{ play_kind: 'deep_shot', receivers: '2x2' }, 'deep_shot'],
    [{ play_kind: 'pass' }, undefined],
  ] as const)('%j is %s', (record, kind) => {
    expect(kindsOf(record)).toEqual([kind]);
  });

  it('each has a word and an answer', () => {
    expect(lookKindLabel('wide_release')).toBe('Dropback, back releases wide');
  });
});

describe('scout cards', () => {
  const film = filmFromRecords(
    [
      { game: 'week 3', play_kind: 'quick', receivers: '2x2', back_spot: 'weak', motion: 'none' },
      { game: 'week 3', play_kind: 'run', receivers: '2x1' },
      { game: 'week 4', play_kind: 'quick', receivers: '3x1', back_spot: 'weak', motion: 'none', protectors: 5 },
      { game: 'week 4', play_kind: 'quick', receivers: '3x1', back_spot: 'strong' },
    ],
    'opponent.csv',
  );

  it('shows the snap most of its kind agree with, and says where it stands', () => {
    const [card] = lookCards(film, cuts, new Set(['quick'] as const));
    expect(card).toMatchObject({ number: 1, kind: 'quick', filmSnaps: 3, from: 'opponent.csv row 4, week 4' });
    expect(card?.shows).toEqual({ receivers: '3x1', back_spot: 'weak', motion: 'none', protectors: '5' });
    expect(card && cardWords(card)).toBe('3x1, back weak, no motion, 5 protect');
  });

  it('a kind not on film is common practice and says so with 0 snaps', () => {
    const [card] = lookCards(film, cuts, new Set(['max_protection'] as const));
    expect(card).toMatchObject({ filmSnaps: 0, from: null, shows: {} });
    expect(card && cardWords(card)).toContain('stay in');
  });

  it('says nothing of what was not charted', () => {
    expect(shownWords({})).toBe('');
    expect(shownWords({ back_spot: 'none', slide: 'full_left', strength: 'none' })).toBe('no back, slide full left');
  });
});

describe('shares of the looks', () => {
  const chapter = inventedForecast();
  const sum = (map: ReadonlyMap<string, number>) => [...map.values()].reduce((a, b) => a + b, 0);

  it('sum to one whatever the film says of empty and trips', () => {
    const count = fc.tuple(fc.nat(20), fc.nat(20));
    fc.assert(
      fc.property(count, count, fc.constantFrom('third_long', 'first_ten', 'all'), ([a, b], [c, d], situation) => {
        const records = [
          ...Array(a).fill({ play_kind: 'dropback', receivers: '3x2' }),
          ...Array(b).fill({ play_kind: 'quick', receivers: '2x2' }),
          ...Array(c).fill({ play_kind: 'deep_shot', receivers: '3x1' }),
          ...Array(d).fill({ play_kind: 'run', receivers: '2x1' }),
        ];
        const shares = lookShares(chapter, situation, lookSplits(filmFromRecords(records), cuts));
        expect(sum(shares)).toBeCloseTo(1, 9);
        expect([...shares.keys()]).toEqual(LOOK_KINDS.map(({ id }) => id));
      }),
      { numRuns: 30 },
    );
  });

  it('screens keep the share the forecast gives them', () => {
    const shares = lookShares(chapter, 'third_long', lookSplits(filmFromRecords([]), cuts));
    const forecast = forecastOf(chapter, 'answer', 'third_long');
    expect(shares.get('screen')).toBe(forecast?.classes.find(({ name }) => name === 'screen')?.share);
    expect(shares.get('empty')).toBe(0);
  });

  it('counts empty among throws from the pocket only', () => {
    const records = [
      { play_kind: 'quick', receivers: '3x2' },
      { play_kind: 'dropback' },
      { play_kind: 'run', receivers: '3x2' },
    ];
    const splits = lookSplits(filmFromRecords(records), cuts);
    expect(splits.empty).toMatchObject({ count: 1, trials: 2 });
    expect(splits.trips).toMatchObject({ count: 0, trials: 2 });
  });
});
