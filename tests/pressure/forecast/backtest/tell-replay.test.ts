import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../../src/game/week-settings.ts';
import { backtestFilm } from '../../../../src/pressure/forecast/backtest/backtest-film.ts';
import { backtestWindows } from '../../../../src/pressure/forecast/backtest/backtest-window.ts';
import { tellRecord } from '../../../../src/pressure/forecast/backtest/tell-record.ts';
import { type ReplayedTell, replayTells } from '../../../../src/pressure/forecast/backtest/tell-replay.ts';
import { seenWords } from '../../../../src/report/words/seen-words.ts';
import { inventedFilm } from './invented-film.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

/** Five games in which jet motion always means a run, as nothing else on film says; the last may differ. */
function withHabit(last: (record: SnapRecord) => SnapRecord): SnapRecord[] {
  const film = inventedFilm([
    { name: 'Cinder Vale', games: 5, snaps: 60, runs: 0.5 },
    { name: 'Ash Grove', games: 2, snaps: 60, runs: 0.5 },
  ]);
  return film.map((record, i) => {
    if (record['offense'] !== 'Cinder Vale') return record;
    const moved: SnapRecord = i % 4 === 0 ? { ...record, motion: 'fast', play_kind: 'run' } : record;
    return record['week'] === 5 ? last(moved) : moved;
  });
}

function replay(records: readonly SnapRecord[]) {
  const film = backtestFilm(filmFromRecords(records), cuts);
  const offenses = new Set(['Cinder Vale']);
  const windows = backtestWindows(film.games, { trainOn: 4, archive: 'others', offenses });
  return replayTells(film, windows);
}

const onMotion = (tells: readonly ReplayedTell[]) =>
  tells.find(({ tell }) => seenWords(tell.seen) === 'motion fast' && tell.follows === 'run');

describe('replayTells', () => {
  it('finds a habit in four games and counts it in the fifth', () => {
    const found = onMotion(replay(withHabit((record) => record)))!;
    expect(found.tell.film).toMatchObject({ count: 60, trials: 60 });
    expect([found.count, found.trials]).toEqual([15, 15]);
    expect(found.due).toBeGreaterThan(0);
    expect(found.due).toBeLessThan(15);
  });

  it('finds and expects the same whatever the game to come brings', () => {
    const kept = onMotion(replay(withHabit((record) => record)))!;
    const dropped = onMotion(replay(withHabit((record) => ({ ...record, play_kind: 'quick' }))))!;
    expect(dropped.tell).toEqual(kept.tell);
    expect(dropped.due).toBe(kept.due);
    expect(dropped.count).toBe(0);
  });
});

describe('tellRecord', () => {
  const game = { offense: 'a', game: 'g', week: 1, season: 0, rows: [] };
  const tell = (count: number, trials: number, due: number) =>
    ({
      tell: { film: { count: 8, trials: 10 }, expected: 0.4, planWith: 0.5 },
      game,
      count,
      trials,
      due,
    }) as unknown as ReplayedTell;

  it('weighs by the snaps of the game to come: said 80% over 40%, 60% came over 40%, half of the excess', () => {
    // Worked by hand: 9 of 15 snaps came, 6 were due.
    const record = tellRecord([tell(6, 10, 4), tell(3, 5, 2)], 3);
    expect(record).toMatchObject({ games: 3, withTells: 1, tells: 2, neverSeen: 0, judged: 2, held: 2, snaps: 15 });
    expect(record.said).toBeCloseTo(0.8, 12);
    expect(record.came).toBeCloseTo(0.6, 12);
    expect(record.keptOfSaid).toBeCloseTo(0.5, 12);
    expect(record.keptOfPlan).toBeCloseTo(2, 12);
  });

  it('judges no side on fewer than three snaps and counts a tie half', () => {
    expect(tellRecord([tell(2, 2, 1), tell(2, 4, 2), tell(1, 4, 2)], 1)).toMatchObject({ judged: 2, held: 0.5 });
  });

  it('has nothing to say where no tell was found or seen', () => {
    expect(tellRecord([], 4)).toMatchObject({ games: 4, withTells: 0, tells: 0, came: null, keptOfSaid: null });
    expect(tellRecord([tell(0, 0, 0)], 1)).toMatchObject({ neverSeen: 1, said: null });
  });
});
