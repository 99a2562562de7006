import { StatsInputError } from './errors.ts';

/** A smooth function: returns its value at `point` and writes its slope there into `gradient`. */
export type Objective = (point: Float64Array, gradient: Float64Array) => number;

/** What to minimize and how hard to try. */
export interface Minimization {
  readonly objective: Objective;
  /** Where to begin; left untouched. The objective must be finite there. */
  readonly start: Float64Array;
  /** Rough second derivatives along each coordinate, above 0: the search thinks in units of their roots. */
  readonly curvature?: Float64Array | undefined;
  /** The search ends when no slope exceeds this times the larger of 1 and the objective's size; 1e-9 when absent. */
  readonly tolerance?: number | undefined;
  /** 1000 when absent. */
  readonly maxIterations?: number | undefined;
}

/** Where a minimization ended. */
export interface Minimum {
  readonly point: Float64Array;
  readonly value: number;
  readonly iterations: number;
  /** Whether the slope tolerance was met. */
  readonly converged: boolean;
}

/**
 * A local minimum of a smooth function, by limited-memory quasi-Newton steps with a backtracking line search.
 *
 * @throws StatsInputError when the objective is not finite at the start
 * @see Nocedal 1980, Mathematics of Computation 35:773; Nocedal and Wright 2006, algorithms 7.4 and 3.1
 */
export function minimize(task: Minimization): Minimum {
  const { objective, start, tolerance = 1e-9, maxIterations = 1000 } = task;
  let here = evaluated(objective, start.slice());
  if (!Number.isFinite(here.value)) throw new StatsInputError('minimize requires a start with a finite objective');
  const memory: Memory = { steps: [], curvature: task.curvature };
  let iterations = 0;
  while (!flat(here, tolerance) && iterations < maxIterations) {
    const next = lineSearch(objective, here, direction(memory, here.gradient));
    if (next === null) break;
    remember(memory, here, next);
    here = next;
    iterations += 1;
  }
  return { point: here.point, value: here.value, iterations, converged: flat(here, tolerance) };
}

interface Place {
  readonly point: Float64Array;
  readonly value: number;
  readonly gradient: Float64Array;
}

function evaluated(objective: Objective, point: Float64Array): Place {
  const gradient = new Float64Array(point.length);
  const value = objective(point, gradient);
  return { point, value, gradient };
}

function flat({ value, gradient }: Place, tolerance: number): boolean {
  return gradient.every((slope) => Math.abs(slope) <= tolerance * Math.max(1, Math.abs(value)));
}

/** The last moves with the change of slope they met, newest last. */
interface Memory {
  readonly steps: { readonly move: Float64Array; readonly bend: Float64Array; readonly weight: number }[];
  readonly curvature: Float64Array | undefined;
}

const MEMORY = 12; // judgment, within the 3 to 20 that Nocedal and Wright recommend

/** Two-loop recursion: the approximate Newton direction, pointing downhill. */
function direction({ steps, curvature }: Memory, gradient: Float64Array): Float64Array {
  const result = gradient.map((slope) => -slope);
  const weights = steps.map(() => 0);
  for (let k = steps.length - 1; k >= 0; k -= 1) {
    const { move, bend, weight } = steps[k] as Memory['steps'][number];
    weights[k] = weight * dot(move, result);
    addTo(result, -(weights[k] as number), bend);
  }
  const scale = firstScale(steps.at(-1), curvature);
  for (let i = 0; i < result.length; i += 1) result[i] = (scale * (result[i] as number)) / (curvature?.[i] ?? 1);
  steps.forEach(({ move, bend, weight }, k) => {
    addTo(result, (weights[k] as number) - weight * dot(bend, result), move);
  });
  return result;
}

/** Makes the starting guess of the inverse curvature fit what the last step met. */
function firstScale(last: Memory['steps'][number] | undefined, curvature: Float64Array | undefined): number {
  if (last === undefined) return 1;
  const scaled = last.bend.map((value, i) => value / (curvature?.[i] ?? 1));
  return 1 / (last.weight * dot(scaled, last.bend));
}

const SUFFICIENT = 1e-4; // Nocedal and Wright: decrease asked for, as a part of what the slope promises
const ROUNDING = 1e-12; // part of the objective within which two values may differ by rounding alone
const MOST_HALVINGS = 40;

function lineSearch(objective: Objective, here: Place, heading: Float64Array): Place | null {
  const slope = dot(heading, here.gradient);
  if (!(slope < 0)) return null;
  let length = Math.min(1, longestStep(heading));
  for (let halving = 0; halving < MOST_HALVINGS; halving += 1) {
    const point = here.point.map((x, i) => x + length * (heading[i] as number));
    const next = evaluated(objective, point);
    if (next.value <= here.value + SUFFICIENT * length * slope) return next;
    if (levelled(here, next, dot(heading, next.gradient) / slope)) return next;
    length /= 2;
  }
  return null;
}

/**
 * Near the minimum rounding hides the decrease, while the slope along the step still tells: enough of it must be gone
 * and not much come back.
 *
 * @see Hager and Zhang 2005, SIAM Journal on Optimization 16:170, approximate Wolfe conditions
 */
function levelled(here: Place, next: Place, slopeLeft: number): boolean {
  return next.value <= here.value + ROUNDING * Math.abs(here.value) && slopeLeft <= 0.9 && slopeLeft >= -0.8;
}

/** No coordinate moves by more than this at once: parameters are logits and logarithms, where 20 is already extreme. */
const LONGEST_MOVE = 20;

function longestStep(heading: Float64Array): number {
  const most = heading.reduce((size, x) => Math.max(size, Math.abs(x)), 0);
  return LONGEST_MOVE / most;
}

function remember({ steps }: Memory, from: Place, to: Place): void {
  const move = to.point.map((x, i) => x - (from.point[i] as number));
  const bend = to.gradient.map((g, i) => g - (from.gradient[i] as number));
  const product = dot(move, bend);
  // A step along which the slope did not rise says nothing of use about the curvature.
  if (!(product > LEAST_BEND * dot(bend, bend))) return;
  steps.push({ move, bend, weight: 1 / product });
  if (steps.length > MEMORY) steps.shift();
}

const LEAST_BEND = 1e-20; // judgment: the product of two rounding errors

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function addTo(target: Float64Array, factor: number, source: Float64Array): void {
  for (let i = 0; i < target.length; i += 1) target[i] = (target[i] as number) + factor * (source[i] as number);
}
