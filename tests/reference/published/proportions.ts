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
const CONTINUITY = 'Newcombe 1998, Statistics in Medicine 17:857, Table I, method 4; further digits R 4.2.2';
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
  share('wilson_cc', [81, 263], { lower: 0.253508682295185, upper: 0.368176201043004, source: CONTINUITY }),
  share('wilson_cc', [15, 148], { lower: 0.0597782084284981, upper: 0.164449779364837, source: CONTINUITY }),
  share('wilson_cc', [0, 20], { lower: 0, upper: 0.200453345013487, source: CONTINUITY }),
  share('wilson_cc', [1, 29], { lower: 0.00180264021327966, upper: 0.19628175100976, source: CONTINUITY }),
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
  share('agresti_coull', [4, 10], {
    lower: 0.167110626261792,
    upper: 0.688395933710786,
    source: 'Agresti and Coull 1998, The American Statistician 52:119; value from memory, R 4.2.2',
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
  shares('sison_glaz', [56, 72, 73, 59, 62, 87, 58], {
    lower: [
      0.0792291220556745, 0.113490364025696, 0.115631691648822, 0.0856531049250535, 0.0920770877944325,
      0.145610278372591, 0.0835117773019272,
    ],
    upper: [
      0.164355734040223, 0.198616976010244, 0.200758303633371, 0.170779716909602, 0.177203699778981, 0.230736890357139,
      0.168638389286476,
    ],
    source:
      'Sison and Glaz 1995, Journal of the American Statistical Association 90:366, example 1; digits R 4.2.2 and statsmodels',
  }),
  shares('sison_glaz', [44, 55, 43, 32, 67, 78], {
    lower: [
      0.0846394984326019, 0.119122257053292, 0.0815047021943574, 0.0470219435736677, 0.156739811912226,
      0.191222570532915,
    ],
    upper: [
      0.192858330906214, 0.227341089526904, 0.18972353466797, 0.15524077604728, 0.264958644385838, 0.299441403006528,
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
  difference('miettinen_nurminen', [56, 70, 48, 80], {
    lower: 0.0528297132458334,
    upper: 0.338172940015866,
    source: SAS_PAPER,
  }),
  difference('miettinen_nurminen', [9, 10, 3, 10], {
    lower: 0.170025016424389,
    upper: 0.840649543943328,
    source: SAS_PAPER,
  }),
  difference('miettinen_nurminen', [10, 10, 0, 20], { lower: 0.715618660465623, upper: 1, source: SAS_PAPER }),
  difference('miettinen_nurminen', [84, 101, 89, 105], {
    lower: -0.119064614898061,
    upper: 0.0859968723450585,
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
