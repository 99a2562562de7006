import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { pressureRuns } from '../../../src/pressure/self-scout/runs.ts';
import { ownSnaps } from '../../../src/pressure/self-scout/snaps.ts';
import { gamesInOrder } from '../../../src/pressure/snap/game-order.ts';
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
