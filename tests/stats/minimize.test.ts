import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { minimize, type Objective } from '../../src/stats/minimize.ts';

/** Rosenbrock 1960: minimum 0 at (1, 1), at the end of a bent valley. */
const rosenbrock: Objective = (x, gradient) => {
  const [a, b] = [x[0]!, x[1]!];
  gradient[0] = -400 * a * (b - a * a) - 2 * (1 - a);
  gradient[1] = 200 * (b - a * a);
  return 100 * (b - a * a) ** 2 + (1 - a) ** 2;
};

describe('minimize', () => {
  it("finds the end of Rosenbrock's valley from his start (-1.2, 1)", () => {
    const got = minimize({ objective: rosenbrock, start: Float64Array.of(-1.2, 1) });
    expect(got.converged).toBe(true);
    expect(got.point[0]).toBeCloseTo(1, 7);
    expect(got.point[1]).toBeCloseTo(1, 7);
  });

  it('solves any well-posed quadratic, however uneven, when told its curvature', () => {
    const curvatures = fc.array(fc.double({ min: 1e-3, max: 1e5, noNaN: true }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(curvatures, fc.double({ min: -5, max: 5, noNaN: true }), (list, center) => {
        const curvature = Float64Array.from(list);
        const objective: Objective = (x, gradient) => {
          let value = 0;
          x.forEach((xi, i) => {
            gradient[i] = curvature[i]! * (xi - center);
            value += 0.5 * curvature[i]! * (xi - center) ** 2;
          });
          return value;
        };
        const got = minimize({ objective, start: new Float64Array(list.length), curvature });
        for (const x of got.point) expect(x).toBeCloseTo(center, 5);
      }),
    );
  });

  it('leaves its start alone and says when it ran out of steps', () => {
    const start = Float64Array.of(-1.2, 1);
    const got = minimize({ objective: rosenbrock, start, maxIterations: 3 });
    expect(got.converged).toBe(false);
    expect(got.iterations).toBe(3);
    expect([...start]).toEqual([-1.2, 1]);
  });

  it('refuses a start with no finite objective', () => {
    expect(() => minimize({ objective: () => Number.NaN, start: Float64Array.of(0) })).toThrow(StatsInputError);
  });
});
