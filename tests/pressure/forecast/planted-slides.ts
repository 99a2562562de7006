import type { SnapRecord } from '../../../src/game/film.ts';
import { createRandom } from '../../../src/stats/random.ts';

const SNAPS_A_GAME = 62;

/** Invented games in which nothing but down, distance and the quarterback's depth tells run from pass; slides are even. */
export function plainGames(seed: string, games: number): SnapRecord[] {
  const random = createRandom(seed);
  const pick = <T>(list: readonly T[]) => list[random.integer(list.length)] as T;
  return Array.from({ length: games * SNAPS_A_GAME }, (_, i): SnapRecord => {
    const snap: SnapRecord = {
      game: `${seed} ${Math.floor(i / SNAPS_A_GAME)}`,
      offense: seed,
      down: pick([1, 1, 2, 2, 3]),
      to_go: pick([10, 10, 7, 4, 2]),
      ball_on: 1 + random.integer(98),
      quarter: pick([1, 2, 3, 4]),
      clock: random.integer(720),
      score_margin: random.integer(29) - 14,
      hash: pick(['left', 'right']),
      personnel: pick(['11', '11', '12', '21']),
      receivers: pick(['2x2', '3x1', '2x1']),
      back_spot: pick(['weak', 'strong']),
      quarterback_depth: pick(['shotgun', 'shotgun', 'under_center']),
      tempo: pick(['huddle', 'huddle', 'no_huddle']),
      motion: pick(['none', 'none', 'across', 'short']),
      strength: pick(['left', 'right']),
    };
    const runs = (snap['quarterback_depth'] === 'under_center' ? 0.7 : 0.4) / (snap['down'] === 3 ? 2 : 1);
    if (random.uniform() < runs) return { ...snap, play_kind: 'run' };
    return {
      ...snap,
      play_kind: pick(['quick', 'dropback', 'screen']),
      slide: pick(['left', 'right']),
      protectors: 5 + random.integer(2),
      back_action: pick(['blocks', 'releases_wide']),
    };
  });
}

/** What a planted slide goes to. */
export type SlideTo = 'strength' | 'field' | 'back';

/** The look the habit is planted on: trips with the back weak, or on the left hash where it goes to the back. */
export function plantedLook(to: SlideTo): SnapRecord {
  return { receivers: '3x1', ...(to === 'back' ? { hash: 'left' } : { back_spot: 'weak' }) };
}

const [SNAPS, TO_IT] = [37, 34];

/**
 * Four plain games in which the slide goes to its reference on 34 of exactly 37 passes from one look, spread over the
 * games, and on every other one of the other passes.
 */
export function plantedSlides(seed: string, to: SlideTo): SnapRecord[] {
  const games = plainGames(seed, 4);
  const random = createRandom(`${seed}, planted`);
  const passes = games.flatMap((snap, i) => (snap['slide'] === undefined ? [] : [{ i, order: random.uniform() }]));
  passes.sort((a, b) => a.order - b.order);
  const look = plantedLook(to);
  const shows = ({ i }: { i: number }) =>
    Object.entries(look).every(([column, word]) => games[i]?.[column as keyof SnapRecord] === word);
  const shown = [...passes.filter(shows), ...passes.filter((pass) => !shows(pass))];
  shown.forEach(({ i }, place) => {
    const snap = games[i] as SnapRecord;
    const goesTo = place < SNAPS ? place < TO_IT : place % 2 === 0;
    const placed = place < SNAPS ? { ...snap, ...look } : { ...snap, ...(shows({ i }) && { receivers: '2x2' }) };
    const side = sideOf(placed, to);
    games[i] = { ...placed, slide: goesTo ? side : other(side) };
  });
  return games;
}

function sideOf(snap: SnapRecord, to: SlideTo): string {
  if (to === 'field') return other(snap['hash']);
  const strength = String(snap['strength']);
  return to === 'strength' || snap['back_spot'] === 'strong' ? strength : other(strength);
}

function other(side: unknown): string {
  return side === 'left' ? 'right' : 'left';
}
