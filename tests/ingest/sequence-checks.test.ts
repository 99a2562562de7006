import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../src/game/film.ts';
import { checkSequence } from '../../src/ingest/sequence-checks.ts';

const snap = (number: number, rest: SnapRecord): SnapRecord => ({ game: 'w1', drive: 1, snap: number, ...rest });
const said = (snaps: readonly SnapRecord[]) =>
  checkSequence(filmFromRecords(snaps)).map(({ header, found, rule }) => `${header} ${found} ${rule}`);

/** A drive in order: 4 on first and 10, 7 on second and 6, 2 on first and 10. */
const DRIVE: readonly SnapRecord[] = [
  snap(1, { down: 1, to_go: 10, ball_on: 65, gain: 4, result: 'rush' }),
  snap(2, { down: 2, to_go: 6, ball_on: 61, gain: 7, result: 'complete' }),
  snap(3, { down: 1, to_go: 10, ball_on: 54, gain: 2, result: 'rush' }),
  snap(4, { down: 2, to_go: 8, ball_on: 52, gain: -3, result: 'sack' }),
  snap(5, { down: 3, to_go: 11, ball_on: 55, gain: 0, result: 'incomplete' }),
  snap(6, { down: 4, to_go: 11, ball_on: 55, gain: 3, result: 'rush' }),
];

describe('checkSequence', () => {
  it('finds nothing in a drive that adds up', () => {
    expect(said(DRIVE)).toEqual([]);
  });

  it('warns of a down, a distance and a ball position that do not follow', () => {
    const slips = DRIVE.map((one, i) => (i === 1 ? { ...one, down: 3, to_go: 5, ball_on: 60 } : one)).slice(0, 2);
    expect(said(slips)).toEqual([
      'down 3 does not follow from the snap before, which leaves 2; a charting slip or a penalty?',
      'to_go 5 does not follow from the snap before, which leaves 6; a charting slip or a penalty?',
      'ball_on own 40 does not follow from the snap before, which leaves own 39; a charting slip or a penalty?',
    ]);
    expect(checkSequence(filmFromRecords(slips)).every(({ severity }) => severity === 'warning')).toBe(true);
  });

  it.each([
    ['another game', { game: 'w2' }],
    ['another offense', { offense: 'Union' }],
    ['another drive', { drive: 2 }],
    ['a gap in the numbers', { snap: 3 }],
    ['a drive that was not charted', { drive: undefined }],
  ])('compares nothing across %s', (_, change) => {
    const [first, second] = DRIVE;
    expect(said([first, { ...second, to_go: 1, ...change }] as SnapRecord[])).toEqual([]);
  });

  it.each(['penalty', 'interception', 'fumble_lost'])('compares nothing after a snap that ended in %s', (result) => {
    expect(
      said([
        { ...DRIVE[0], result },
        { ...DRIVE[1], to_go: 1 },
      ]),
    ).toEqual([]);
  });

  it('compares nothing when the gain was not charted', () => {
    const { gain: _, ...blank } = DRIVE[0] ?? {};
    expect(said([blank, { ...DRIVE[1], to_go: 1 }])).toEqual([]);
  });

  it('finds the same whatever the order of the rows', () => {
    const slipped = DRIVE.map((one, i) => (i === 3 ? { ...one, to_go: 1 } : one));
    const there = said(slipped);
    expect(there).toHaveLength(2);
    fc.assert(
      fc.property(fc.shuffledSubarray(slipped, { minLength: slipped.length }), (shuffled) => {
        expect(said(shuffled)).toEqual(there);
      }),
      { numRuns: 30 },
    );
  });

  it('says nothing of an empty chart', () => {
    expect(said([])).toEqual([]);
  });
});
