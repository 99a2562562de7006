import { nextUniform, type RandomState } from './random-state.ts';

/**
 * Shuffles the values at some places among themselves; all others stay.
 *
 * @param values - shuffled in place
 * @param places - indices into `values`, each once
 * @see Fisher and Yates 1938, Statistical Tables, in the form of Durstenfeld 1964, Communications of the ACM 7:420
 */
export function shuffleAt(state: RandomState, values: Int32Array, places: Int32Array): void {
  for (let last = places.length - 1; last > 0; last -= 1) {
    const here = places[last] as number;
    const there = places[Math.floor(nextUniform(state) * (last + 1))] as number;
    const moved = values[here] as number;
    values[here] = values[there] as number;
    values[there] = moved;
  }
}
