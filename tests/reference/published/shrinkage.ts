import { RAT_TUMOURS } from '../../stats/rat-tumours.ts';
import type { Check } from '../check.ts';

const RATS = { x: RAT_TUMOURS.map((group) => group.successes), n: RAT_TUMOURS.map((group) => group.trials) };

/** Published priors, posteriors and shrunken shares. */
export const SHRINKAGE_CHECKS: readonly Check[] = [
  {
    method: 'eb.beta_moments_naive',
    input: RATS,
    expected: { alpha: 1.35614939103193, beta: 8.61505789132079 },
    tolerance: 1e-6,
    source:
      'Gelman et al., Bayesian Data Analysis, section 5.1, prints 1.4 and 8.6; from memory, further digits R 4.2.2',
  },
  {
    method: 'eb.beta_ml',
    input: RATS,
    expected: { alpha: 2.30478338575056, beta: 14.0798092493242, loglik: -154.140249665197 },
    tolerance: 0.002,
    source: 'vignette of the R package BayesGOF, prints 2.304768 and 14.079707; R 4.2.2 and VGAM',
  },
  {
    method: 'eb.beta_moments_anova',
    input: RATS,
    expected: { rho: 0.044052610601403, mu: 0.152463768115942, M: 21.7001302839508 },
    tolerance: 1e-8,
    source: 'Weir and Hill 2002 on the same groups; from memory, R dirmult::weirMoM',
  },
  {
    method: 'eb.beta_posterior',
    input: { alpha: 1.4, beta: 8.6, x: 4, n: 14, conf: 0.95 },
    expected: { mean: 0.225, lower: 0.0853961769785565, upper: 0.407789866198042 },
    tolerance: 1e-8,
    source:
      'Gelman et al., Bayesian Data Analysis, section 5.1, posterior mean 0.225; from memory, interval R 4.2.2 qbeta',
  },
  {
    method: 'eb.james_stein',
    input: {
      x: [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7],
      n: [45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45],
    },
    expected: {
      mean: 0.265432098765432,
      shrink: 0.211653417144266,
      estimates: [
        0.29391385489966, 0.289210445629788, 0.284507036359915, 0.279803627090043, 0.27510021782017, 0.27510021782017,
        0.270396808550298, 0.265693399280425, 0.260989990010552, 0.260989990010552, 0.25628658074068, 0.25628658074068,
        0.25628658074068, 0.25628658074068, 0.25628658074068, 0.251583171470807, 0.246879762200935, 0.242176352931062,
      ],
    },
    tolerance: 1e-8,
    source:
      'Efron and Morris 1975, 1977, 18 batters: .265, factor .212, .400 becomes .294; from memory, digits R 4.2.2',
  },
  {
    method: 'bayes.p_a_gt_b',
    input: { alpha1: 4, beta1: 3, alpha2: 2, beta2: 6 },
    expected: { p: 0.913752913752913 },
    tolerance: 1e-7,
    source: 'Miller 2015, Formulas for Bayesian A/B testing, closed sum; R 4.2.2 integrate',
  },
];
