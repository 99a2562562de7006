import { ANSWERS, type Answer, isPass } from '../../game/answers.ts';
import type { CoverageFaced } from '../../game/vocabulary.ts';
import type { Forecast } from '../forecast/forecast-result.ts';
import { rushGroupOf } from '../snap/rush-group.ts';
import type { PressuredChapter, PressuredFactor, PressuredSplit, PressuredTarget } from './pressured-result.ts';

/** What we send and play, in which situation. */
export interface OurPressure {
  /** Situation id, or `all`. */
  readonly situation: string;
  /** Rushers we send, four for the base. */
  readonly rushers: number;
  /** Coverage behind it, in the words of the film; left out where it does not matter. */
  readonly coverage?: CoverageFaced | undefined;
}

/** Share of an answer against our pressure, and what the forecast says of all snaps of the situation. */
export interface PressuredAnswer {
  readonly answer: Answer;
  /** 0 to 1; the answers' shares sum to 1. */
  readonly share: number;
  readonly forecast: number;
}

/**
 * What they will answer to our pressure: the forecast of the situation, run or pass and then which pass moved by exactly
 * the part of the shift that held up in backtests. Where none did, or nothing was charted, it is the forecast itself. The
 * coverage is their guess before the snap, so its shift stands beside that of the rush.
 *
 * @param forecasts - the forecasts of the week, of which the answers of the situation are read
 * @returns null where the answers of the situation are not forecast
 */
export function answersToPressure(
  forecasts: readonly Forecast[],
  pressured: Pick<PressuredChapter, 'factors'>,
  ours: OurPressure,
): readonly PressuredAnswer[] | null {
  const found = forecasts.find(({ target, situation }) => target === 'answer' && situation === ours.situation);
  if (!found) return null;
  const shares = ANSWERS.map((answer) => found.classes.find(({ name }) => name === answer)?.share ?? 0);
  const factors = groupsOf(ours).flatMap((one) => pressured.factors.filter((factor) => isFor(factor, one)));
  const [runs, passes] = [true, false].map((run) => movedWithin(shares, factors, run)) as [number[], number[]];
  const plain = shares.reduce((sum, share, k) => sum + (isPass(ANSWERS[k] as Answer) ? 0 : share), 0);
  const run = movedRun(plain, factors);
  return ANSWERS.map((answer, k) => ({
    answer,
    share: isPass(answer) ? (1 - run) * (passes[k] as number) : run * (runs[k] as number),
    forecast: shares[k] as number,
  }));
}

interface Facing {
  readonly by: PressuredSplit['by'];
  readonly group: string;
}

function groupsOf({ rushers, coverage }: OurPressure): readonly Facing[] {
  const rush = rushGroupOf(rushers);
  return [
    ...(rush ? [{ by: 'rushers' as const, group: rush }] : []),
    ...(coverage ? [{ by: 'coverage' as const, group: coverage }] : []),
  ];
}

function isFor(factor: PressuredFactor, { by, group }: Facing): boolean {
  return factor.by === by && factor.group === group;
}

/** Shares within the runs, or within the passes, moved and summing to 1. */
function movedWithin(shares: readonly number[], factors: readonly PressuredFactor[], run: boolean): number[] {
  const moved = ANSWERS.map((answer, k) => {
    if (isPass(answer) === run) return 0;
    return (shares[k] as number) * (run ? 1 : factorOf(factors, 'pass_answer', answer));
  });
  const total = moved.reduce((sum, share) => sum + share, 0);
  return moved.map((share) => (total > 0 ? share / total : 0));
}

function movedRun(run: number, factors: readonly PressuredFactor[]): number {
  const up = run * factorOf(factors, 'run_or_pass', 'run');
  const down = (1 - run) * factorOf(factors, 'run_or_pass', 'pass');
  return up + down > 0 ? up / (up + down) : run;
}

function factorOf(factors: readonly PressuredFactor[], target: PressuredTarget, name: string): number {
  return factors
    .filter((factor) => factor.target === target && factor.name === name)
    .reduce((product, { factor }) => product * factor, 1);
}
