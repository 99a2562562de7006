import { nextUniform, type RandomState } from './random-state.ts';
import { cephes } from './special-functions.ts';

/**
 * The next standard normal number of a stream: two at a time, the second kept for the next call.
 *
 * @see Marsaglia and Bray 1964, SIAM Review 6:260, the polar method
 */
export function nextNormal(state: RandomState): number {
  const value = state.kept[0] as number;
  state.kept[0] = Number.NaN;
  return Number.isNaN(value) ? polarPair(state) : value;
}

/** The first of a pair; the second is kept. */
function polarPair(state: RandomState): number {
  for (;;) {
    const x = 2 * nextUniform(state) - 1;
    const y = 2 * nextUniform(state) - 1;
    const square = x * x + y * y;
    if (square >= 1 || square === 0) continue;
    const scale = Math.sqrt((-2 * cephes.log(square)) / square);
    state.kept[0] = y * scale;
    return x * scale;
  }
}
