import type { SnapRecord } from '../../../../src/game/film.ts';
import { createRandom, type Random } from '../../../../src/stats/random.ts';

/** What an invented offense does: games, snaps a game, and how much likelier it runs than another. */
export interface InventedOffense {
  readonly name: string;
  readonly games: number;
  readonly snaps: number;
  readonly runs: number;
}

/** Invented film of a few offenses: what they do depends on down, look and offense, and on nothing else. */
export function inventedFilm(offenses: readonly InventedOffense[], seed = 'film'): SnapRecord[] {
  const random = createRandom(seed);
  return offenses.flatMap((offense) =>
    Array.from({ length: offense.games * offense.snaps }, (_, i): SnapRecord => {
      const before = beforeSnap(random, offense, i);
      const runs =
        offense.runs * (before['down'] === 3 ? 0.5 : 1) * (before['quarterback_depth'] === 'shotgun' ? 0.9 : 1.3);
      return { ...before, ...afterSnap(random, runs) };
    }),
  );
}

const pick = <T>(random: Random, list: readonly T[]) => list[random.integer(list.length)] as T;

function beforeSnap(random: Random, { name, snaps }: InventedOffense, i: number): SnapRecord {
  const week = Math.floor(i / snaps) + 1;
  return {
    offense: name,
    game: `${name} week ${week}`,
    week,
    ...pick(random, [
      { down: 1, to_go: 10 },
      { down: 2, to_go: 5 },
      { down: 2, to_go: 9 },
      { down: 3, to_go: 2 },
      { down: 3, to_go: 9 },
    ]),
    quarter: 1 + Math.floor(((i % snaps) / snaps) * 4),
    quarterback_depth: pick(random, ['shotgun', 'shotgun', 'under_center']),
    strength: pick(random, ['left', 'right']),
    hash: pick(random, ['left', 'middle', 'right']),
    back_spot: pick(random, ['weak', 'strong', 'behind']),
  };
}

function afterSnap(random: Random, runs: number): SnapRecord {
  return {
    play_kind: random.uniform() < runs ? 'run' : pick(random, ['quick', 'dropback', 'screen', 'pass']),
    time_to_throw: 1.5 + 2 * random.uniform(),
    motion: pick(random, ['none', 'across', 'short']),
    protectors: pick(random, [5, 5, 6, 7]),
    slide: pick(random, ['left', 'right', 'man']),
    back_action: pick(random, ['blocks', 'releases_wide', 'check_releases']),
  };
}
