import { fitRidgeLogistic, logisticProbabilities } from '../../../stats/logistic.ts';
import { classProbabilities } from '../../../stats/softmax.ts';
import { NOT_KNOWN } from '../../snap/not-known.ts';
import type { TargetCodes } from '../chain-tally.ts';
import type { Target } from '../forecast-result.ts';
import { type AdditiveBase, fitAdditiveBase, plainBase } from './additive-base.ts';
import { additivePenalties } from './additive-design.ts';
import type { AdditiveReading } from './additive-families.ts';
import { type AdditiveFilm, unchartedColumns } from './additive-film.ts';
import { ADDITIVE_STRENGTHS } from './additive-strengths.ts';

/** What an additive model is fitted to. */
export interface AdditiveTask {
  readonly film: AdditiveFilm;
  readonly name: Target;
  readonly target: TargetCodes;
  readonly reading: AdditiveReading;
  /** The opponent's snaps to learn from. */
  readonly own: readonly number[];
}

/** The forecast of some snaps: one share a class, snap by snap. */
export type AdditiveShares = (rows: ArrayLike<number>) => Float64Array;

/**
 * What any offense does on such snaps. The costly part: it depends on the opponent only in which columns his film
 * charts, so one fit serves every sample of one offense.
 *
 * @param archive - snaps of other offenses
 * @returns null where the target was charted on none of them
 */
export function fitArchive(task: AdditiveTask, archive: readonly number[]): AdditiveBase | null {
  const { film, name, target, reading, own } = task;
  const rows = charted(target, archive);
  if (rows.length === 0) return null;
  return fitAdditiveBase({
    design: film.designs(reading).archive,
    target,
    rows,
    scale: ADDITIVE_STRENGTHS[name].archive,
    uncharted: unchartedColumns(film.levels, own.length === 0 ? archive : own),
  });
}

/**
 * What this offense will do: the archive's scores, plus what it does differently as its own film shows, strongly
 * shrunk. Without an archive its own film alone.
 *
 * @param base - the target's {@link fitArchive}
 * @see le Cessie and van Houwelingen 1992, Applied Statistics 41:191, for the ridge; the opponent's deviations are the
 * posterior mode of normal random effects
 */
export function fitOpponent(task: AdditiveTask, base: AdditiveBase | null): AdditiveShares {
  const { film, name, target, reading } = task;
  const { opponent, alone } = ADDITIVE_STRENGTHS[name];
  const rows = charted(target, task.own);
  const { scoresOf } = base ?? plainBase(target, rows);
  if (rows.length === 0) return (wanted) => classProbabilities(scoresOf(wanted), target.classes);
  const design = film.designs(reading).own;
  const fit = fitRidgeLogistic({
    design: { kind: 'one-hot', features: design.features, rows: pick(design.rows, rows) },
    outcomes: rows.map((row) => target.codes[row] as number),
    classes: target.classes,
    penalties: additivePenalties(design, base === null ? alone : opponent, unchartedColumns(film.levels, task.own)),
    offsets: scoresOf(rows),
    tolerance: TOLERANCE,
    maxIterations: MOST_STEPS,
  });
  return (wanted) => {
    const snaps = { kind: 'one-hot', features: design.features, rows: pick(design.rows, wanted) } as const;
    return logisticProbabilities(fit, snaps, scoresOf(wanted));
  };
}

/** A few hundred snaps are fitted to the third digit of a share within these limits. */
const TOLERANCE = 1e-5;
const MOST_STEPS = 40;

function charted({ codes }: TargetCodes, rows: readonly number[]): readonly number[] {
  return rows.filter((row) => codes[row] !== NOT_KNOWN);
}

function pick(rows: readonly Uint32Array[], wanted: ArrayLike<number>): Uint32Array[] {
  return Array.from(wanted, (row) => rows[row] as Uint32Array);
}
