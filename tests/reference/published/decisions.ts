import type { Check } from '../check.ts';

/** Published games, choices, pairings and shares of seats. */
export const DECISION_CHECKS: readonly Check[] = [
  {
    method: 'game.zero_sum',
    input: {
      payoff_to_row: [
        [-2, 3],
        [3, -4],
      ],
    },
    expected: {
      value: 0.083333333333333,
      row: [0.583333333333333, 0.416666666666667],
      col: [0.583333333333333, 0.416666666666667],
    },
    tolerance: 1e-6,
    source: 'Ferguson, Game Theory, Odd or Even: value 1/12, mixes 7/12 and 5/12; from memory, R 4.2.2',
  },
  {
    method: 'game.zero_sum',
    input: {
      payoff_to_row: [
        [-5, 5],
        [10, 0],
      ],
    },
    expected: { value: 2.5, row: [0.5, 0.5], col: [0.25, 0.75] },
    tolerance: 1e-6,
    source: 'Winston, Mathletics, a two by two game of value 2.5; from memory, R 4.2.2',
  },
  {
    method: 'game.zero_sum',
    input: {
      payoff_to_row: [
        [4, 0, 2, 1],
        [0, 4, 1, 2],
        [1, -1, 3, 0],
        [-1, 1, 0, 3],
        [-2, -2, 2, 2],
      ],
    },
    expected: { value: 1.55555555555556, row: [0.444444444444444, 0.444444444444445, 0, 0, 0.111111111111111] },
    tolerance: 1e-6,
    source: 'Ferguson, Game Theory, Colonel Blotto 4 against 3: value 14/9; from memory, R 4.2.2',
  },
  {
    method: 'ilp.binary_max',
    input: {
      values: [92, 57, 49, 68, 60, 43, 67, 84, 87, 72],
      constraints: [{ coef: [23, 31, 29, 44, 53, 38, 63, 85, 89, 82], dir: '<=', rhs: 165 }],
    },
    expected: { feasible: true, objective: 309, x: [1, 1, 1, 1, 0, 1, 0, 0, 0, 0] },
    tolerance: 1e-7,
    source: 'Burkardt, KNAPSACK_01 data set P01: optimum 309; lpSolve and full enumeration',
  },
  {
    method: 'ilp.binary_max',
    input: { values: [24, 13, 23, 15, 16], constraints: [{ coef: [12, 7, 11, 8, 9], dir: '<=', rhs: 26 }] },
    expected: { feasible: true, objective: 51, x: [0, 1, 1, 1, 0] },
    tolerance: 1e-7,
    source: 'Burkardt, KNAPSACK_01 data set P02: optimum 51; lpSolve and full enumeration',
  },
  {
    method: 'ilp.binary_max',
    input: {
      values: [442, 525, 511, 593, 546, 564, 617],
      constraints: [{ coef: [41, 50, 49, 59, 55, 57, 60], dir: '<=', rhs: 170 }],
    },
    expected: { feasible: true, objective: 1735, x: [0, 1, 0, 1, 0, 0, 1] },
    tolerance: 1e-7,
    source: 'Burkardt, KNAPSACK_01 data set P06: optimum 1735; lpSolve and full enumeration',
  },
  {
    method: 'apportion.largest_remainder',
    input: { weights: [47000, 16000, 15800, 12000, 6100, 3100], seats: 10 },
    expected: { seats: [5, 2, 1, 1, 1, 0] },
    tolerance: 0,
    source: 'Hare quota example, from memory; digits R 4.2.2',
  },
  {
    method: 'apportion.largest_remainder',
    input: { weights: [720257, 323524, 257466, 213138, 144392, 88315], seats: 31 },
    expected: { seats: [13, 6, 5, 4, 2, 1] },
    tolerance: 0,
    source: '31 seats, from memory; digits R 4.2.2',
  },
  {
    method: 'apportion.largest_remainder',
    input: { weights: [216, 310, 22, 32], seats: 60 },
    expected: { seats: [23, 32, 2, 3] },
    tolerance: 0,
    source: '60 seats, from memory; digits R 4.2.2',
  },
  {
    method: 'apportion.largest_remainder',
    input: { weights: [6, 6, 2], seats: 10 },
    expected: { seats: [4, 4, 2] },
    tolerance: 0,
    source: 'Alabama paradox, 10 seats; from memory, R 4.2.2',
  },
  {
    method: 'apportion.largest_remainder',
    input: { weights: [6, 6, 2], seats: 11 },
    expected: { seats: [5, 5, 1] },
    tolerance: 0,
    source: 'Alabama paradox, 11 seats; from memory, R 4.2.2',
  },
  {
    method: 'assign.bipartite',
    input: {
      matrix: [
        [4, 1, 3],
        [2, 0, 5],
        [3, 2, 2],
      ],
      maximize: false,
    },
    expected: { total: 5, col_of_row: [1, 0, 2] },
    tolerance: 1e-9,
    source: 'scipy documentation of linear_sum_assignment: columns 1 0 2, total 5; full enumeration',
  },
];
