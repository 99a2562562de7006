import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord } from '../../src/game/film.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { checkAcross } from '../../src/ingest/snap-checks.ts';

const chart = (file: string, snaps: readonly SnapRecord[]): Film => filmFromRecords(snaps, file);
const first = chart('opponent-1.csv', [
  { game: 'w1', snap: 1, down: 1 },
  { game: 'w1', snap: 2, down: 2 },
]);

describe('checkAcross', () => {
  it('names a snap that an earlier file lists already, with both places', () => {
    const second = chart('opponent-2.csv', [
      { game: 'w1', snap: 3, down: 3 },
      { game: 'w1', snap: 2, down: 2 },
    ]);
    expect(checkAcross([first, second]).map(describeProblem)).toEqual([
      'opponent-2.csv, row 3: "w1, snap 2" is listed already in opponent-1.csv, row 3.',
    ]);
  });

  it('tells games and offenses apart', () => {
    const other = chart('b.csv', [
      { game: 'w2', snap: 1 },
      { game: 'w1', snap: 1, offense: 'Vexley' },
    ]);
    expect(checkAcross([first, other])).toEqual([]);
  });

  it('knows a snap without a number by its moment and place', () => {
    const snap: SnapRecord = { game: 'w1', quarter: 2, clock: 300, down: 1, to_go: 10, ball_on: 40 };
    const listed = [chart('a.csv', [snap]), chart('b.csv', [snap, { ...snap, clock: 260 }])];
    expect(checkAcross(listed)).toHaveLength(1);
  });

  it('cannot tell when too little was charted, and looks only across files', () => {
    const bare = { game: 'w1', down: 1, to_go: 10, ball_on: 40 };
    expect(checkAcross([chart('a.csv', [bare, bare]), chart('b.csv', [bare])])).toEqual([]);
    expect(checkAcross([])).toEqual([]);
  });

  it('does not take equal names in another order for the same game and offense', () => {
    const swapped = [
      chart('a.csv', [{ game: 'A', offense: 'B', snap: 1 }]),
      chart('b.csv', [{ game: 'B', offense: 'A', snap: 1 }]),
    ];
    expect(checkAcross(swapped)).toEqual([]);
  });

  it('names the first of several files that list a snap', () => {
    const third = chart('c.csv', [{ game: 'w1', snap: 1, down: 1 }]);
    expect(checkAcross([first, chart('b.csv', [{ game: 'w1', snap: 1 }]), third]).map(({ rule }) => rule)).toEqual([
      'is listed already in opponent-1.csv, row 2',
      'is listed already in opponent-1.csv, row 2',
    ]);
  });

  it('takes a file listed twice for what it is', () => {
    expect(checkAcross([first, first])).toHaveLength(first.size);
  });
});
