import { chainFixed, chainFixedBinomial } from '../../../src/stats/backoff-chain.ts';
import { probabilityGreater } from '../../../src/stats/compare-betas.ts';
import { dirichletMoments, fitDirichlet } from '../../../src/stats/dirichlet-prior.ts';
import { jamesStein } from '../../../src/stats/james-stein.ts';
import { betaMoments, betaPosterior, fitBeta, naiveBetaMoments, type Tally } from '../../../src/stats/shrinkage.ts';
import type { Adapter } from '../check.ts';

const tallies = ({ x, n }: { x: number[]; n: number[] }): Tally[] =>
  x.map((successes, i) => ({ successes, trials: n[i] as number }));

/** Priors fitted to many groups, posteriors and back-off chains. */
export const SHRINKAGE_ADAPTERS: Record<string, Adapter> = {
  'eb.beta_moments_naive': (input) => ({ ...naiveBetaMoments(tallies(input)) }),
  'eb.beta_ml': (input) => {
    const { alpha, beta, logLikelihood } = fitBeta(tallies(input));
    return { alpha, beta, loglik: logLikelihood };
  },
  'eb.beta_moments_anova': (input) => {
    const { correlation, mean, size } = betaMoments(tallies(input));
    return { rho: correlation, mu: mean, M: size };
  },
  'eb.beta_posterior': ({ alpha, beta, x, n, conf }) => {
    const { mean, low, high } = betaPosterior({ alpha, beta, successes: x, trials: n, level: conf });
    return { mean, lower: low, upper: high };
  },
  'eb.james_stein': (input) => {
    const { mean, kept, estimates } = jamesStein(tallies(input));
    return { mean, shrink: kept, estimates };
  },
  'eb.dirichlet_ml': ({ counts }) => {
    const { alpha, logLikelihood } = fitDirichlet(counts);
    return { alpha, loglik: logLikelihood };
  },
  'eb.dirichlet_moments_anova': ({ counts }) => {
    const { correlation, shares, size } = dirichletMoments(counts);
    return { rho: correlation, pi: shares, M: size };
  },
  'eb.chain_fixed_m': ({ x, n, M, root_mean }) => ({
    means: chainFixedBinomial({ successes: x, trials: n, strengths: M, root: root_mean }),
  }),
  'eb.chain_fixed_m_multi': ({ counts, M, root_mean }) => ({
    means: chainFixed({ counts, strengths: M, root: root_mean }),
  }),
  'bayes.p_a_gt_b': ({ alpha1, beta1, alpha2, beta2 }) => ({
    p: probabilityGreater({ alpha: alpha1, beta: beta1 }, { alpha: alpha2, beta: beta2 }),
  }),
};
