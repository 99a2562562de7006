import { DECISION_ADAPTERS } from './adapters/decisions.ts';
import { PROPORTION_ADAPTERS } from './adapters/proportions.ts';
import { SEQUENCE_ADAPTERS } from './adapters/sequences.ts';
import { TABLE_ADAPTERS } from './adapters/tables.ts';
import { type Adapter, type Check, deviations } from './check.ts';

const ADAPTERS: Readonly<Record<string, Adapter>> = {
  ...PROPORTION_ADAPTERS,
  ...TABLE_ADAPTERS,
  ...SEQUENCE_ADAPTERS,
  ...DECISION_ADAPTERS,
};

/** What became of one check. */
export type Outcome =
  | { readonly kind: 'passed' }
  | { readonly kind: 'failed'; readonly deviations: readonly string[] }
  | { readonly kind: 'no-adapter' };

/** Runs a check through the adapter of its method. An error thrown on the way is a failure. */
export function runCheck(check: Check): Outcome {
  if (!Object.hasOwn(ADAPTERS, check.method)) return { kind: 'no-adapter' };
  const found = attempt(check, ADAPTERS[check.method] as Adapter);
  return found.length === 0 ? { kind: 'passed' } : { kind: 'failed', deviations: found };
}

function attempt(check: Check, adapter: Adapter): string[] {
  try {
    return deviations(check, adapter(check.input));
  } catch (error) {
    return [`threw ${error}`];
  }
}
