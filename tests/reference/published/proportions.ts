import type { Check } from '../check.ts';

interface Limits {
  readonly lower: number | readonly number[];
  readonly upper: number | readonly number[];
}

const share = (method: string, [x, n]: readonly [number, number], limits: Limits & { source: string }): Check => {
  const { source, ...expected } = limits;
  return {
    method: `binom.${method}`,
    input: { x, n, conf: 0.95 },
    expected: { estimate: x / n, ...expected },
    tolerance: 1e-8,
    source,
  };
};

const shares = (method: string, counts: readonly number[], limits: Limits & { source: string }): Check => {
  const { source, ...expected } = limits;
  const tolerance = method === 'goodman' ? 1e-8 : 5e-5; // the Sison-Glaz sources differ from each other by 2e-5
  return { method: `multinomial.${method}`, input: { counts, conf: 0.95 }, expected, tolerance, source };
};

type Tallies = readonly [x1: number, n1: number, x2: number, n2: number];

const difference = (method: string, [x1, n1, x2, n2]: Tallies, limits: Limits & { source: string }): Check => {
  const { source, ...expected } = limits;
  return {
    method: `diff.${method}`,
    input: { x1, n1, x2, n2, conf: 0.95 },
    expected: { estimate: x1 / n1 - x2 / n2, ...expected },
    tolerance: method === 'newcombe10' ? 1e-7 : 1e-6,
    source,
  };
};

const WILSON = 'Newcombe 1998, Statistics in Medicine 17:857, Table I, method 3; further digits R 4.2.2';
const EXACT = 'Newcombe 1998, Statistics in Medicine 17:857, Table I, method 5; from memory, R 4.2.2 binom.test';
const NEWCOMBE = 'Newcombe 1998, Statistics in Medicine 17:873, Table II, method 10; further digits R 4.2.2';
const SAS_PAPER = 'WUSS 2016, paper 127 (SAS macros for a difference of proportions); further digits R 4.2.2';
const COINMIND = 'manual of the R package CoinMinD, example output; further digits R 4.2.2';

/** Published intervals for one share, several shares and a difference of shares. */
export const PROPORTION_CHECKS: readonly Check[] = [
  share('wilson', [81, 263], { lower: 0.255288519878274, upper: 0.3662095769828, source: WILSON }),
  share('wilson', [15, 148], { lower: 0.0623863995307363, upper: 0.160487241723308, source: WILSON }),
  share('wilson', [0, 20], { lower: 0, upper: 0.161125158052819, source: WILSON }),
  share('wilson', [1, 29], { lower: 0.00611321429276265, upper: 0.171755218793203, source: WILSON }),
  share('clopper_pearson', [81, 263], { lower: 0.252736745585271, upper: 0.367621922601351, source: EXACT }),
  share('clopper_pearson', [15, 148], { lower: 0.0578440100834486, upper: 0.161650490349479, source: EXACT }),
  share('clopper_pearson', [0, 20], { lower: 0, upper: 0.168433470983085, source: EXACT }),
  share('clopper_pearson', [1, 29], { lower: 0.000872646883579923, upper: 0.177644295488723, source: EXACT }),
  share('wilson', [0, 10], {
    lower: 0,
    upper: 0.277532799862889,
    source: 'R 4.2.2 prop.test, correct = FALSE; 0.0000-0.2775 from memory',
  }),
  share('jeffreys', [8, 10], {
    lower: 0.497225503560007,
    upper: 0.955940586447369,
    source: 'Brown, Cai and DasGupta 2001, Statistical Science 16:101; value from memory, R 4.2.2 qbeta',
  }),
  share('jeffreys', [0, 10], {
    lower: 0,
    upper: 0.217196267509211,
    source: 'Brown, Cai and DasGupta 2001, rule for no success; value from memory, R 4.2.2 qbeta',
  }),
  shares('goodman', [56, 72, 73, 59, 62, 87, 58], {
    lower: [
      0.0851672391387468, 0.114532918904883, 0.116395289223748, 0.0906056708911604, 0.0960773800481545,
      0.142749109163055, 0.0887890581298042,
    ],
    upper: [
      0.166261408130465, 0.204372582694992, 0.206727515771794, 0.173474886565051, 0.180655087595056, 0.239415943371816,
      0.171074195930741,
    ],
    source: 'May and Johnson 2000, Journal of Statistical Software 5(6); further digits R 4.2.2 and statsmodels',
  }),
  shares('goodman', [44, 55, 43, 32, 67, 78], {
    lower: [
      0.0946836803518434, 0.123768933872965, 0.0920852700225933, 0.0641267104678176, 0.156379436074963,
      0.186927316249989,
    ],
    upper: [
      0.19664128127306, 0.235048888549567, 0.193103976984344, 0.153569675741492, 0.276066961763164, 0.313011942385766,
    ],
    source: COINMIND,
  }),
  difference('newcombe10', [56, 70, 48, 80], { lower: 0.052431472402365, upper: 0.333872654036906, source: NEWCOMBE }),
  difference('newcombe10', [9, 10, 3, 10], { lower: 0.170522723934503, upper: 0.809017973535488, source: NEWCOMBE }),
  difference('newcombe10', [6, 7, 2, 7], { lower: 0.0582279274823124, upper: 0.806249637524228, source: NEWCOMBE }),
  difference('newcombe10', [5, 56, 0, 29], { lower: -0.0381371479035369, upper: 0.192560013855112, source: NEWCOMBE }),
  difference('newcombe10', [0, 10, 0, 20], { lower: -0.161125158052819, upper: 0.277532799862889, source: NEWCOMBE }),
  difference('newcombe10', [0, 10, 0, 10], { lower: -0.277532799862889, upper: 0.277532799862889, source: NEWCOMBE }),
  difference('newcombe10', [10, 10, 0, 20], { lower: 0.679086037141915, upper: 1, source: NEWCOMBE }),
  difference('newcombe10', [10, 10, 0, 10], { lower: 0.607509350430524, upper: 1, source: NEWCOMBE }),
  difference('newcombe10', [84, 101, 89, 105], {
    lower: -0.117749649785194,
    upper: 0.0850713518157428,
    source: SAS_PAPER,
  }),
  {
    method: 'weighted.kish_wilson',
    input: { weights: [2, 2, 1, 1, 1, 1], outcomes: [1, 0, 1, 0, 0, 1], conf: 0.95 },
    expected: { estimate: 0.5, n_eff: 5.33333333333333, lower: 0.176465962051681, upper: 0.823534037948319 },
    tolerance: 1e-9,
    source: 'Kish 1965, Survey Sampling, effective n = 64 / 12; from memory, R 4.2.2',
  },
];
