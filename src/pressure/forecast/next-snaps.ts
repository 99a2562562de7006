import { NOT_KNOWN } from '../snap/not-known.ts';
import { SITUATIONS } from '../snap/situation.ts';
import type { ForecastFilm } from './forecast-film.ts';

/** What the archive's mix of situations is worth in snaps; judgement: about one game. */
const ARCHIVE_WORTH = 60;

/**
 * Snaps of each situation to expect on Friday, in the order of the situations.
 *
 * @param film - the opponent's own mix of situations, moved a little towards the archive's
 * @param snaps - their snaps expected on Friday
 * @returns numbers that sum to `snaps`, or all 0 when no situation was charted
 */
export function nextSnaps(film: ForecastFilm, snaps: number): Float64Array {
  const own = situationCounts(film.cells.situation.subarray(0, film.ownSize));
  const archive = situationCounts(film.cells.situation.subarray(film.ownSize));
  const archiveTotal = archive.reduce((sum, count) => sum + count, 0);
  const mix = own.map((count, i) => {
    return count + (archiveTotal === 0 ? 0 : (ARCHIVE_WORTH * (archive[i] as number)) / archiveTotal);
  });
  const total = mix.reduce((sum, count) => sum + count, 0);
  return mix.map((count) => (total === 0 ? 0 : (snaps * count) / total));
}

function situationCounts(codes: Uint8Array): Float64Array {
  const counts = new Float64Array(SITUATIONS.length);
  for (const code of codes) {
    if (code !== NOT_KNOWN) counts[code] = (counts[code] as number) + 1;
  }
  return counts;
}
