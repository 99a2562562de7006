import { countWords, type OwnSnap } from './snaps.ts';

/** One path of our pressures on film: what mostly follows it, and where. */
export interface FilmPath {
  readonly path: string;
  readonly snaps: number;
  /** Coverages behind it, most frequent first. */
  readonly coverages: readonly { readonly coverage: string; readonly snaps: number }[];
  /** Snaps of its most frequent coverage by situation; "all" where none was charted. */
  readonly favoriteBySituation: readonly { readonly situation: string; readonly snaps: number }[];
}

/** The paths of our paired pressures, by falling number of snaps. */
export function filmPaths(pressures: readonly OwnSnap[]): FilmPath[] {
  return countWords(pressures, ({ path }) => path).map(([path, snaps]) => {
    const ofPath = pressures.filter((snap) => snap.path === path);
    const coverages = countWords(ofPath, (snap) => snap.coverage).map(([coverage, times]) => ({
      coverage,
      snaps: times,
    }));
    const favorite = ofPath.filter(({ coverage }) => coverage === coverages[0]?.coverage);
    return {
      path,
      snaps,
      coverages,
      favoriteBySituation: countWords(favorite, (snap) => snap.situation ?? 'all').map(([situation, times]) => ({
        situation,
        snaps: times,
      })),
    };
  });
}

/** The coverage that follows a path most often. */
export function favorite({ coverages }: FilmPath): string {
  return coverages[0]?.coverage ?? '';
}

/** On how many snaps it does. */
export function favoriteSnaps({ coverages }: FilmPath): number {
  return coverages[0]?.snaps ?? 0;
}
