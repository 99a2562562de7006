import { describe, expect, it } from 'vitest';
import { fitRidgeLogistic } from '../../src/stats/logistic.ts';

const SOURCE = 'Agresti 2002, Categorical Data Analysis, tables 7.1 and 7.2 (219 alligators); from memory';

/** Fish, invertebrates, reptiles, birds, other; lakes Hancock, Oklawaha, Trafford, George; small, then large. */
const FOOD = [
  { lake: 0, small: 1, counts: [23, 4, 2, 2, 8] },
  { lake: 0, small: 0, counts: [7, 0, 1, 3, 5] },
  { lake: 1, small: 1, counts: [5, 11, 1, 0, 3] },
  { lake: 1, small: 0, counts: [13, 8, 6, 1, 0] },
  { lake: 2, small: 1, counts: [5, 11, 2, 1, 5] },
  { lake: 2, small: 0, counts: [8, 7, 6, 3, 5] },
  { lake: 3, small: 1, counts: [16, 19, 1, 2, 3] },
  { lake: 3, small: 0, counts: [17, 1, 0, 1, 3] },
];
/** Log odds against fish: constant, small, Hancock, Oklawaha, Trafford. */
const PUBLISHED = {
  invertebrates: [-1.55, 1.46, -1.66, 0.94, 1.12],
  reptiles: [-3.31, -0.35, 1.24, 2.46, 2.94],
  birds: [-2.09, -0.63, 0.7, -0.65, 1.09],
  other: [-1.9, 0.33, 0.83, 0.01, 1.52],
};

describe('fitRidgeLogistic with five classes', () => {
  const groups = FOOD.flatMap(({ lake, small, counts }) => counts.map((count, food) => ({ lake, small, count, food })));
  const features = ({ lake, small }: (typeof groups)[number]) => [
    1,
    small,
    ...[0, 1, 2].map((l) => Number(l === lake)),
  ];
  const fit = fitRidgeLogistic({
    design: { kind: 'dense', features: 5, values: Float64Array.from(groups.flatMap(features)) },
    outcomes: groups.map(({ food }) => food),
    classes: 5,
    weights: groups.map(({ count }) => count),
    penalties: new Float64Array(5).fill(1e-9),
    tolerance: 1e-10,
  });

  it.each(Object.entries(PUBLISHED))(`gives the published log odds of %s against fish (${SOURCE})`, (_, published) => {
    const food = 1 + Object.values(PUBLISHED).indexOf(published);
    const odds = [0, 1, 2, 3, 4].map((j) => fit.coefficients[j * 5 + food]! - fit.coefficients[j * 5]!);
    odds.forEach((value, j) => {
      expect(Math.abs(value - published[j]!)).toBeLessThan(0.006);
    });
  });
});
