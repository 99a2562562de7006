import { benjaminiHochberg } from '../../stats/adjust.ts';
import { share } from '../../stats/share.ts';
import { stratifiedAssociation } from '../../stats/stratified-association.ts';
import type { EarlyShow } from './result.ts';
import { codesOf, countWords, type OwnSnap } from './snaps.ts';

const SPLITS = [
  { by: 'path', wordOf: ({ path }: OwnSnap) => path },
  { by: 'family', wordOf: ({ family }: OwnSnap) => family },
] as const satisfies readonly { by: EarlyShow['by']; wordOf: (snap: OwnSnap) => string | undefined }[];

/** Which of our paths and families we show early more often than others, tested by shuffling and corrected. */
export function earlyShows(snaps: readonly OwnSnap[], seed: number): EarlyShow[] {
  const charted = snaps.filter(({ shownEarly }) => shownEarly !== undefined);
  const words = SPLITS.map(({ wordOf }) => charted.map(wordOf));
  const found = stratifiedAssociation({
    outcome: charted.map(({ shownEarly }) => Number(shownEarly)),
    strata: charted.map(() => 0),
    groupings: words.map((list) => codesOf(list, -1).codes),
    seed: `shown early ${seed}`,
  });
  const adjusted = benjaminiHochberg(found.map(({ p }) => p));
  return SPLITS.map(({ by, wordOf }, i) => ({
    by,
    adjusted: charted.length === 0 ? null : (adjusted[i] ?? null),
    values: countWords(charted, wordOf).map(([value, trials]) => ({
      value,
      share: share(charted.filter((snap) => wordOf(snap) === value && snap.shownEarly).length, trials),
    })),
  }));
}
