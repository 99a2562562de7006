/** What a cell says: a value (with a remark when it had to be cleaned), nothing (not charted), or a fault. */
export type CellReading =
  | { readonly kind: 'value'; readonly value: string | number; readonly remark?: string }
  | { readonly kind: 'blank' }
  | { readonly kind: 'fault'; readonly rule: string; readonly suggestion?: string };

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
