import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { ownFilmChapter } from '../../../src/pressure/self-scout/own-film.ts';
import type { OwnFilmChapter } from '../../../src/pressure/self-scout/result.ts';
import { createRandom } from '../../../src/stats/random.ts';

/** What a test gives beside the snaps. */
export type Given = Partial<Omit<Parameters<typeof ownFilmChapter>[0], 'ownFilm' | 'settings'>> & {
  readonly menu?: Record<string, unknown>;
};

/** The chapter on a log of our own snaps. */
export function chapterOf(records: readonly SnapRecord[], { menu = {}, ...given }: Given = {}): OwnFilmChapter {
  const settings = weekSettingsSchema.parse({ opponent: 'Harrow Creek', menu });
  return ownFilmChapter({
    ownFilm: filmFromRecords(records),
    library: null,
    scores: null,
    seed: 1,
    ...given,
    settings,
  });
}

const paths = ['one', 'two', 'three', 'four', 'five', 'six'];
const coverages = ['a', 'b', 'c', 'd', 'e'];

/** A log in which everything is drawn apart from everything else, in six games of equal length. */
export function shuffledLog(seed: number, size: number): SnapRecord[] {
  const random = createRandom(`whole log ${seed}`);
  const one = <T>(list: readonly T[]) => list[random.integer(list.length)] as T;
  const perGame = size / 6;
  return Array.from({ length: size }, (_, i): SnapRecord => {
    const [down, to_go] = one([
      [1, 10],
      [1, 10],
      [2, 7],
      [3, 8],
      [3, 2],
    ]) as [number, number];
    return {
      game: `game ${Math.floor(i / perGame)}`,
      snap: (i % perGame) + 1,
      drive: 1 + Math.floor((i % perGame) / 6),
      quarter: 1 + random.integer(4),
      score_margin: random.integer(40) - 20,
      down,
      to_go,
      ball_on: 10 + random.integer(80),
      hash: one(['left', 'middle', 'right']),
      receivers: one(['2x2', '3x1', '2x1']),
      back_spot: one(['strong', 'weak', 'behind']),
      personnel: one(['10', '11', '12']),
      formation: one(['ash', 'birch', 'cedar']),
      family: one(['base', 'base', 'hot', 'man_free']),
      path: one(paths),
      coverage: one(coverages),
      rotation: one(['to_rush', 'away_from_rush', 'none']),
      shown_early: one(['yes', 'no', 'no']),
      checked: one(['yes', 'no', 'no']),
      play_kind: one(['run', 'quick', 'dropback']),
      gain: random.integer(30) - 5,
      result: 'rush',
    };
  });
}
