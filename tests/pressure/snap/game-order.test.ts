import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord, textAt } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { pressureRuns } from '../../../src/pressure/self-scout/runs.ts';
import { ownSnaps } from '../../../src/pressure/self-scout/snaps.ts';
import { gamesInOrder, inOrderOfPlay } from '../../../src/pressure/snap/game-order.ts';
import { createRandom } from '../../../src/stats/random.ts';

const { situations: cuts } = weekSettingsSchema.parse({ opponent: 'Cinder Vale' });

/** Forty snaps of first and ten in no order to speak of: pressure or base by the throw of a coin. */
function log(moment: (i: number) => SnapRecord): SnapRecord[] {
  const random = createRandom(5);
  return Array.from({ length: 40 }, (_, i) => ({
    game: 'week 1',
    down: 1,
    to_go: 10,
    call: random.uniform() < 0.5 ? 'Stay Roof' : 'Base',
    ...moment(i),
  })).map((snap) => ({ ...snap, family: snap.call === 'Base' ? 'base' : 'three_under' }));
}

const sortedByCall = (records: readonly SnapRecord[]) =>
  [...records].sort((one, other) => String(one.call).localeCompare(String(other.call)));
const runsOf = (records: readonly SnapRecord[]) => pressureRuns(ownSnaps(filmFromRecords(records), cuts))[0]?.p ?? null;

describe('the order of play', () => {
  it.each([
    ['snap numbers', (i: number) => ({ snap: i + 1 })],
    ['quarter and clock', (i: number) => ({ quarter: 1 + Math.floor(i / 20), clock: 700 - 30 * (i % 20) })],
  ] as const)('comes from %s, so that a sheet sorted by call says the same of our pattern', (_, moment) => {
    const records = log(moment);
    const p = runsOf(records);
    expect(p).toBeGreaterThan(0.05);
    expect(runsOf(sortedByCall(records))).toBe(p);
  });

  it('is that of the sheet where nothing else was charted', () => {
    const records = log(() => ({}));
    expect(runsOf(sortedByCall(records))).toBeLessThan(0.001);
  });

  it('keeps games apart, and takes part of the numbers for none', () => {
    const film = filmFromRecords([
      { game: 'a', snap: 2 },
      { game: 'b', snap: 9 },
      { game: 'a', snap: 1 },
      { game: 'b' },
    ]);
    expect(gamesInOrder(film)).toEqual([
      [2, 0],
      [1, 3],
    ]);
  });
});

describe('a film in order of play', () => {
  const calls = (film: Film) => Array.from({ length: film.size }, (_, i) => textAt(film, 'call', i)).join('');
  const snap = (week: number | undefined, number: number, call: string): SnapRecord => ({
    ...(week === undefined ? {} : { week }),
    game: `of ${call.toLowerCase() === call ? 'one' : 'two'}`,
    snap: number,
    call,
  });

  it('goes by week and snap, whatever the order of its rows', () => {
    const film = filmFromRecords([snap(9, 2, 'D'), snap(2, 2, 'b'), snap(9, 1, 'C'), snap(2, 1, 'a')]);
    expect(calls(inOrderOfPlay(film))).toBe('abCD');
  });

  it('leaves games as they appear where one has no week, and a film in order as it is', () => {
    const film = filmFromRecords([snap(undefined, 2, 'D'), snap(2, 2, 'b'), snap(undefined, 1, 'C'), snap(2, 1, 'a')]);
    expect(calls(inOrderOfPlay(film))).toBe('CDab');
    const ordered = filmFromRecords([snap(1, 1, 'a'), snap(1, 2, 'b'), snap(2, 1, 'C')]);
    expect(inOrderOfPlay(ordered)).toBe(ordered);
  });
});
