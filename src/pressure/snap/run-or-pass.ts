import type { Film } from '../../game/film.ts';
import { PASS_ENDINGS, RUN_KINDS } from '../../game/run-or-pass.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';
import { onceAFilm } from './once-a-film.ts';
import { wordClasses } from './word-classes.ts';

/**
 * Run (0) or pass (1); 255 where no kind was charted. The one rule for every question: a scramble and a sack are passes,
 * whatever kind was charted; every other snap is what its kind says. A bare `pass` is a pass even where the answer is
 * not known.
 */
export const runOrPassCodes: (chart: Film) => Uint8Array = onceAFilm((chart) => {
  const hadToPass = wordClasses(chart, 'result', (result) => PASS_ENDINGS.includes(result ?? ''));
  const kindAt = wordClasses(chart, 'play_kind', (kind) => {
    if (kind === undefined) return NOT_KNOWN;
    return RUN_KINDS.includes(kind) ? RUN : PASS;
  });
  return codesBySnap(chart.size, (i) => (hadToPass(i) ? PASS : kindAt(i)));
});

/** The code of a run. */
const RUN = 0;

/** The code of a pass. */
export const PASS = 1;

/**
 * The codes without those of runs. What is charted of a pass (slide, protectors, the back's job, release, target) says
 * nothing on a run: a charter who wrote it there wrote what the run looked like.
 */
export function exceptOnRuns(chart: Film, codes: Uint8Array): Uint8Array {
  const runOrPass = runOrPassCodes(chart);
  return codesBySnap(chart.size, (i) => (runOrPass[i] === RUN ? NOT_KNOWN : (codes[i] as number)));
}
