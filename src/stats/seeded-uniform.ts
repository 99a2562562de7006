import { StatsInputError } from './errors.ts';

/**
 * A source of uniform numbers, at least 0 and below 1, in steps of 2⁻⁵³.
 *
 * @param seed - any number but NaN, or text
 * @throws StatsInputError when the seed is NaN
 * @see Doty-Humphrey, PractRand: sfc32; the seed is spread with the finalizer of MurmurHash3 (Appleby, public domain)
 */
export function seededUniform(seed: number | string): () => number {
  if (Number.isNaN(seed)) throw new StatsInputError('a seed must not be NaN');
  const next = sfc32(hashedWords(`${typeof seed}:${seed}`));
  for (let i = 0; i < WARM_UP; i += 1) next();
  return () => (next() * 2 ** 21 + (next() >>> 11)) * 2 ** -53;
}

const WARM_UP = 15; // rounds the generator's author uses to mix the seed in

/** The state is a typed array because captured variables beyond 31 bits would be allocated anew at every step. */
function sfc32([a, b, c]: readonly [number, number, number]): () => number {
  const state = Int32Array.of(a, b, c, 1) as Int32Array & FourWords;
  return () => {
    const out = (state[0] + state[1] + state[3]) | 0;
    state[3] += 1;
    state[0] = state[1] ^ (state[1] >>> 9);
    state[1] = state[2] + (state[2] << 3);
    state[2] = ((state[2] << 21) | (state[2] >>> 11)) + out;
    return out >>> 0;
  };
}

/** Four places that are always there. */
interface FourWords {
  0: number;
  1: number;
  2: number;
  3: number;
}

function hashedWords(text: string): [number, number, number] {
  return [hash(text, 0x9e3779b9), hash(text, 0x85ebca6b), hash(text, 0xc2b2ae35)];
}

/** One 32-bit word from text, by the mixing steps of MurmurHash3. */
function hash(text: string, start: number): number {
  let word = start;
  for (let i = 0; i < text.length; i += 1) {
    word = Math.imul(word ^ text.charCodeAt(i), 0xcc9e2d51);
    word = (word << 15) | (word >>> 17);
    word = (Math.imul(word, 5) + 0xe6546b64) | 0;
  }
  word = Math.imul(word ^ (word >>> 16), 0x85ebca6b);
  word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35);
  return word ^ (word >>> 16);
}
