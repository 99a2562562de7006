import { countBy } from '../../game/by-word.ts';
import type { Call, CallLibrary } from '../../game/call-library.ts';
import { type Film, filmFromRecords, joinFilms, rowsOf, type SnapRecord, textAt } from '../../game/film.ts';
import { freeWordKey } from '../../game/free-word.ts';
import { inOrderOfPlay } from '../snap/game-order.ts';

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
 * What was charted always stands, in the library's spelling where it differs only in case or spaces.
 */
export function completeOwnFilm(ownFilm: Film, library: CallLibrary): CompletedFilm {
  const known = new Map(library.calls.map((call) => [freeWordKey(call.name), call]));
  const spelled = librarySpellings(library);
  const records: SnapRecord[] = [];
  for (let i = 0; i < ownFilm.size; i++) {
    const name = textAt(ownFilm, 'call', i);
    const call = name === undefined ? undefined : known.get(freeWordKey(name));
    records.push(spelled(sayingsAt(ownFilm, i, call)));
  }
  const columns = { ...ownFilm.columns, ...filmFromRecords(records).columns };
  return { chart: { ...ownFilm, columns }, unknownCalls: unknownCalls(ownFilm, library) };
}

/** The call names of our own film that the library does not know, in the order of their first snap. */
export function unknownCalls(ownFilm: Film, library: CallLibrary): readonly UnknownCall[] {
  const known = new Set(library.calls.map(({ name }) => freeWordKey(name)));
  const named = countBy(rowsOf(ownFilm), (row) => textAt(ownFilm, 'call', row));
  return [...named].filter(([call]) => !known.has(freeWordKey(call))).map(([call, snaps]) => ({ call, snaps }));
}

/** The charts of our own film as one, in order of play, or null when there is none. */
export function joinOwnFilm(charts: readonly Film[]): Film | null {
  const played = charts.filter((chart) => chart.size > 0);
  return played.length === 0 ? null : inOrderOfPlay(joinFilms(played));
}

/** What a call says of every snap it is called on. */
const SAYINGS = ['path', 'family', 'coverage', 'rotation'] as const;

/** Writes path and coverage as the library does. */
function librarySpellings({ calls }: CallLibrary): (record: SnapRecord) => SnapRecord {
  const spelling = (name: 'path' | 'coverage') => new Map(calls.map((call) => [freeWordKey(call[name]), call[name]]));
  const spellings = { path: spelling('path'), coverage: spelling('coverage') };
  const written = (name: 'path' | 'coverage', { [name]: word }: SnapRecord) => {
    if (typeof word !== 'string') return {};
    return { [name]: spellings[name].get(freeWordKey(word)) ?? word };
  };
  return (record) => ({ ...record, ...written('path', record), ...written('coverage', record) });
}

function sayingsAt(ownFilm: Film, index: number, call: Call | undefined): SnapRecord {
  const record: Partial<Record<(typeof SAYINGS)[number], string>> = {};
  for (const name of SAYINGS) {
    const word = textAt(ownFilm, name, index) ?? call?.[name];
    if (word !== undefined) record[name] = word;
  }
  return record;
}
