import type { RowProblem } from './row-problem.ts';

/** A YAML file read against its schema: the value, or everything that is wrong with it. */
export type YamlReading<Value> =
  | { readonly kind: 'value'; readonly value: Value }
  | { readonly kind: 'problems'; readonly problems: readonly RowProblem[] };
