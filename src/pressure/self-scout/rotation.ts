import { share } from '../../stats/share.ts';
import type { OwnFilmChapter } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** Which way the shell turned behind each path of our pressures. */
export function rotationsOf(snaps: readonly OwnSnap[]): OwnFilmChapter['rotation'] {
  const charted = snaps.filter(
    ({ pressure, path, rotation }) => pressure && path !== undefined && rotation !== undefined,
  );
  return countWords(charted, ({ path }) => path).flatMap(([path, trials]) =>
    countWords(
      charted.filter((snap) => snap.path === path),
      ({ rotation }) => rotation,
    ).map(([rotation, count]) => ({ path, rotation, share: share(count, trials) })),
  );
}
