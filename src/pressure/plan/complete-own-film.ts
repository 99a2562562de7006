import type { Call, CallLibrary } from '../../ingest/call-library.ts';
import { type Chart, chartFromRecords, joinCharts, numberAt, type SnapRecord, textAt } from '../../ingest/chart.ts';
import { CHART_COLUMNS, type ColumnName } from '../../ingest/columns.ts';

/** Our own film with what the call's name already says filled in, and the call names the library does not know. */
export interface CompletedFilm {
  readonly chart: Chart;
  readonly unknownCalls: readonly { readonly call: string; readonly snaps: number }[];
}

/**
 * Fills path, family, coverage and rotation of our own snaps from the call library where only the call was charted.
 * What was charted always stands.
 */
export function completeOwnFilm(ownFilm: Chart, library: CallLibrary): CompletedFilm {
  const known = new Map(library.calls.map((call) => [key(call.name), call]));
  const unknown = new Map<string, number>();
  const records: SnapRecord[] = [];
  for (let i = 0; i < ownFilm.size; i++) {
    const name = textAt(ownFilm, 'call', i);
    const call = name === undefined ? undefined : known.get(key(name));
    if (name !== undefined && !call) unknown.set(name, (unknown.get(name) ?? 0) + 1);
    records.push({ ...(call ? sayings(call) : {}), ...recordAt(ownFilm, i) });
  }
  const filled = chartFromRecords(records);
  const chart = { ...filled, sources: ownFilm.sources, sourceOf: ownFilm.sourceOf, rowOf: ownFilm.rowOf };
  return { chart, unknownCalls: [...unknown].map(([call, snaps]) => ({ call, snaps })) };
}

/** The charts of our own film as one, or null when there is none. */
export function joinOwnFilm(charts: readonly Chart[]): Chart | null {
  const played = charts.filter((chart) => chart.size > 0);
  return played.length === 0 ? null : joinCharts(played);
}

function key(name: string): string {
  return name.trim().toLowerCase();
}

function sayings(call: Call): SnapRecord {
  return { path: call.path, family: call.family, coverage: call.coverage, rotation: call.rotation };
}

function recordAt(chart: Chart, index: number): SnapRecord {
  const record: Partial<Record<ColumnName, string | number>> = {};
  for (const { name, kind } of CHART_COLUMNS) {
    const value = kind === 'number' ? numberAt(chart, name, index) : textAt(chart, name, index);
    if (value !== undefined) record[name] = value;
  }
  return record;
}
