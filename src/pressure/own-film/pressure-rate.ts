import { share } from '../../stats/share.ts';
import type { PressureRate } from './result.ts';
import { countWords, type OwnSnap } from './snaps.ts';

/** What our pressure rate is split by, as far as it was charted. */
const SPLITS = [
  ['down', (snap: OwnSnap) => snap.down],
  ['situation', (snap: OwnSnap) => snap.situation],
  ['field zone', (snap: OwnSnap) => snap.zone],
  ['hash', (snap: OwnSnap) => snap.hash],
  ['receivers', (snap: OwnSnap) => snap.receivers],
  ['personnel', (snap: OwnSnap) => snap.personnel],
  ['back', (snap: OwnSnap) => snap.backSpot],
] as const;

/** How often we send five or more, by each split; snaps without a charted family are left out. */
export function pressureRates(snaps: readonly OwnSnap[]): PressureRate[] {
  const told = snaps.filter(({ pressure }) => pressure !== undefined);
  return SPLITS.flatMap(([by, wordOf]) =>
    countWords(told, wordOf).map(([value, trials]) => ({
      by,
      value,
      share: share(told.filter((snap) => wordOf(snap) === value && snap.pressure).length, trials),
    })),
  );
}
