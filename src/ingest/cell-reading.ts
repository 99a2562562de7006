/**
 * What a cell says: a value (with a remark when it had to be cleaned), nothing (not charted; with a remark when something
 * stands there that cannot be read), or a fault. `goal` marks a distance of goal to go, which the yard line tells.
 */
export type CellReading =
  | { readonly kind: 'value'; readonly value: string | number; readonly remark?: string }
  | { readonly kind: 'blank'; readonly remark?: string; readonly suggestion?: string }
  | { readonly kind: 'fault'; readonly rule: string; readonly suggestion?: string; readonly goal?: true };

/** The reading of a cell that was not charted. */
export const BLANK: CellReading = { kind: 'blank' };

/** The reading of a cell that holds `value`. */
export function valueReading(value: string | number): CellReading {
  return { kind: 'value', value };
}

/** The reading of a cell that breaks `rule`; a suggestion that is undefined is left out. */
export function faultReading(rule: string, suggestion?: string): CellReading {
  return suggestion === undefined ? { kind: 'fault', rule } : { kind: 'fault', rule, suggestion };
}
