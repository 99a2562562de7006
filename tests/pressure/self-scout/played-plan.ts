import type { SnapRecord } from '../../../src/game/film.ts';
import type { MenuCall } from '../../../src/pressure/menu/result.ts';
import { createRandom, type Random } from '../../../src/stats/random.ts';

/** The part of a menu that is called from. */
export interface PlayedMenu {
  readonly situations: readonly { readonly id: string; readonly expectedSnaps: number }[];
  readonly calls: readonly Pick<MenuCall, 'call' | 'family' | 'path' | 'coverage' | 'mix'>[];
}

/** One down and distance of each situation under the default cut-offs. */
const PLACES: Readonly<Record<string, readonly [down: number, toGo: number]>> = {
  first_ten: [1, 10],
  first_long: [1, 15],
  first_short: [1, 5],
  first_goal: [1, 4],
  second_short: [2, 2],
  second_medium: [2, 5],
  second_long: [2, 9],
  third_short: [3, 2],
  third_medium: [3, 5],
  third_long: [3, 9],
  fourth_short: [4, 1],
  fourth_medium: [4, 5],
  fourth_long: [4, 9],
};

/** Our own film of some games called by the menu's mix and by nothing else. */
export function playedPlan(menu: PlayedMenu, games: number, seed: number): SnapRecord[] {
  const random = createRandom(`played plan ${seed}`);
  return Array.from({ length: games }, (_, game) => playedGame(menu, `game ${game}`, random)).flat();
}

function playedGame({ situations, calls }: PlayedMenu, game: string, random: Random): SnapRecord[] {
  const total = situations.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0);
  const places = situations.map(({ id, expectedSnaps }) => ({ id, weight: expectedSnaps / total }));
  return Array.from({ length: Math.round(total) }, (_, i): SnapRecord => {
    const { id } = drawn(places, random);
    const [down, to_go] = PLACES[id] ?? [1, 10];
    const sent = calls.map((call) => ({
      call,
      weight: call.mix.find(({ situation }) => situation === id)?.share ?? 0,
    }));
    const base = 1 - sent.reduce((sum, { weight }) => sum + weight, 0);
    const { call } = drawn([...sent, { call: null, weight: base }], random);
    const snap = { game, snap: i + 1, down, to_go, ball_on: id === 'first_goal' ? 96 : 60 };
    if (call === null) return { ...snap, family: 'base', path: 'stay', coverage: 'base' };
    return { ...snap, family: call.family, path: call.path, coverage: call.coverage, call: call.call };
  });
}

function drawn<T extends { readonly weight: number }>(list: readonly T[], random: Random): T {
  let left = random.uniform();
  for (const one of list) {
    left -= one.weight;
    if (left < 0) return one;
  }
  return list.at(-1) as T;
}
