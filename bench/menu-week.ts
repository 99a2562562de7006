import { FAMILIES } from '../src/game/families.ts';
import { SITUATIONS } from '../src/game/situations.ts';
import type { MenuInput } from '../src/pressure/menu/input.ts';
import { createRandom } from '../src/stats/random.ts';
import { inputOf, type TestCall } from '../tests/pressure/menu/invented-menu-week.ts';

const pressures = FAMILIES.filter((family) => family !== 'base');

/**
 * The input of a week with an invented library of `count` pressures on paths of two or three coverages. A call is worth
 * what its family is worth in the situation and against the answer, and something of its own, so that calls of a family
 * are near substitutes as in a real library.
 *
 * @param own - how much calls of a family differ: 1 makes every call its own answer to something, 0 makes them equal
 */
export function bigWeek(count: number, seed: number, own = 0.5): MenuInput {
  const random = createRandom(`menu bench ${count} ${seed}`);
  const calls = Array.from({ length: count }, (_, i): TestCall => {
    const family = pressures[random.integer(pressures.length)]!;
    return {
      name: `call ${i}`,
      path: `path ${Math.floor(i / 2.5)}`,
      family,
      coverage: `${family} ${random.integer(2)}`,
      reps: 6 + random.integer(14),
      first: 15 + random.integer(45),
      installed: random.uniform() < 0.7,
    };
  });
  const drawn = new Map<string, number>();
  const draw = (key: string, spread: number) => {
    const known = drawn.get(key) ?? spread * random.normal();
    drawn.set(key, known);
    return known;
  };
  const familyOf = new Map(calls.map(({ name, family }) => [name, family]));
  const worth = (spread: number) => (call: string, situation: string) => {
    const family = familyOf.get(call) ?? '';
    return draw(`${spread} ${family} ${situation}`, spread) + own * draw(`${spread} ${call} ${situation}`, spread / 3);
  };
  return inputOf({
    calls,
    snaps: Object.fromEntries(SITUATIONS.map(({ id }) => [id, 0.5 + 9 * random.uniform() ** 2])),
    net: worth(0.25),
    points: worth(0.4),
    menu: { size: 10, reps: 120, new_calls: 2, rep_price: 0.02, regret: 0.2, pairing_cap: 0.7, path_share: 0.45 },
  });
}
