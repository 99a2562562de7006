import { benjaminiHochberg } from '../../stats/adjust.ts';
import { share } from '../../stats/share.ts';
import { doubtTaken, pairingTable } from './predictability.ts';
import type { CoverageClue, OwnFilmChapter } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** Which coverage followed each path of our pressures, with Wilson intervals; paths by falling number of snaps. */
export function pairingsOf(snaps: readonly OwnSnap[]): OwnFilmChapter['pairings'] {
  const charted = snaps.filter(({ pressure }) => pressure !== false);
  return coveragesBy(charted, ({ path }) => path).map(({ value, ...rest }) => ({ path: value, ...rest }));
}

/** What a reader may see besides the path, when the pressure comes. */
const CLUES = [
  { by: 'rotation', wordOf: (snap: OwnSnap) => snap.rotation },
  { by: 'family', wordOf: (snap: OwnSnap) => snap.family },
  { by: 'side', wordOf: (snap: OwnSnap) => snap.side },
] as const satisfies readonly { by: CoverageClue['by']; wordOf: (snap: OwnSnap) => string | undefined }[];

/** Shuffles for each clue; the path has a test of its own with more. Judgment: p to the second digit. */
const SHUFFLES = 999;

/**
 * Which coverage followed each turn, family and side of our pressures, and how much of the doubt about the coverage each
 * takes away against shuffled logs, corrected over the three.
 */
export function coverageClues(snaps: readonly OwnSnap[], seed: number): CoverageClue[] {
  const pressures = snaps.filter(({ pressure, coverage }) => pressure && coverage !== undefined);
  const clues = CLUES.map(({ by, wordOf }) => {
    const charted = pressures.filter((snap) => wordOf(snap) !== undefined);
    const taken = doubtTaken(pairingTable(charted, wordOf), { permutations: SHUFFLES, seed: `${by} ${seed}` });
    return { by, snaps: charted.length, values: coveragesBy(charted, wordOf), ...taken };
  });
  const tested = clues.filter(({ p }) => p !== null);
  const adjusted = benjaminiHochberg(tested.map(({ p }) => p ?? 1));
  return clues.map((clue) => ({ ...clue, adjusted: adjusted[tested.indexOf(clue)] ?? null }));
}

function coveragesBy(snaps: readonly OwnSnap[], wordOf: (snap: OwnSnap) => string | undefined) {
  const charted = snaps.filter((snap) => snap.coverage !== undefined && wordOf(snap) !== undefined);
  return countWords(charted, wordOf).map(([value, count]) => ({
    value,
    snaps: count,
    coverages: countWords(
      charted.filter((snap) => wordOf(snap) === value),
      ({ coverage }) => coverage,
    ).map(([coverage, times]) => ({ coverage, share: share(times, count) })),
  }));
}
