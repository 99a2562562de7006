import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Digest, Platform } from '../../season/store.ts';
import { loadExactSolver } from '../../stats/exact-solver.ts';

/**
 * What a browser brings: a hash in plain code, for its own one cannot be fed piece by piece.
 *
 * @param solver - the bytes of highs.wasm
 */
export function browserPlatform(solver: Uint8Array): Platform {
  return {
    digest: () => digestOf(sha256.create()),
    decode: (bytes) => new TextDecoder().decode(bytes),
    exactSolver: () => loadExactSolver(addressOf(solver)),
  };
}

/** The solver's package takes its file from an address; this one is made here and leads nowhere else. */
function addressOf(solver: Uint8Array): string {
  return URL.createObjectURL(new Blob([solver.slice()], { type: 'application/wasm' }));
}

function digestOf(hash: ReturnType<typeof sha256.create>): Digest {
  return {
    update: (piece) => {
      hash.update(typeof piece === 'string' ? utf8ToBytes(piece) : piece);
      return digestOf(hash);
    },
    hex: () => bytesToHex(hash.digest()),
  };
}
