import { StatsInputError } from './errors.ts';

/**
 * Where a stream of random numbers stands: the four words of its generator and the normal draw kept for the next call
 * (not a number where none is). Typed arrays, because numbers beyond 31 bits held elsewhere would be allocated again at
 * every step; an argument and not a closure, so that the engine sees one function however many streams there are.
 */
export interface RandomState {
  readonly words: Int32Array & FourWords;
  readonly kept: Float64Array;
}

/** Four places that are always there. */
interface FourWords {
  0: number;
  1: number;
  2: number;
  3: number;
}

/**
 * The start of the stream that belongs to a seed.
 *
 * @param seed - any number but NaN, or text
 * @throws StatsInputError when the seed is NaN
 * @see Doty-Humphrey, PractRand: sfc32; the seed is spread with the finalizer of MurmurHash3 (Appleby, public domain)
 */
export function randomState(seed: number | string): RandomState {
  if (Number.isNaN(seed)) throw new StatsInputError('a seed must not be NaN');
  const text = `${typeof seed}:${seed}`;
  const words = Int32Array.of(hash(text, 0x9e3779b9), hash(text, 0x85ebca6b), hash(text, 0xc2b2ae35), 1);
  const state: RandomState = { words: words as Int32Array & FourWords, kept: Float64Array.of(Number.NaN) };
  for (let i = 0; i < WARM_UP; i += 1) nextWord(state.words);
  return state;
}

const WARM_UP = 15; // rounds the generator's author uses to mix the seed in

/** The next uniform number of a stream: at least 0 and below 1, in steps of 2⁻⁵³. */
export function nextUniform({ words }: RandomState): number {
  const high = nextWord(words);
  return (high * 2 ** 21 + (nextWord(words) >>> 11)) * 2 ** -53;
}

/** 32 bits, as a whole number of at least 0. */
function nextWord(words: Int32Array & FourWords): number {
  const out = (words[0] + words[1] + words[3]) | 0;
  words[3] += 1;
  words[0] = words[1] ^ (words[1] >>> 9);
  words[1] = words[2] + (words[2] << 3);
  words[2] = ((words[2] << 21) | (words[2] >>> 11)) + out;
  return out >>> 0;
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
