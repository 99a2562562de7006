import { type ChartField, fieldsOf } from './chart-fields.ts';
import type { ChartState } from './chart-state.ts';

/** Names known for a field, in the order in which they came up, after the usual ones. */
export function namesAt({ snaps, kind, calls = [] }: ChartState, column: ChartField['column']): readonly string[] {
  const field = fieldsOf(kind).find((candidate) => candidate.column === column);
  const first = field?.entry.kind === 'name' ? field.entry.first : [];
  const used = new Set(column === 'call' ? calls : first);
  for (const snap of snaps) if (snap[column] !== undefined) used.add(snap[column]);
  return [...used];
}

/** A name that is known is written as it was, whatever its capitals: two spellings would be two formations. */
export function asBefore(state: ChartState, { column }: ChartField, name: string): string {
  return namesAt(state, column).find((known) => known.toLowerCase() === name.toLowerCase()) ?? name;
}
