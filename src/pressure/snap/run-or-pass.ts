import type { Film } from '../../game/film.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';
import { wordClasses } from './word-classes.ts';

/** Run (0) or pass (1), told by the play kind alone: a bare `pass` is a pass even where the answer is not known. */
export function runOrPassCodes(chart: Film): Uint8Array {
  const hadToPass = wordClasses(chart, 'result', (result) => result === 'scramble' || result === 'sack');
  const kindAt = wordClasses(chart, 'play_kind', (kind) => {
    if (kind === undefined) return NOT_KNOWN;
    return kind === 'run' || kind === 'quarterback_run' ? 0 : 1;
  });
  return codesBySnap(chart.size, (i) => (hadToPass(i) ? 1 : kindAt(i)));
}

/** The code of a pass. */
export const PASS = 1;
