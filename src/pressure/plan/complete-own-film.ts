import type { Call, CallLibrary } from '../../game/call-library.ts';
import { type Film, filmFromRecords, joinFilms, type SnapRecord, textAt } from '../../game/film.ts';

/** A call name of our film that the library does not know, and on how many snaps it stands. */
export interface UnknownCall {
  readonly call: string;
  readonly snaps: number;
}

/** Our own film with what the call's name already says filled in, and the call names the library does not know. */
export interface CompletedFilm {
  readonly chart: Film;
  readonly unknownCalls: readonly UnknownCall[];
}

/**
 * Fills path, family, coverage and rotation of our own snaps from the call library where only the call was charted.
 * What was charted always stands.
 */
export function completeOwnFilm(ownFilm: Film, library: CallLibrary): CompletedFilm {
  const known = new Map(library.calls.map((call) => [key(call.name), call]));
  const records: SnapRecord[] = [];
  for (let i = 0; i < ownFilm.size; i++) {
    const name = textAt(ownFilm, 'call', i);
    records.push(sayingsAt(ownFilm, i, name === undefined ? undefined : known.get(key(name))));
  }
  const columns = { ...ownFilm.columns, ...filmFromRecords(records).columns };
  return { chart: { ...ownFilm, columns }, unknownCalls: unknownCalls(ownFilm, library) };
}

/** The call names of our own film that the library does not know, in the order of their first snap. */
export function unknownCalls(ownFilm: Film, library: CallLibrary): readonly UnknownCall[] {
  const known = new Set(library.calls.map(({ name }) => key(name)));
  const unknown = new Map<string, number>();
  for (let i = 0; i < ownFilm.size; i++) {
    const name = textAt(ownFilm, 'call', i);
    if (name !== undefined && !known.has(key(name))) unknown.set(name, (unknown.get(name) ?? 0) + 1);
  }
  return [...unknown].map(([call, snaps]) => ({ call, snaps }));
}

/** The charts of our own film as one, or null when there is none. */
export function joinOwnFilm(charts: readonly Film[]): Film | null {
  const played = charts.filter((chart) => chart.size > 0);
  return played.length === 0 ? null : joinFilms(played);
}

function key(name: string): string {
  return name.trim().toLowerCase();
}

/** What a call says of every snap it is called on. */
const SAYINGS = ['path', 'family', 'coverage', 'rotation'] as const;

function sayingsAt(ownFilm: Film, index: number, call: Call | undefined): SnapRecord {
  const record: Partial<Record<(typeof SAYINGS)[number], string>> = {};
  for (const name of SAYINGS) {
    const word = textAt(ownFilm, name, index) ?? call?.[name];
    if (word !== undefined) record[name] = word;
  }
  return record;
}
