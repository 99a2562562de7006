import { countWords, type OwnSnap } from './snaps.ts';

/** One path of our pressures on film: what mostly follows it, and where. */
export interface FilmPath {
  readonly path: string;
  readonly snaps: number;
  /** Coverages behind it, most frequent first. */
  readonly coverages: readonly (readonly [coverage: string, snaps: number])[];
  /** Snaps of its most frequent coverage by situation; "all" where none was charted. */
  readonly favouriteBySituation: readonly (readonly [situation: string, snaps: number])[];
}

/** The paths of our paired pressures, by falling number of snaps. */
export function filmPaths(pressures: readonly OwnSnap[]): FilmPath[] {
  return countWords(pressures, ({ path }) => path).map(([path, snaps]) => {
    const ofPath = pressures.filter((snap) => snap.path === path);
    const coverages = countWords(ofPath, ({ coverage }) => coverage);
    const favourite = ofPath.filter(({ coverage }) => coverage === coverages[0]?.[0]);
    return {
      path,
      snaps,
      coverages,
      favouriteBySituation: countWords(favourite, ({ situation }) => situation ?? 'all'),
    };
  });
}

/** The coverage that follows a path most often. */
export function favourite({ coverages }: FilmPath): string {
  return coverages[0]?.[0] ?? '';
}

/** On how many snaps it does. */
export function favouriteSnaps({ coverages }: FilmPath): number {
  return coverages[0]?.[1] ?? 0;
}
