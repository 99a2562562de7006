import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { forecastFilm } from '../../../src/pressure/forecast/forecast-film.ts';
import { excessKept } from '../../../src/pressure/forecast/tell-kept.ts';
import { findTells } from '../../../src/pressure/forecast/tells.ts';
import { seenWords } from '../../../src/report/words/seen-words.ts';
import { createRandom } from '../../../src/stats/random.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

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

interface SlideSnap {
  readonly trips: boolean;
  readonly weak: boolean;
  readonly random: number;
}

/** Habitless film with protections: the slide goes to the strength when `toStrength` says so. */
function slideFilm(seed: string, toStrength: (snap: SlideSnap) => boolean): SnapRecord[] {
  const random = createRandom(`${seed}, slides`);
  return habitless(seed, 4).map((plain): SnapRecord => {
    const receivers = ['3x1', '2x2'][random.integer(2)] as string;
    const snap = { ...plain, receivers, back_spot: ['weak', 'strong'][random.integer(2)] as string };
    const strength = ['left', 'right'][random.integer(2)] as string;
    const look = { trips: snap['receivers'] === '3x1', weak: snap['back_spot'] === 'weak', random: random.uniform() };
    if (snap['play_kind'] === 'run') return { ...snap, strength };
    return {
      ...snap,
      strength,
      slide: toStrength(look) === (strength === 'left') ? 'left' : 'right',
      protectors: 5 + random.integer(2),
      back_action: ['blocks', 'releases_wide'][random.integer(2)] as string,
    };
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

  it('finds a habit that goes beyond the forecast, and says to plan with the part of its excess that held', () => {
    const habit = (snap: SnapRecord) => (snap['back_spot'] === 'weak' && snap['hash'] === 'left' ? 0.97 : 0.4);
    const records = habitless('habit', 5, habit);
    const { looked, tells } = search(filmFromRecords(records));
    const tell = tells[0]!;
    expect(looked).toBeGreaterThan(1000);
    expect(tell.target).toBe('run_or_pass');
    expect(tell.follows).toBe('run');
    expect(seenWords(tell.seen)).toContain('back weak');
    expect(seenWords(tell.seen)).toContain('hash left');
    expect(tell.adjusted).toBeLessThanOrEqual(0.1);
    expect(tell.p).toBeLessThanOrEqual(tell.adjusted);
    expect(tell.planWith).toBeCloseTo(
      tell.expected + excessKept('run_or_pass', 'alone') * (tell.film.estimate! - tell.expected),
      12,
    );
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

  it('calls a habit that lives in one game so far, and plans with the forecast there', () => {
    const records = habitless('one game', 4).map((snap, i): SnapRecord => {
      const special = snap['game'] === 'w2' && i % 3 === 0;
      return special ? { ...snap, formation: 'overload', play_kind: 'run' } : { ...snap, formation: 'base' };
    });
    const tell = search(filmFromRecords(records)).tells.find(({ seen }) => seenWords(seen).includes('overload'));
    expect(tell).toMatchObject({ oneGameOnly: true, standing: 'so_far', gamesShown: 1 });
    expect(tell?.planWith).toBe(tell?.expected);
    expect(tell?.games.map(({ game }) => game)).toEqual(['w2']);
  });

  it('finds a slide that follows the strength from one look, and no habit in thirteen offenses without one', () => {
    const slides = slideFilm('slides', ({ trips, weak, random }) => (trips && weak ? 0.92 : 0.5) > random);
    const { tells } = search(filmFromRecords(slides));
    const tell = tells.find(({ target }) => target === 'slide_to_strength');
    expect(tell).toMatchObject({ follows: 'to', standing: 'plan_with' });
    expect(seenWords(tell?.seen ?? [])).toContain('trips');
    expect(seenWords(tell?.seen ?? [])).toContain('back weak');
    const counted = slides.filter(
      (snap) => snap['slide'] && snap['receivers'] === '3x1' && snap['back_spot'] === 'weak',
    );
    expect(tell?.film.trials).toBe(counted.length);
    expect(tell?.film.count).toBe(counted.filter((snap) => snap['slide'] === snap['strength']).length);
    const plain = Array.from({ length: 13 }, (_, i) => slideFilm(`plain ${i}`, ({ random }) => random < 0.55));
    const named = plain.map((records) => search(filmFromRecords(records)).tells.length);
    expect(named.filter((count) => count > 0)).toEqual([]);
  });

  it('says that it looked at nothing when there is nothing to expect from', () => {
    expect(search(filmFromRecords(habitless('one', 1)))).toEqual({ looked: 0, discoveryRate: 0.1, tells: [] });
    expect(search(filmFromRecords([]))).toEqual({ looked: 0, discoveryRate: 0.1, tells: [] });
  });
});
