import { describe, expect, it } from 'vitest';
import type { SnapRecord } from '../../../src/game/film.ts';
import { chapterOf } from './own-log.ts';

const GAMES = ['a', 'b', 'c', 'd', 'e', 'f'];

/** So many pressures of so many first downs in one game on one hash or against one set of receivers. */
interface Calls {
  readonly hash?: string;
  readonly receivers?: string;
  readonly sent: number;
  readonly snaps: number;
}

/** First downs as told, each before a third and long, on which we always send pressure. */
function logOf(callsIn: (game: string) => readonly Calls[]): SnapRecord[] {
  return GAMES.flatMap((game) =>
    callsIn(game)
      .flatMap(({ sent, snaps, hash = 'middle', receivers = '2x2' }) =>
        Array.from({ length: snaps }, (_, i): SnapRecord[] => [
          { game, down: 1, to_go: 10, hash, receivers, family: i < snaps - sent ? 'base' : 'hot' },
          { game, down: 3, to_go: 9, hash: 'middle', receivers: '2x2', family: 'hot' },
        ]),
      )
      .flat()
      .map((snap, i) => ({ ...snap, snap: i + 1 })),
  );
}

const pressureTells = (log: readonly SnapRecord[]) =>
  chapterOf(log).tells.filter(({ follows }) => follows === 'pressure');

describe('a habit planted in our own film: pressure on first down from the left hash', () => {
  const log = logOf((game) => [
    { hash: 'right', sent: 4, snaps: 20 },
    { hash: 'left', sent: game === 'a' ? 20 : 19, snaps: 20 },
    { hash: 'middle', sent: 4, snaps: 20 },
  ]);
  const tells = pressureTells(log);
  const tell = tells[0];

  it('is named once, with its count', () => {
    expect(tells).toHaveLength(1);
    expect(tell?.seen).toContainEqual({ feature: 'hash', value: 'left' });
    expect(tell?.share).toMatchObject({ count: 115, trials: 120 });
  });

  it('is set against what we do on first down, 163 of 360, and not against all snaps', () => {
    expect(tell?.expected).toBeGreaterThan(0.35);
    expect(tell?.expected).toBeLessThan(0.55);
    expect(tell?.planWith).toBeGreaterThan(tell?.expected as number);
    expect(tell?.planWith).toBeLessThan(tell?.share.estimate as number);
  });

  it('has each game counted on its own, and stands above what was due in every one of them', () => {
    const counts = GAMES.map((game) => ({ game, count: game === 'a' ? 20 : 19, trials: 20 }));
    expect(tell?.games).toEqual(counts);
    expect(tell?.oneGameOnly).toBe(false);
  });
});

it('a habit of one game alone is said to be of one game', () => {
  const tells = pressureTells(
    logOf((game) => [
      { receivers: '3x1', sent: game === 'c' ? 30 : 0, snaps: game === 'c' ? 30 : 1 },
      { hash: 'left', sent: 6, snaps: 30 },
    ]),
  );
  const trips = tells.find(({ seen }) => seen.some(({ value }) => value === 'trips'));
  expect(trips?.share).toMatchObject({ count: 30, trials: 35 });
  expect(trips?.oneGameOnly).toBe(true);
});
