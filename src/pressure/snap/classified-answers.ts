import { NOT_KNOWN } from './not-known.ts';
import { PASS } from './run-or-pass.ts';

/** Classified passes of a game that make its answers count, as a share of its passes. Judgment. */
const LEAST_TOLD = 0.5;

/**
 * The answers without the games in which most passes were charted only as passes. A run is always classified, a pass only by
 * its time, its depth or its kind: where those were not charted, the classified snaps are nearly all runs, and their shares
 * would say that they only run.
 *
 * @param answers - code of every snap as an index into the vocabulary's answers; 255 where it is not known
 * @param runOrPass - 0 a run, 1 a pass, 255 not known, by snap
 * @param games - snaps of every game
 */
export function classifiedAnswers(
  answers: Uint8Array,
  runOrPass: Uint8Array,
  games: readonly { readonly rows: ArrayLike<number> }[],
): Uint8Array {
  const charted = answers.slice();
  for (const { rows } of games) {
    const passes = Array.from(rows).filter((row) => runOrPass[row] === PASS);
    const known = passes.filter((row) => answers[row] !== NOT_KNOWN).length;
    if (known >= LEAST_TOLD * passes.length) continue;
    for (const row of Array.from(rows)) charted[row] = NOT_KNOWN;
  }
  return charted;
}
