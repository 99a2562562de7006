import { benjaminiHochberg } from '../../stats/adjust.ts';
import { binomialTwoSided } from '../../stats/binomial.ts';
import { share } from '../../stats/share.ts';
import type { OwnFilmChapter } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** What an opponent sees before the snap. */
const SEEN = [
  ['zone', (snap: OwnSnap) => snap.zone],
  ['hash', (snap: OwnSnap) => snap.hash],
  ['receivers', (snap: OwnSnap) => snap.receivers],
  ['personnel', (snap: OwnSnap) => snap.personnel],
  ['back', (snap: OwnSnap) => snap.backSpot],
] as const;

/** Cells with fewer snaps are not looked at; decided without looking at the outcome. As for the opponent's tells. */
const FEWEST = 8;

/** Share of false tells allowed among those shown. Common practice, no source. */
const DISCOVERY_RATE = 0.1;

/**
 * Looks that draw more or fewer pressures from us than our own rates by situation expect, corrected over all looked at
 * (Benjamini-Hochberg). What the situation alone explains is not a tell.
 */
export function ownTells(snaps: readonly OwnSnap[]): OwnFilmChapter['tells'] {
  const told = snaps.filter(({ pressure, situation }) => pressure !== undefined && situation !== undefined);
  const rate = situationRates(told);
  const looked = SEEN.flatMap(([name, wordOf]) =>
    countWords(told, wordOf)
      .filter(([, trials]) => trials >= FEWEST)
      .map(([value]) =>
        cellOf(
          `${name} ${value.replaceAll('_', ' ')}`,
          told.filter((snap) => wordOf(snap) === value),
          rate,
        ),
      ),
  );
  const adjusted = benjaminiHochberg(looked.map(({ p }) => p));
  return looked
    .map(({ description, follows, share }, i) => ({ description, follows, share, adjusted: adjusted[i] ?? 1 }))
    .filter((tell) => tell.adjusted <= DISCOVERY_RATE)
    .sort((a, b) => a.adjusted - b.adjusted);
}

function situationRates(told: readonly OwnSnap[]): ReadonlyMap<string | undefined, number> {
  const all = told.filter(({ pressure }) => pressure).length;
  const base = (all + 0.5) / (told.length + 1);
  return new Map(
    countWords(told, ({ situation }) => situation).map(([situation, trials]) => {
      const sent = told.filter((snap) => snap.situation === situation && snap.pressure).length;
      return [situation, (sent + 2 * base) / (trials + 2)];
    }),
  );
}

function cellOf(description: string, cell: readonly OwnSnap[], rate: ReadonlyMap<string | undefined, number>) {
  const sent = cell.filter(({ pressure }) => pressure).length;
  const expected = cell.reduce((sum, snap) => sum + (rate.get(snap.situation) ?? 0.5), 0) / cell.length;
  const more = sent / cell.length >= expected;
  return {
    description,
    follows: more ? 'pressure' : 'four-man base',
    share: share(more ? sent : cell.length - sent, cell.length),
    p: binomialTwoSided(sent, cell.length, expected),
  };
}
