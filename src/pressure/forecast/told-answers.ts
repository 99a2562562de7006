import { ANSWERS, type Answer } from '../../ingest/vocabulary.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { ChainFit } from './chain-fit.ts';

const RUNS: readonly Answer[] = ['run', 'quarterback_run'];

/** Codes of run or pass. */
const [RUN, PASS] = [0, 1];

/** Told passes of a game that make its answers count, as a share of its passes. Judgement. */
const LEAST_TOLD = 0.5;

/**
 * The answers without the games in which most passes were charted only as passes. A run is always told, a pass only by
 * its time, its depth or its kind: where those were not charted, the told snaps are nearly all runs, and their shares
 * would say that they only run.
 *
 * @param answers - code of every snap as an index into the vocabulary's answers; 255 where it is not known
 * @param runOrPass - 0 a run, 1 a pass, 255 not known, by snap
 * @param games - snaps of every game
 */
export function toldAnswers(
  answers: Uint8Array,
  runOrPass: Uint8Array,
  games: readonly { readonly rows: ArrayLike<number> }[],
): Uint8Array {
  const told = answers.slice();
  for (const { rows } of games) {
    const passes = Array.from(rows).filter((row) => runOrPass[row] === PASS);
    const known = passes.filter((row) => answers[row] !== NOT_KNOWN).length;
    if (known >= LEAST_TOLD * passes.length) continue;
    for (const row of Array.from(rows)) told[row] = NOT_KNOWN;
  }
  return told;
}

/** Whether any pass of these snaps was charted only as a pass, so that runs weigh more among the told answers. */
export function hidesPasses(answers: Uint8Array, runOrPass: Uint8Array, size: number): boolean {
  for (let i = 0; i < size; i++) if (runOrPass[i] === PASS && answers[i] === NOT_KNOWN) return true;
  return false;
}

/**
 * A fit of the answers with the runs and the passes of each cell scaled to what another fit of the same cells says of run
 * or pass, which every snap tells. What the answers alone say is which run, and which pass. Their uncertainty stays.
 */
export function splitByRunOrPass(answers: ChainFit, runOrPass: ChainFit): ChainFit {
  const { classes } = answers;
  const shares = answers.shares.slice();
  const isRun = ANSWERS.map((answer) => RUNS.includes(answer));
  for (let start = 0, node = 0; start < shares.length; start += classes, node++) {
    const runs = isRun.reduce((sum, run, k) => (run ? sum + (shares[start + k] as number) : sum), 0);
    const [run, pass] = [runOrPass.shares[2 * node + RUN] as number, runOrPass.shares[2 * node + PASS] as number];
    for (let k = 0; k < classes; k++) {
      shares[start + k] = (shares[start + k] as number) * (isRun[k] ? run / runs : pass / (1 - runs));
    }
  }
  return { ...answers, shares };
}
