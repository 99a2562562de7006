import type { Check } from '../check.ts';

/** Published entropies, runs, survival curves and scores. */
export const SEQUENCE_CHECKS: readonly Check[] = [
  {
    method: 'entropy',
    input: { counts: [4, 2, 3, 0, 2, 4, 0, 0, 2, 1, 1], unit: 'nats' },
    expected: {
      plugin: 1.96838240872838,
      miller_madow: 2.15259293504417,
      chao_shen: 2.20113710127958,
      grassberger2003: 2.14462638603143,
      grassberger1988: 2.1891985037171,
      jackknife: 2.23127431418012,
    },
    tolerance: 1e-9,
    source:
      'manual of the R package entropy (data); plug-in and Chao-Shen by that package, the others R 4.2.2 from Miller 1955, Grassberger 1988 and 2003, Zahl 1977',
  },
  {
    method: 'entropy',
    input: { counts: [1, 1, 1, 1, 1, 1], unit: 'nats' },
    expected: { plugin: 1.79175946922805, miller_madow: 2.20842613589472, chao_shen: 3.84054931040648 },
    tolerance: 1e-9,
    source: 'R entropy::entropy.ChaoShen, 3.840549310406, from memory; digits R 4.2.2',
  },
  {
    method: 'entropy',
    input: { counts: [16, 8, 4, 4], unit: 'bits' },
    expected: { plugin: 1.75 },
    tolerance: 1e-12,
    source: 'Cover and Thomas, Elements of Information Theory, example 2.1.2; from memory',
  },
  {
    method: 'runs.counts',
    input: { n1: 39933862, n2: 39948082, runs: 39941409 },
    expected: {
      mean: 39940971.7343298,
      variance: 19970484.4843298,
      z: 0.0978478036572563,
      p_normal: 0.922053147648111,
    },
    tolerance: 1e-6,
    source: 'Cross Validated, question 37751: mean and variance; z by R 4.2.2',
  },
  {
    method: 'runs.sequence',
    input: { sequence: [1, 0, 1, 0, 1, 0, 1, 0, 1, 0] },
    expected: {
      n1: 5,
      n2: 5,
      runs: 10,
      mean: 6,
      variance: 2.22222222222222,
      z: 2.68328157299975,
      p_normal: 0.00729035809153564,
      p_lower_exact: 1,
      p_upper_exact: 0.00793650793650794,
      p_exact: 0.0158730158730159,
    },
    tolerance: 1e-9,
    source: 'Swed and Eisenhart 1943, P(10 runs of 5 and 5) = 2 / 252; from memory, R 4.2.2',
  },
  {
    method: 'runs.sequence',
    input: { sequence: [1, 1, 1, 1, 1, 0, 0, 0, 0, 0] },
    expected: {
      n1: 5,
      n2: 5,
      runs: 2,
      mean: 6,
      variance: 2.22222222222222,
      z: -2.68328157299975,
      p_normal: 0.00729035809153564,
      p_lower_exact: 0.00793650793650794,
      p_upper_exact: 1,
      p_exact: 0.0158730158730159,
    },
    tolerance: 1e-9,
    source: 'Swed and Eisenhart 1943, P(2 runs of 5 and 5) = 2 / 252; from memory, R 4.2.2',
  },
  {
    method: 'km.survival',
    input: {
      time: [6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35],
      event: [1, 1, 1, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0],
    },
    expected: {
      time: [6, 7, 10, 13, 16, 22, 23],
      n_risk: [21, 17, 15, 12, 11, 7, 6],
      n_event: [3, 1, 1, 1, 1, 1, 1],
      surv: [
        0.857142857142857, 0.80672268907563, 0.752941176470588, 0.690196078431372, 0.627450980392157, 0.53781512605042,
        0.448179271708683,
      ],
      se_greenwood: [
        0.0763603548321213, 0.0869352851800572, 0.0963496529943205, 0.10681470777501, 0.114053865256753,
        0.128233751693034, 0.13459145675576,
      ],
      median: 23,
    },
    tolerance: 1e-9,
    source:
      'Freireich et al. 1963, 6-MP arm; survival Cox and Oakes 1984 table 4.1, errors Klein and Moeschberger; R survfit',
  },
  {
    method: 'km.survival',
    input: {
      time: [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23],
      event: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1],
    },
    expected: {
      time: [1, 2, 3, 4, 5, 8, 11, 12, 15, 17, 22, 23],
      n_risk: [21, 19, 17, 16, 14, 12, 8, 6, 4, 3, 2, 1],
      n_event: [2, 2, 1, 2, 2, 4, 2, 2, 1, 1, 1, 1],
      surv: [
        0.904761904761905, 0.80952380952381, 0.761904761904762, 0.666666666666667, 0.571428571428571, 0.380952380952381,
        0.285714285714286, 0.19047619047619, 0.142857142857143, 0.0952380952380952, 0.0476190476190476, 0,
      ],
      se_greenwood: [
        0.0640564484890047, 0.0856890867468988, 0.0929428640903365, 0.102868899974728, 0.107989849431208,
        0.105971169574131, 0.0985807941917649, 0.0856890867468988, 0.0763603548321213, 0.0640564484890047,
        0.0464714320451682, 0,
      ],
      median: 8,
    },
    tolerance: 1e-9,
    source: 'Freireich et al. 1963, placebo arm, median 8; R survfit',
  },
  {
    method: 'score.binary',
    input: { p: [0.1, 0.9, 0.8, 0.3], y: [0, 1, 1, 0], eps: 1e-15 },
    expected: { log_loss: 0.197634881642149, brier: 0.0375 },
    tolerance: 1e-6,
    source: 'scikit-learn documentation of brier_score_loss, 0.0375; from memory, R 4.2.2',
  },
  {
    method: 'score.binary',
    input: { p: [0.9, 0.1, 0.2, 0.65], y: [1, 0, 0, 1], eps: 1e-15 },
    expected: { log_loss: 0.216161874680579, brier: 0.045625 },
    tolerance: 1e-6,
    source: 'scikit-learn documentation of log_loss, 0.21616; digits R 4.2.2',
  },
];
