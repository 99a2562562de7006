import { describe, expect, it } from 'vitest';
import type { CallLibrary } from '../../../src/game/call-library.ts';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { lookChanges } from '../../../src/pressure/self-scout/check-with-me.ts';
import { seenBefore } from '../../../src/pressure/self-scout/seen.ts';
import { sentSide } from '../../../src/pressure/self-scout/sent-side.ts';
import { ownSnaps } from '../../../src/pressure/self-scout/snaps.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'x' }).situations;

describe('what came just before', () => {
  const wordsOf = (name: string, records: readonly SnapRecord[]) => {
    const feature = seenBefore(filmFromRecords(records), cuts).find((each) => each.name === name)!;
    return records.map((_, i) => feature.valueAt(i));
  };
  const snap = { down: 1, to_go: 10, play_kind: 'run', result: 'rush' };

  it('a run of 12 and a pass of 20 are big plays, in the same game and by the number of the snap', () => {
    const log = [
      { ...snap, game: 'a', snap: 2, gain: 3 },
      { ...snap, game: 'a', snap: 1, gain: 12 },
      { ...snap, game: 'b', snap: 1, gain: 40 },
      { ...snap, game: 'a', snap: 3, gain: 1 },
    ];
    expect(wordsOf('after_big_play', log)).toEqual(['yes', undefined, undefined, 'no']);
  });

  it('a gain that was not charted leaves what follows it not charted', () => {
    expect(
      wordsOf('after_big_play', [
        { ...snap, game: 'a' },
        { ...snap, game: 'a', gain: 1 },
      ]),
    ).toEqual([undefined, undefined]);
  });

  it('the first snap of a series is told by the number of the series, and not without it', () => {
    const log = [1, 1, 2, 2].map((drive) => ({ ...snap, game: 'a', drive }));
    const [first, later] = ['first', 'later'];
    expect(wordsOf('series', log)).toEqual([first, later, first, later]);
    expect(wordsOf('series', [{ ...snap, game: 'a' }, ...log])).toEqual([undefined, undefined, later, first, later]);
  });
});

describe('sentSide', () => {
  const library = {
    calls: [
      { name: 'Dash', family: 'hot', sent_from: 'boundary' },
      { name: 'Lean', family: 'hot', sent_from: 'strength' },
      { name: 'Any', family: 'hot', sent_from: 'either' },
      { name: 'Stay', family: 'base', sent_from: 'field' },
    ],
  } as unknown as CallLibrary;
  const sideOf = (record: SnapRecord) => sentSide(filmFromRecords([record]), library)(0);

  it.each([
    [{ call: 'dash', hash: 'left' }, 'the boundary'],
    [{ call: 'Lean', hash: 'left', strength: 'right' }, 'the field'],
    [{ call: 'Lean', hash: 'left', strength: 'left' }, 'the boundary'],
    [{ call: 'Lean', hash: 'left' }, undefined],
    [{ call: 'Dash', hash: 'middle' }, undefined],
    [{ call: 'Dash' }, undefined],
    [{ call: 'Any', hash: 'left' }, undefined],
    [{ call: 'Stay', hash: 'left' }, undefined],
    [{ call: 'Nowhere', hash: 'left' }, undefined],
    [{ hash: 'left' }, undefined],
  ])('%o comes from %s', (record, side) => {
    expect(sideOf(record)).toBe(side);
  });
});

describe('lookChanges', () => {
  const shown = { game: 'g', down: 1, to_go: 10, family: 'hot', shown_early: 'yes', play_kind: 'run', result: 'rush' };
  const changesOf = (records: readonly SnapRecord[]) => lookChanges(ownSnaps(filmFromRecords(records), cuts));

  it('counts what was not charted apart from what they left alone', () => {
    const {
      shown: all,
      notCharted,
      changed,
      left,
    } = changesOf([
      { ...shown, checked: 'yes', gain: 5 },
      { ...shown, checked: 'yes' },
      { ...shown, checked: 'no', gain: 0 },
      { ...shown, gain: 9 },
      { ...shown, shown_early: 'no', checked: 'yes', gain: 9 },
    ]);
    expect([all, notCharted]).toEqual([4, 1]);
    expect(changed.success).toMatchObject({ count: 1, trials: 1 });
    expect(left.success).toMatchObject({ count: 0, trials: 1 });
  });
});
