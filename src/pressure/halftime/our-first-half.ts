import { countBy, groupBy } from '../../game/by-word.ts';
import type { CallLibrary } from '../../game/call-library.ts';
import { type Film, rowsOf, textAt } from '../../game/film.ts';
import { type Share, share } from '../../stats/share.ts';
import { completeOwnFilm } from '../plan/complete-own-film.ts';
import { isHeld, outcomeAt } from '../snap/outcome.ts';

/** One of our calls tonight: how often, and how often it held (loss, stop or takeaway) where the outcome was charted. */
export interface FirstHalfCall {
  readonly call: string;
  readonly snaps: number;
  readonly held: Share;
}

/** The coverages that followed one path tonight. */
export interface FirstHalfPath {
  readonly path: string;
  readonly snaps: number;
  readonly coverage: string;
  /** How often the commonest coverage followed. */
  readonly share: Share;
}

/** What we have shown tonight, as far as the call was charted. */
export interface OurFirstHalf {
  /** Snaps on which our call was charted, of all live snaps. */
  readonly charted: Share;
  /** Five or more sent, of the snaps with a known family. */
  readonly pressures: Share;
  readonly calls: readonly FirstHalfCall[];
  readonly paths: readonly FirstHalfPath[];
  /** Calls charted tonight that the library does not have. */
  readonly unknown: readonly string[];
}

/**
 * Our own tendency tonight, read from the calls charted beside their snaps. Path, coverage and family come from the
 * library; without one only the calls are counted.
 */
export function ourFirstHalf(live: Film, library: CallLibrary | null): OurFirstHalf {
  const completed = library ? completeOwnFilm(live, library) : { chart: live, unknownCalls: [] };
  const { chart } = completed;
  const families = rowsOf(chart).flatMap((i) => textAt(chart, 'family', i) ?? []);
  const calls = groupBy(rowsOf(chart), (row) => textAt(chart, 'call', row));
  return {
    charted: share(
      [...calls.values()].reduce((sum, list) => sum + list.length, 0),
      chart.size,
    ),
    pressures: share(families.filter((family) => family !== 'base').length, families.length),
    calls: [...calls].map(([call, snaps]) => firstHalfCall(chart, call, snaps)).sort((a, b) => b.snaps - a.snaps),
    paths: [...groupBy(rowsOf(chart), (row) => textAt(chart, 'path', row))].flatMap(([path, snaps]) =>
      firstHalfPath(chart, path, snaps),
    ),
    unknown: completed.unknownCalls.map(({ call }) => call),
  };
}

function firstHalfCall(chart: Film, call: string, snaps: readonly number[]): FirstHalfCall {
  const outcomes = snaps.flatMap((i) => outcomeAt(chart, i) ?? []);
  const held = outcomes.filter(isHeld);
  return { call, snaps: snaps.length, held: share(held.length, outcomes.length) };
}

function firstHalfPath(chart: Film, path: string, snaps: readonly number[]): FirstHalfPath[] {
  const counts = countBy(snaps, (row) => textAt(chart, 'coverage', row));
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  if (!most) return [];
  const known = [...counts.values()].reduce((sum, count) => sum + count, 0);
  return [{ path, snaps: snaps.length, coverage: most[0], share: share(most[1], known) }];
}
