import { SITUATIONS } from '../../game/situations.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import type { ForecastFilm } from './forecast-film.ts';

/** What the archive's mix of situations is worth in snaps; judgment: about one game. */
const ARCHIVE_WORTH = 60;

/**
 * Snaps of each situation to expect on Friday, in the order of the situations.
 *
 * @param film - the opponent's own mix of situations, moved a little toward the archive's
 * @param snaps - their snaps expected on Friday
 * @returns numbers that sum to `snaps`, or all 0 when no situation was charted
 */
export function nextSnaps(film: ForecastFilm, snaps: number): Float64Array {
  const own = situationCounts(film, 0, film.ownSize);
  const archive = situationCounts(film, film.ownSize, film.cells.size);
  const archiveTotal = archive.reduce((sum, count) => sum + count, 0);
  const mix = own.map((count, i) => {
    return count + (archiveTotal === 0 ? 0 : (ARCHIVE_WORTH * (archive[i] as number)) / archiveTotal);
  });
  const total = mix.reduce((sum, count) => sum + count, 0);
  return mix.map((count) => (total === 0 ? 0 : (snaps * count) / total));
}

function situationCounts({ cells, snapWeights }: ForecastFilm, from: number, to: number): Float64Array {
  const counts = new Float64Array(SITUATIONS.length);
  for (let row = from; row < to; row++) {
    const code = cells.situation[row] as number;
    if (code !== NOT_KNOWN) counts[code] = (counts[code] as number) + (snapWeights?.[row] ?? 1);
  }
  return counts;
}
