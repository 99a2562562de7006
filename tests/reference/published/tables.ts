import type { Check } from '../check.ts';

/** Published tests, information and predictability in tables. */
export const TABLE_CHECKS: readonly Check[] = [
  {
    method: 'padjust.bh',
    input: {
      p: [
        0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1,
      ],
    },
    expected: {
      adjusted: [
        0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.0638571428571429, 0.0638571428571429, 0.0645, 0.0765, 0.486,
        0.581181818181818, 0.714875, 0.753230769230769, 0.813214285714286, 1,
      ],
      'rejected_at_0.05': 4,
    },
    tolerance: 1e-10,
    source: 'Benjamini and Hochberg 1995, thrombolysis trial; scipy documentation and R 4.2.2 p.adjust',
  },
  {
    method: 'fisher.rxc',
    input: {
      table: [
        [3, 1],
        [1, 3],
      ],
    },
    expected: { p_two_sided: 0.485714285714286 },
    tolerance: 1e-8,
    source: 'Fisher 1935, The Design of Experiments, lady tasting tea; R 4.2.2 fisher.test',
  },
  {
    method: 'fisher.rxc',
    input: {
      table: [
        [1, 9],
        [11, 3],
      ],
    },
    expected: { p_two_sided: 0.00275945618522008 },
    tolerance: 1e-8,
    source: '2 x 2 table of a textbook, p = 0.002759, from memory; digits R 4.2.2 fisher.test',
  },
  {
    method: 'fisher.rxc',
    input: {
      table: [
        [8, 2],
        [1, 5],
      ],
    },
    expected: { p_two_sided: 0.034965034965035 },
    tolerance: 1e-8,
    source: 'scipy documentation of fisher_exact, p = 0.0350; from memory, R 4.2.2 fisher.test',
  },
  {
    method: 'fisher.rxc',
    input: {
      table: [
        [1, 3, 10, 6],
        [2, 3, 10, 7],
        [1, 6, 14, 12],
        [0, 1, 9, 11],
      ],
    },
    expected: { p_two_sided: 0.782684938965675 },
    tolerance: 1e-8,
    source: "Agresti 1990, job satisfaction, p = 0.7827 in R's help page of fisher.test; from memory, R 4.2.2",
  },
  {
    method: 'mi',
    input: {
      table: [
        [4, 2, 1, 1],
        [2, 4, 1, 1],
        [2, 2, 2, 2],
        [8, 0, 0, 0],
      ],
      unit: 'bits',
    },
    expected: { H_row: 2, H_col: 1.75, H_joint: 3.375, mi: 0.375, mi_miller_madow: 0.239747339916659 },
    tolerance: 1e-9,
    source: 'Cover and Thomas, Elements of Information Theory, example 2.2.1; from memory, R 4.2.2',
  },
  {
    method: 'assoc.predictability',
    input: {
      table: [
        [5, 9, 7, 1],
        [4, 8, 11, 15],
        [3, 7, 22, 8],
      ],
    },
    expected: {
      lambda_col_given_row: 0.1,
      lambda_row_given_col: 0.183333333333333,
      u_col_given_row: 0.0688193471149307,
      u_row_given_col: 0.0842078528371875,
    },
    tolerance: 1e-9,
    source: 'manual of the R package rapportools: lambda 0.1 and 0.18333; U by R 4.2.2',
  },
  {
    method: 'assoc.predictability',
    input: {
      table: [
        [1768, 807, 189, 47],
        [946, 1387, 746, 53],
        [115, 438, 288, 16],
      ],
    },
    expected: {
      lambda_col_given_row: 0.192394862754974,
      lambda_row_given_col: 0.224100327153762,
      u_col_given_row: 0.0753409779655944,
      u_row_given_col: 0.0850695572757062,
    },
    tolerance: 1e-9,
    source: 'Goodman and Kruskal 1954, p. 744: lambda .192 and .224; from memory, digits R 4.2.2',
  },
  {
    method: 'permutation.mc_p',
    input: { b: 0, B: 999 },
    expected: { p: 0.001 },
    tolerance: 1e-12,
    source: 'Phipson and Smyth 2010: p = (b + 1) / (B + 1)',
  },
];
