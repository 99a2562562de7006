import { share } from '../../stats/share.ts';
import type { OwnFilmChapter } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** Which coverage followed each path of our pressures, with Wilson intervals; paths by falling number of snaps. */
export function pairingsOf(snaps: readonly OwnSnap[]): OwnFilmChapter['pairings'] {
  const told = snaps.filter(
    (snap) => snap.pressure !== false && snap.path !== undefined && snap.coverage !== undefined,
  );
  return countWords(told, ({ path }) => path).map(([path, count]) => ({
    path,
    snaps: count,
    coverages: countWords(
      told.filter((snap) => snap.path === path),
      ({ coverage }) => coverage,
    ).map(([coverage, times]) => ({ coverage, share: share(times, count) })),
  }));
}
