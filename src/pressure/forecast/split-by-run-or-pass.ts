import { ANSWERS, type Answer } from '../../ingest/vocabulary.ts';
import type { ChainFit } from './chain-fit.ts';

const RUNS: readonly Answer[] = ['run', 'quarterback_run'];

/** Classes of run or pass. */
const [RUN, PASS] = [0, 1];

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
