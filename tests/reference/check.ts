/** One published figure: what goes in, what must come out. */
export interface Check {
  readonly id?: string;
  readonly method: string;
  readonly input: any;
  readonly expected: Readonly<Record<string, any>>;
  readonly tolerance: number;
  readonly source: string;
}

/** Turns the input of a check into figures under the names that its `expected` uses. */
export type Adapter = (input: any) => Record<string, any>;

/**
 * What is wrong with the figures a check got, one line per deviation; empty when it passes.
 *
 * A figure may differ by the larger of the tolerance and 1e-12, times the larger of 1 and its size. Null must be null.
 */
export function deviations(check: Check, got: Record<string, any>): string[] {
  const { expected, tolerance } = check;
  return Object.entries(expected).flatMap(([key, value]) => {
    const rule = PROPERTIES[key];
    if (rule) return rule(value, got, check);
    return differs(value, got[key], tolerance) ? [`${key}: expected ${show(value)}, got ${show(got[key])}`] : [];
  });
}

function differs(expected: unknown, got: unknown, tolerance: number): boolean {
  if (expected === null) return got !== null && got !== undefined;
  if (Array.isArray(expected))
    return (
      !Array.isArray(got) || got.length !== expected.length || expected.some((e, i) => differs(e, got[i], tolerance))
    );
  if (typeof expected !== 'number') return got !== expected;
  if (typeof got !== 'number' || Number.isNaN(got)) return true;
  return !(Math.abs(got - expected) <= Math.max(tolerance, 1e-12) * Math.max(1, Math.abs(expected)));
}

function show(value: unknown): string {
  return value === undefined ? 'nothing' : JSON.stringify(value);
}

type Property = (value: any, got: Record<string, any>, check: Check) => string[];

/** Keys of `expected` that state a property in place of a figure. */
const PROPERTIES: Record<string, Property> = {
  check: () => [],
  finite: (_value, got) => {
    const wrong = Object.entries(got).filter(([, x]) => typeof x === 'number' && !Number.isFinite(x));
    return wrong.map(([key, x]) => `${key}: expected a finite number, got ${x}`);
  },
  M_at_least: (least, { alpha, beta }) =>
    alpha + beta >= least ? [] : [`alpha + beta: expected at least ${least}, got ${alpha + beta}`],
  posterior_mean_max: (most, { alpha, beta }, { input }) => {
    if (!(alpha > 0 && beta > 0)) return [`shapes: expected above 0, got ${alpha} and ${beta}`];
    const means = input.x.map((x: number, i: number) => (x + alpha) / (input.n[i] + alpha + beta));
    const top = Math.max(...means);
    return top < most ? [] : [`posterior mean: expected below ${most}, got ${top}`];
  },
};
