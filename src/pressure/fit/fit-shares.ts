import { betaQuantile } from '../../stats/beta.ts';
import type { Spread } from '../../stats/spread.ts';
import { GUESS_WORTH } from './feature-guess.ts';
import type { FitShares } from './fit-result.ts';
import { VERDICTS, type Verdict } from './verdict.ts';

/** Shares of the verdicts among the expected snaps with one answer, and how much stands behind them. */
export interface VerdictPart {
  /** Dirichlet pseudo-count of the answer. */
  readonly alpha: number;
  /** Share of each verdict, in the order of the verdicts; sums to 1. */
  readonly shares: readonly number[];
  /** Snaps the shares are worth: the square of the weights' sum over the sum of their squares (Kish 1965). */
  readonly worth: number;
  /** Share of the part that rests on what is typical of offenses, not on their film; 0 to 1. */
  readonly guessed: number;
}

/** Half a snap for and half against keeps a share seen on no snap, or on all, from being certain (Jeffreys 1946). */
const HALF = 0.5;

/** Chances below and above a 95% interval. */
const [LOW, HIGH] = [0.025, 0.975];

/**
 * Shares of right, neutral and wrong with 95% intervals. The mean is exact: every answer's verdicts by its forecast
 * share. The interval is a beta with the mean and the variance that the forecast's Dirichlet and the counts behind each
 * answer's verdicts give.
 *
 * @param parts - at least one with a positive pseudo-count; without any everything is unknown
 */
export function fitShares(parts: readonly VerdictPart[]): FitShares {
  const total = parts.reduce((sum, { alpha }) => sum + alpha, 0);
  if (total === 0) return ALL_UNKNOWN;
  const mass = (verdicts: readonly Verdict[]) => meanAndVariance(parts, weightsOf(verdicts, 1));
  const right = within(mass(['right']), mass(['right', 'may_be_right', 'open']));
  const wrong = within(mass(['wrong']), mass(['wrong', 'may_be_wrong', 'open']));
  const neutral = within(mass(['neutral']), mass(['neutral', 'may_be_right', 'may_be_wrong', 'open']));
  const unknown = Math.max(0, 1 - right.mean - wrong.mean - neutral.mean);
  return { right, neutral, wrong, unknown, net: netOf(parts) };
}

const UNKNOWN: Spread = { mean: 0, low: 0, high: 1 };
const ALL_UNKNOWN: FitShares = {
  right: UNKNOWN,
  neutral: UNKNOWN,
  wrong: UNKNOWN,
  unknown: 1,
  net: { mean: 0, low: -1, high: 1 },
};

interface Moments {
  readonly mean: number;
  /** The mean with half a snap for and against, around which the interval lies. */
  readonly middle: number;
  readonly variance: number;
}

function weightsOf(verdicts: readonly Verdict[], weight: number): number[] {
  return VERDICTS.map((verdict) => (verdicts.includes(verdict) ? weight : 0));
}

/**
 * Mean and variance of the expected snaps' score when each verdict scores `weights`: over answers by the Dirichlet, and
 * within an answer by its verdicts' counts.
 */
function meanAndVariance(parts: readonly VerdictPart[], weights: readonly number[]): Moments {
  const total = parts.reduce((sum, { alpha }) => sum + alpha, 0);
  const within = parts.map((part) => partMoments(part, weights));
  const meanOf = (kind: 'mean' | 'middle') =>
    within.reduce((sum, part, i) => sum + shareOf(parts, i, total) * part[kind], 0);
  const mean = meanOf('mean');
  const variance = within.reduce((sum, part, i) => {
    const share = shareOf(parts, i, total);
    const between = (share * (part.mean - mean) ** 2) / (total + 1);
    const squareOfShare = (share * (1 - share)) / (total + 1) + share ** 2;
    return sum + between + squareOfShare * part.variance;
  }, 0);
  return { mean, middle: meanOf('middle'), variance };
}

function shareOf(parts: readonly VerdictPart[], i: number, total: number): number {
  return (parts[i]?.alpha ?? 0) / total;
}

function partMoments(part: VerdictPart, weights: readonly number[]): Moments {
  const { shares } = part;
  const worth = worthOf(part);
  const mean = shares.reduce((sum, share, v) => sum + share * (weights[v] as number), 0);
  const softened = shares.map((share) => (share * worth + HALF / shares.length) / (worth + HALF));
  const middle = softened.reduce((sum, share, v) => sum + share * (weights[v] as number), 0);
  const spread = softened.reduce((sum, share, v) => sum + share * ((weights[v] as number) - middle) ** 2, 0);
  return { mean, middle, variance: spread / (worth + 1) };
}

/** What is typical is worth eight snaps, however many were charted: the two variances are added. */
function worthOf({ worth, guessed }: VerdictPart): number {
  return worth === 0 ? 0 : 1 / (1 / worth + guessed ** 2 / GUESS_WORTH);
}

/** From the low end of the surely so to the high end of the possibly so; the means lie inside. */
function within(surely: Moments, possibly: Moments): Spread {
  return {
    mean: surely.mean,
    low: Math.min(surely.mean, quantile(LOW, surely)),
    high: Math.max(possibly.mean, quantile(HIGH, possibly)),
  };
}

function quantile(p: number, { middle, variance }: Moments): number {
  const size = (middle * (1 - middle)) / variance - 1;
  return size > 0 && Number.isFinite(size) ? betaQuantile(p, size * middle, size * (1 - middle)) : Number(p > HALF);
}

const NORMAL_95 = 1.959963984540054;

function netOf(parts: readonly VerdictPart[]): Spread {
  const scored = (open: number) =>
    VERDICTS.map((verdict) => {
      if (verdict === 'right') return 1;
      if (verdict === 'wrong') return -1;
      if (verdict === 'neutral') return 0;
      return openScore(verdict, open);
    });
  const { mean } = meanAndVariance(parts, scored(0));
  const [least, most] = [meanAndVariance(parts, scored(-1)), meanAndVariance(parts, scored(1))];
  return {
    mean,
    low: Math.max(-1, least.mean - NORMAL_95 * Math.sqrt(least.variance)),
    high: Math.min(1, most.mean + NORMAL_95 * Math.sqrt(most.variance)),
  };
}

/** What an open verdict scores at its worst (-1), unscored (0) and at its best (1). */
function openScore(verdict: Verdict, open: number): number {
  if (verdict === 'may_be_right') return Math.max(0, open);
  return verdict === 'may_be_wrong' ? Math.min(0, open) : open;
}
