/** What is impossible in a plan, by the path of the value: shares outside their bounds, counts above their trials. */
export function impossibleNumbers(value: unknown, path = 'plan'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  const inner = Object.entries(value).flatMap(([key, part]) => impossibleNumbers(part, `${path}.${key}`));
  return [...shareFaults(value, path), ...inner];
}

interface ShareLike {
  readonly count: number;
  readonly trials: number;
  readonly estimate?: number | null;
  readonly low: number;
  readonly high: number;
}

function isShare(value: object): value is ShareLike {
  return ['count', 'trials', 'low', 'high'].every((key) => typeof (value as Record<string, unknown>)[key] === 'number');
}

/** Room for the last digit. */
const SLACK = 1e-9;

/** A share says how many of how many, with an interval about the estimate, all within 0 and 1. */
function shareFaults(value: object, path: string): string[] {
  if (!isShare(value)) return [];
  const { count, trials, low, high } = value;
  return [
    ...(count >= 0 && count <= trials + SLACK ? [] : [`${path}: ${count} of ${trials}`]),
    ...(low >= -SLACK && low <= high && high <= 1 + SLACK ? [] : [`${path}: interval ${low} to ${high}`]),
    ...estimateFaults(value, path),
  ];
}

function estimateFaults({ estimate, trials, low, high }: ShareLike, path: string): string[] {
  if (estimate === null || estimate === undefined) return [];
  if (trials === 0) return [`${path}: an estimate from nothing`];
  return estimate >= low - SLACK && estimate <= high + SLACK ? [] : [`${path}: ${estimate} outside its interval`];
}
