import { FAMILIES } from '../src/game/vocabulary.ts';
import type { MenuInput } from '../src/pressure/menu/input.ts';
import { SITUATIONS } from '../src/pressure/snap/situation.ts';
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
  return inputOf({
    calls,
    snaps: Object.fromEntries(SITUATIONS.map(({ id }) => [id, 0.5 + 9 * random.uniform() ** 2])),
    worth: (call, situation, answer) => {
      const family = familyOf.get(call) ?? '';
      return (
        draw(`${family} ${answer}`, 0.8) +
        draw(`${family} ${situation}`, 0.5) +
        own * (draw(call, 0.3) + draw(`${call} ${situation}`, 0.2) + draw(`${call} ${answer}`, 0.3))
      );
    },
    menu: { size: 10, reps: 120, pressure_rate: { most: 0.6 } },
  });
}
