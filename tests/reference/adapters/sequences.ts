import { type EntropyEstimator, entropy } from '../../../src/stats/entropy.ts';
import { kaplanMeier } from '../../../src/stats/kaplan-meier.ts';
import { type RunsTest, runsTest, runsTestFromCounts } from '../../../src/stats/runs.ts';
import { calibration, multiclassBrier, multiclassLogLoss } from '../../../src/stats/scores.ts';
import type { Adapter } from '../check.ts';

const ENTROPY_KEYS: Record<string, EntropyEstimator> = {
  plugin: 'plug-in',
  miller_madow: 'miller-madow',
  chao_shen: 'chao-shen',
  grassberger2003: 'grassberger-2003',
  grassberger1988: 'grassberger-1988',
  jackknife: 'jackknife',
};

const runs = ({ pNormal, exact, ...rest }: RunsTest) => ({
  ...rest,
  p_normal: pNormal,
  p_lower_exact: exact?.lower,
  p_upper_exact: exact?.upper,
  p_exact: exact?.twoSided,
});

/** Entropy, runs, survival and scores of forecasts. */
export const SEQUENCE_ADAPTERS: Record<string, Adapter> = {
  entropy: ({ counts, unit }) =>
    Object.fromEntries(Object.entries(ENTROPY_KEYS).map(([key, estimator]) => [key, entropy(counts, estimator, unit)])),
  'runs.counts': (input) => runs(runsTestFromCounts(input)),
  'runs.sequence': ({ sequence }) => runs(runsTest(sequence)),
  'km.survival': ({ time, event }) => {
    const { steps, median } = kaplanMeier(
      time,
      event.map((e: number) => e === 1),
    );
    return {
      time: steps.map((s) => s.time),
      n_risk: steps.map((s) => s.atRisk),
      n_event: steps.map((s) => s.events),
      surv: steps.map((s) => s.survival),
      se_greenwood: steps.map((s) => s.standardError),
      median,
    };
  },
  'score.binary': ({ p, y, eps }) => {
    const pairs = p.map((yes: number) => [1 - yes, yes]);
    const { intercept, slope, inTheLarge } = calibration(p, y, eps);
    return {
      log_loss: multiclassLogLoss(pairs, y, eps),
      brier: multiclassBrier(pairs, y) / 2,
      cal_intercept: intercept,
      cal_slope: slope,
      cal_in_large: inTheLarge,
    };
  },
  'score.multiclass': ({ P, y, eps }) => ({
    log_loss: multiclassLogLoss(P, y, eps),
    brier_sum: multiclassBrier(P, y),
  }),
};
