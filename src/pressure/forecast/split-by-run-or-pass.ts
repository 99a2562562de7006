import type { ChainFit } from './chain-fit.ts';
import type { TargetCodes } from './chain-tally.ts';
import type { TargetDefinition } from './target.ts';

/** Classes of run or pass. */
const [RUN, PASS] = [0, 1];

/** A target that has runs and passes among its classes. */
export type SplitTarget = Pick<TargetDefinition, 'classes' | 'runs'>;

/**
 * A fit of the answers with the runs and the passes of each cell scaled to what another fit of the same cells says of run
 * or pass, which every snap tells. What the answers alone say is which run, and which pass. Their uncertainty stays.
 *
 * @param target - the answers' target; one without runs keeps its fit
 */
export function splitByRunOrPass(answers: ChainFit, runOrPass: ChainFit, target: SplitTarget): ChainFit {
  const { classes } = answers;
  const shares = answers.shares.slice();
  const isRun = runsOf(target);
  for (let start = 0, node = 0; start < shares.length; start += classes, node++) {
    const runs = isRun.reduce((sum, run, k) => (run ? sum + (shares[start + k] as number) : sum), 0);
    if (runs <= 0 || runs >= 1) continue; // a node that was not fitted
    const [run, pass] = [runOrPass.shares[2 * node + RUN] as number, runOrPass.shares[2 * node + PASS] as number];
    for (let k = 0; k < classes; k++) {
      shares[start + k] = (shares[start + k] as number) * (isRun[k] ? run / runs : pass / (1 - runs));
    }
  }
  return { ...answers, shares };
}

/**
 * Whether any pass, on the opponent's film or another's, was charted only as a pass, so that runs weigh more among the
 * answers than they should. Read from sums, for tallies do not say which snaps they count.
 */
export function hidesPasses(answers: TargetCodes, runOrPass: TargetCodes, target: SplitTarget): boolean {
  const isRun = runsOf(target);
  return countWhere(answers, (code) => isRun[code] === false) < countWhere(runOrPass, (code) => code === PASS);
}

function runsOf({ classes, runs = [] }: SplitTarget): readonly boolean[] {
  return classes.map((name) => runs.includes(name));
}

function countWhere({ codes, weights }: TargetCodes, wanted: (code: number) => boolean): number {
  let total = 0;
  for (let i = 0; i < codes.length; i++) if (wanted(codes[i] as number)) total += weights?.[i] ?? 1;
  return total;
}
