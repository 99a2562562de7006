import { describe, expect, it } from 'vitest';
import { dirichletVariance } from '../../src/stats/dirichlet-variance.ts';

describe('dirichletVariance', () => {
  it.each([
    { alphas: [2, 2], weights: [1, 0], variance: 0.05, source: 'Beta(2, 2)' },
    { alphas: [1, 3], weights: [1, 0], variance: 3 / 80, source: 'Beta(1, 3): ab / ((a + b)^2 (a + b + 1))' },
    { alphas: [1, 1, 1], weights: [1, 0, 0], variance: 1 / 18, source: 'Beta(1, 2)' },
  ])('is that of $source', ({ alphas, weights, variance }) => {
    expect(dirichletVariance(alphas, weights)).toBeCloseTo(variance, 12);
  });

  it('is nothing where every share weighs the same', () => {
    expect(dirichletVariance([3, 1, 8], [2, 2, 2])).toBeCloseTo(0, 12);
  });

  it('takes covariances in: a difference of two shares of a Dirichlet(1, 1, 1) has variance 1/6', () => {
    // var p1 + var p2 - 2 cov = 2/36 * 2 + 2/36 = 1/6, with cov = -1/36.
    expect(dirichletVariance([1, 1, 1], [1, -1, 0])).toBeCloseTo(1 / 18 + 1 / 18 + 2 / 36, 12);
  });
});
