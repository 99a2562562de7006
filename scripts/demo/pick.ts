import type { Random } from '../../src/stats/random.ts';

/** Draws one of the choices with the given weights (they need not sum to one). */
export function pick<T>(random: Random, choices: readonly (readonly [T, number])[]): T {
  const total = choices.reduce((sum, [, weight]) => sum + weight, 0);
  let left = random.uniform() * total;
  for (const [choice, weight] of choices) {
    left -= weight;
    if (left < 0) return choice;
  }
  return choices[choices.length - 1]![0];
}
