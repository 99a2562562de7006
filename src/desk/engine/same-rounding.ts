import exp from '@stdlib/math-base-special-exp';
import ln from '@stdlib/math-base-special-ln';
import log1p from '@stdlib/math-base-special-log1p';

/**
 * Takes the elementary functions from one library in plain code, inside this worker only: browsers round the last bit of
 * theirs as they like, and the desk's report must be the command line's, byte for byte. The library ports the same
 * FreeBSD sources as Node's own, so that both give the same bits.
 */
export function roundAlike(): void {
  Object.assign(Math, { exp, log: ln, log1p });
}
