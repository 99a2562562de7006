import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { fitRidgeLogistic, type LogisticFit, type LogisticTask } from '../../src/stats/logistic.ts';
import type { LogisticDesign } from '../../src/stats/logistic-design.ts';
import { createRandom } from '../../src/stats/random.ts';

/** Launch temperature (°F) of 23 flights and whether an O-ring showed thermal distress (Dalal, Fowlkes and Hoadley 1989). */
const TEMPERATURE = [66, 70, 69, 68, 67, 72, 73, 70, 57, 63, 70, 78, 67, 53, 67, 75, 70, 81, 76, 79, 75, 76, 58];
const DISTRESS = [0, 1, 0, 0, 0, 0, 0, 0, 1, 1, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 1];

const dense = (rows: number[][]): LogisticDesign => ({
  kind: 'dense',
  features: rows[0]?.length ?? 0,
  values: Float64Array.from(rows.flat()),
});

/** A seeded task: an unpenalized constant, then groups of features of which one each is on. */
function randomTask(seed: number, classes: number, observations = 120): LogisticTask {
  const random = createRandom(seed);
  const rows = Array.from({ length: observations }, () =>
    Uint32Array.of(0, 1 + random.integer(3), 4 + random.integer(4), 8 + random.integer(2)),
  );
  return {
    design: { kind: 'one-hot', features: 10, rows },
    outcomes: rows.map((row) => (row[1]! + random.integer(classes)) % classes),
    classes,
    penalties: Float64Array.from({ length: 10 }, (_, j) => (j === 0 ? 0 : 0.5 + j / 4)),
  };
}

const asDense = (task: LogisticTask): LogisticTask => {
  if (task.design.kind !== 'one-hot') return task;
  const { rows, features } = task.design;
  return {
    ...task,
    design: dense(rows.map((row) => Array.from({ length: features }, (_, j) => (row.includes(j) ? 1 : 0)))),
  };
};

/** Linear scores row by row, written out: one number for 2 classes, else one per class. */
function scoresOf(fit: LogisticFit, design: LogisticDesign): Float64Array {
  const width = fit.coefficients.length / fit.features;
  const rows = rowsOf(design);
  return Float64Array.from({ length: rows.length * width }, (_, k) =>
    rows[Math.floor(k / width)]!.reduce((sum, x, j) => sum + x * fit.coefficients[j * width + (k % width)]!, 0),
  );
}

function rowsOf(design: LogisticDesign): number[][] {
  const { features } = design;
  if (design.kind === 'one-hot') {
    return design.rows.map((on) => Array.from({ length: features }, (_, j) => (on.includes(j) ? 1 : 0)));
  }
  const count = design.values.length / features;
  return Array.from({ length: count }, (_, i) => Array.from(design.values.subarray(i * features, (i + 1) * features)));
}

/** Class probabilities row by row from scores: the logistic function, or shares of exponentials. */
function probabilitiesOf(fit: LogisticFit, design: LogisticDesign, offsets?: Float64Array): number[] {
  const scores = scoresOf(fit, design).map((score, k) => score + (offsets?.[k] ?? 0));
  if (fit.classes === 2) return Array.from(scores).flatMap((s) => [1 / (1 + Math.exp(s)), 1 / (1 + Math.exp(-s))]);
  return Array.from(scores, (s, k) => {
    const row = scores.subarray(k - (k % fit.classes), k - (k % fit.classes) + fit.classes);
    return Math.exp(s) / row.reduce((sum, other) => sum + Math.exp(other), 0);
  });
}

describe('without penalty', () => {
  it('fits the space shuttle flights: 15.0429 - 0.2322 x temperature (Agresti 2002, table 5.10; from memory)', () => {
    const design = dense(TEMPERATURE.map((t) => [1, t]));
    const fit = fitRidgeLogistic({ design, outcomes: DISTRESS, classes: 2, penalties: [0, 0] });
    expect(fit.converged).toBe(true);
    expect(fit.coefficients[0]!.toFixed(4)).toBe('15.0429');
    expect(fit.coefficients[1]!.toFixed(4)).toBe('-0.2322');
    expect((2 * fit.loss).toFixed(3)).toBe('20.315'); // residual deviance
  });

  it('a constant alone gives back the observed shares', () => {
    const outcomes = [0, 0, 0, 0, 1, 1, 1, 2, 2, 2];
    const design = dense(outcomes.map(() => [1]));
    const fit = fitRidgeLogistic({ design, outcomes, classes: 3, penalties: [0] });
    const shares = probabilitiesOf(fit, dense([[1]]));
    [0.4, 0.3, 0.3].forEach((share, c) => {
      expect(shares[c]).toBeCloseTo(share, 6);
    });
  });

  it('says that it did not converge when the classes can be parted', () => {
    const fit = fitRidgeLogistic({
      design: dense([[-1], [1]]),
      outcomes: [0, 1],
      classes: 2,
      penalties: [0],
      tolerance: 1e-12,
      maxIterations: 20,
    });
    expect(fit.coefficients[0]).toBeGreaterThan(10);
    expect(fit.converged).toBe(false);
  });
});

describe('with penalty', () => {
  it('one feature, one observation: the penalty balances the residual, w = 1 / (1 + e^w)', () => {
    const fit = fitRidgeLogistic({ design: dense([[1]]), outcomes: [1], classes: 2, penalties: [1] });
    expect(fit.coefficients[0]).toBeCloseTo(0.4010581, 6); // the root, as the next line shows
    expect(fit.coefficients[0]! * (1 + Math.exp(fit.coefficients[0]!))).toBeCloseTo(1, 7);
  });

  it.each([2, 3, 5])('%s classes: at the optimum no penalized slope is left, by finite differences', (classes) => {
    const task = randomTask(3, classes);
    const fit = fitRidgeLogistic({ ...task, tolerance: 1e-10 });
    const lossAt = (coefficients: Float64Array) => {
      const probabilities = probabilitiesOf({ ...fit, coefficients }, task.design);
      let loss = 0;
      Array.from(task.outcomes).forEach((y, i) => {
        loss -= Math.log(probabilities[i * classes + y]!);
      });
      const width = coefficients.length / fit.features;
      coefficients.forEach((w, k) => {
        loss += 0.5 * task.penalties[Math.floor(k / width)]! * w * w;
      });
      return loss;
    };
    expect(lossAt(fit.coefficients)).toBeCloseTo(fit.loss, 8);
    fit.coefficients.forEach((_, k) => {
      const up = fit.coefficients.slice();
      const down = fit.coefficients.slice();
      up[k]! += 1e-4;
      down[k]! -= 1e-4;
      expect(Math.abs(lossAt(up) - lossAt(down)) / 2e-4).toBeLessThan(1e-5);
    });
  });

  it.each([2, 4])('%s classes: one-hot rows and the same rows written out agree', (classes) => {
    const sparse = fitRidgeLogistic(randomTask(5, classes));
    const full = fitRidgeLogistic(asDense(randomTask(5, classes)));
    sparse.coefficients.forEach((w, k) => {
      expect(full.coefficients[k]).toBeCloseTo(w, 5);
    });
  });

  it('shrinks: a larger penalty never means a larger sum of squares', () => {
    const size = (factor: number) => {
      const task = randomTask(7, 3);
      const fit = fitRidgeLogistic({ ...task, penalties: Array.from(task.penalties, (p) => p * factor) });
      return fit.coefficients.slice(3).reduce((sum, w) => sum + w * w, 0);
    };
    expect(size(10)).toBeLessThan(size(1));
    expect(size(1)).toBeLessThan(size(0.1));
  });

  it('does not mind the order of the observations, and a weight of 2 is the observation twice', () => {
    const task = randomTask(9, 3, 40);
    const rows = task.design.kind === 'one-hot' ? task.design.rows : [];
    const outcomes = Array.from(task.outcomes);
    const turned = fitRidgeLogistic({
      ...task,
      design: { kind: 'one-hot', features: 10, rows: rows.toReversed() },
      outcomes: outcomes.toReversed(),
    });
    const weighted = fitRidgeLogistic({ ...task, weights: outcomes.map((_, i) => (i < 5 ? 2 : 1)) });
    const doubled = fitRidgeLogistic({
      ...task,
      design: { kind: 'one-hot', features: 10, rows: [...rows, ...rows.slice(0, 5)] },
      outcomes: [...outcomes, ...outcomes.slice(0, 5)],
    });
    fitRidgeLogistic(task).coefficients.forEach((w, k) => {
      expect(turned.coefficients[k]).toBeCloseTo(w, 5);
      expect(doubled.coefficients[k]).toBeCloseTo(weighted.coefficients[k]!, 5);
    });
  });

  it('two classes written as three of which one never comes agree in their log odds when penalized alike', () => {
    // With one score w per class and penalty p on each, the difference of two scores d costs p d² / 4 at best.
    const design = dense(TEMPERATURE.map((t) => [1, (t - 70) / 10]));
    const two = fitRidgeLogistic({ design, outcomes: DISTRESS, classes: 2, penalties: [1, 1] });
    const three = fitRidgeLogistic({
      design,
      outcomes: DISTRESS,
      classes: 3,
      penalties: [2, 2],
      offsets: thirdNever(23),
    });
    [0, 1].forEach((j) => {
      expect(three.coefficients[j * 3 + 1]! - three.coefficients[j * 3]!).toBeCloseTo(two.coefficients[j]!, 5);
    });
  });

  function thirdNever(observations: number): Float64Array {
    return Float64Array.from({ length: observations * 3 }, (_, k) => (k % 3 === 2 ? -700 : 0));
  }
});

describe('offsets', () => {
  it.each([2, 3])('%s classes: a fit offered as offset to itself leaves only what the penalty held back', (classes) => {
    const task = randomTask(11, classes);
    const first = fitRidgeLogistic({ ...task, penalties: new Float64Array(10).fill(1e-6), tolerance: 1e-9 });
    const offsets = scoresOf(first, task.design);
    const second = fitRidgeLogistic({ ...task, penalties: new Float64Array(10).fill(5), offsets });
    for (const w of second.coefficients) expect(Math.abs(w)).toBeLessThan(1e-3);
    const joint = probabilitiesOf(second, task.design, offsets);
    const alone = probabilitiesOf(first, task.design);
    joint.forEach((p, k) => {
      expect(p).toBeCloseTo(alone[k]!, 3);
    });
  });
});

describe('refuses', () => {
  const fine: LogisticTask = { design: dense([[1], [1]]), outcomes: [0, 1], classes: 2, penalties: [1] };
  it.each([
    ['a single class', { ...fine, classes: 1 }],
    ['a class out of range', { ...fine, outcomes: [0, 2] }],
    ['too few outcomes', { ...fine, outcomes: [0] }],
    ['a negative penalty', { ...fine, penalties: [-1] }],
    ['a penalty too many', { ...fine, penalties: [1, 1] }],
    ['offsets of the wrong length', { ...fine, offsets: new Float64Array(3) }],
    ['a negative weight', { ...fine, weights: [1, -1] }],
    ['an infinite value', { ...fine, design: dense([[1], [Number.POSITIVE_INFINITY]]) }],
    [
      'a dense design that does not fit',
      { ...fine, design: { kind: 'dense', features: 2, values: new Float64Array(3) } },
    ],
    ['a feature that does not exist', { ...fine, design: { kind: 'one-hot', features: 1, rows: [Uint32Array.of(1)] } }],
  ] as [string, LogisticTask][])('%s', (_what, task) => {
    expect(() => fitRidgeLogistic(task)).toThrow(StatsInputError);
  });
});
