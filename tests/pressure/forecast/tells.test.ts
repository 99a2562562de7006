import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { forecastFilm } from '../../../src/pressure/forecast/forecast-film.ts';
import { EXCESS_KEPT, findTells } from '../../../src/pressure/forecast/tells.ts';
import { createRandom } from '../../../src/stats/random.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cedar Falls' }).situations;

/** Football without habits: run or pass depends on down, distance and depth of the quarterback alone. */
function habitless(seed: string, games: number, runShare: (snap: SnapRecord) => number = plainRunShare): SnapRecord[] {
  const random = createRandom(seed);
  const pick = <T>(list: readonly T[]) => list[random.integer(list.length)] as T;
  return Array.from({ length: games * 62 }, (_, i): SnapRecord => {
    const snap: SnapRecord = {
      game: `w${Math.floor(i / 62)}`,
      down: pick([1, 1, 2, 2, 3]),
      to_go: pick([10, 10, 7, 4, 2]),
      ball_on: 1 + random.integer(98),
      quarter: pick([1, 2, 3, 4]),
      clock: random.integer(720),
      score_margin: random.integer(29) - 14,
      hash: pick(['left', 'middle', 'right']),
      personnel: pick(['11', '11', '12', '21']),
      receivers: pick(['2x2', '3x1', '2x1']),
      back_spot: pick(['weak', 'strong', 'behind']),
      quarterback_depth: pick(['shotgun', 'shotgun', 'under_center']),
      tempo: pick(['huddle', 'huddle', 'no_huddle']),
      motion: pick(['none', 'none', 'across', 'short']),
    };
    return { ...snap, play_kind: random.uniform() < runShare(snap) ? 'run' : pick(['quick', 'dropback', 'screen']) };
  });
}

function plainRunShare(snap: SnapRecord): number {
  const base = snap['quarterback_depth'] === 'under_center' ? 0.7 : 0.4;
  return snap['down'] === 3 ? base / 2 : base;
}

const search = (chart: Film, archive: Film | null = null) => findTells(forecastFilm(chart, archive, cuts), chart, cuts);

describe('findTells', () => {
  it('finds next to nothing where there is nothing, with and without an archive', () => {
    const archive = filmFromRecords(habitless('archive', 30));
    const found = Array.from({ length: 5 }, (_, seed) => {
      const chart = filmFromRecords(habitless(`opponent ${seed}`, 4));
      return search(chart).tells.length + search(chart, archive).tells.length;
    });
    // At a discovery rate of 10%, a search with nothing to find may show something once in ten times.
    expect(found.filter((count) => count > 0).length).toBeLessThanOrEqual(1);
    expect(found.reduce((sum, count) => sum + count, 0)).toBeLessThanOrEqual(2);
  });

  it('finds a habit that goes beyond the forecast, and says to plan with a third of its excess', () => {
    const habit = (snap: SnapRecord) => (snap['back_spot'] === 'weak' && snap['hash'] === 'left' ? 0.97 : 0.4);
    const records = habitless('habit', 5, habit);
    const { looked, tells } = search(filmFromRecords(records));
    const tell = tells[0]!;
    expect(looked).toBeGreaterThan(1000);
    expect(tell.target).toBe('run_or_pass');
    expect(tell.follows).toBe('run');
    expect(tell.description).toContain('back weak');
    expect(tell.description).toContain('hash left');
    expect(tell.adjusted).toBeLessThanOrEqual(0.1);
    expect(tell.p).toBeLessThanOrEqual(tell.adjusted);
    expect(tell.planWith).toBeCloseTo(tell.expected + EXCESS_KEPT * (tell.film.estimate! - tell.expected), 12);
    expect(tell.oneGameOnly).toBe(false);
  });

  it('counts a tell game by game over the very snaps it names', () => {
    const habit = (snap: SnapRecord) => (snap['personnel'] === '21' ? 0.99 : 0.35);
    const records = habitless('games', 4, habit);
    const tell = search(filmFromRecords(records)).tells[0]!;
    expect(tell.games.reduce((sum, { trials }) => sum + trials, 0)).toBe(tell.film.trials);
    expect(tell.games.reduce((sum, { count }) => sum + count, 0)).toBe(tell.film.count);
    expect(tell.snaps).toHaveLength(tell.film.trials);
    const runs = tell.snaps.filter((row) => (records[row]!['play_kind'] === 'run') === (tell.follows === 'run'));
    expect(runs).toHaveLength(tell.film.count);
  });

  it('marks a habit that lives in one game', () => {
    const records = habitless('one game', 4).map((snap, i): SnapRecord => {
      const special = snap['game'] === 'w2' && i % 3 === 0;
      return special ? { ...snap, formation: 'overload', play_kind: 'run' } : { ...snap, formation: 'base' };
    });
    const tell = search(filmFromRecords(records)).tells.find(({ description }) => description.includes('overload'));
    expect(tell?.oneGameOnly).toBe(true);
    expect(tell?.games.map(({ game }) => game)).toEqual(['w2']);
  });

  it('says that it looked at nothing when there is nothing to expect from', () => {
    expect(search(filmFromRecords(habitless('one', 1)))).toEqual({ looked: 0, discoveryRate: 0.1, tells: [] });
    expect(search(filmFromRecords([]))).toEqual({ looked: 0, discoveryRate: 0.1, tells: [] });
  });
});
