import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord } from '../../src/game/film.ts';
import { describeGroup, groupProblems } from '../../src/ingest/row-problem.ts';
import { checkAcross } from '../../src/ingest/snap-checks.ts';

/** Twelve plays of one game; `change` is what a second charter sees otherwise. */
const plays = (change: (i: number) => SnapRecord = () => ({})): SnapRecord[] =>
  Array.from({ length: 12 }, (_, i) => ({
    game: 'week 3',
    offense: 'Cinder Vale',
    down: 1 + (i % 3),
    to_go: 10 - (i % 7),
    ball_on: 80 - 3 * i,
    gain: (i * 5) % 8,
    ...change(i),
  }));
const numbered = (snaps: readonly SnapRecord[]) => snaps.map((snap, i) => ({ ...snap, snap: i + 1 }));
const linesOf = (charts: readonly Film[]) => groupProblems(checkAcross(charts), 9).groups.map(describeGroup);

describe('a game charted twice', () => {
  const first = filmFromRecords(numbered(plays()), 'opponent-a.csv');

  it('counts once when one chart has no snap numbers, and says which one counts', () => {
    const second = filmFromRecords(
      plays((i) => ({ game: 'Week 3', gain: i === 4 ? 9 : (i * 5) % 8 })),
      'opponent-b.csv',
    );
    const line =
      'opponent-b.csv, 12 rows (2, 3, 4, 5, 6 and 7 more), "game": "Week 3" is charted with snap numbers in opponent-a.csv too; the snaps with numbers count, these do not count again.';
    expect(linesOf([first, second])).toEqual([line]);
    expect(linesOf([second, first])).toEqual([line]);
  });

  it('counts once when both stand in one file', () => {
    const both = filmFromRecords([...numbered(plays()), ...plays()], 'opponent.csv');
    expect(checkAcross([both]).map(({ row }) => row)).toEqual(Array.from({ length: 12 }, (_, i) => 14 + i));
  });

  it('takes two halves for two halves', () => {
    const half = filmFromRecords(
      plays((i) => ({ ball_on: 20 + i, gain: 11 })),
      'opponent-b.csv',
    );
    expect(checkAcross([first, half])).toEqual([]);
  });
});
