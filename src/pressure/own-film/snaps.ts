import { type Chart, numberAt, textAt } from '../../ingest/chart.ts';
import type { SituationCuts } from '../../ingest/week-settings.ts';
import { FIELD_ZONES, fieldZoneCodes } from '../snap/field-zone.ts';
import { SITUATIONS, situationCodes } from '../snap/situation.ts';

const DOWNS = [undefined, '1st down', '2nd down', '3rd down', '4th down'] as const;

/** One of our own snaps as a reader of our film sees it; undefined is "not charted". */
export interface OwnSnap {
  readonly index: number;
  readonly game: string;
  /** Such as "3rd down". */
  readonly down: string | undefined;
  readonly situation: string | undefined;
  readonly zone: string | undefined;
  readonly hash: string | undefined;
  readonly receivers: string | undefined;
  readonly backSpot: string | undefined;
  readonly personnel: string | undefined;
  readonly path: string | undefined;
  readonly coverage: string | undefined;
  readonly rotation: string | undefined;
  /** True when the family sends five or more; undefined when no family was charted. */
  readonly pressure: boolean | undefined;
}

/** Our snaps in the order of the sheet, with situation and zone worked out. */
export function ownSnaps(film: Chart, cuts: SituationCuts): OwnSnap[] {
  const situations = situationCodes(film, cuts);
  const zones = fieldZoneCodes(film, cuts);
  return Array.from({ length: film.size }, (_, index) => {
    const family = textAt(film, 'family', index);
    return {
      index,
      game: textAt(film, 'game', index) ?? 'not charted',
      down: DOWNS[numberAt(film, 'down', index) ?? 0],
      situation: SITUATIONS[situations[index] ?? -1]?.id,
      zone: FIELD_ZONES[zones[index] ?? -1]?.id,
      hash: textAt(film, 'hash', index),
      receivers: textAt(film, 'receivers', index),
      backSpot: textAt(film, 'back_spot', index),
      personnel: textAt(film, 'personnel', index),
      path: textAt(film, 'path', index),
      coverage: textAt(film, 'coverage', index),
      rotation: textAt(film, 'rotation', index),
      pressure: family === undefined ? undefined : family !== 'base',
    };
  });
}

/** Counts of the words that `wordOf` gives, most frequent first (ties by name); not charted snaps are left out. */
export function countWords<T>(items: readonly T[], wordOf: (item: T) => string | undefined): [string, number][] {
  const counts = new Map<string, number>();
  for (const item of items) {
    const word = wordOf(item);
    if (word !== undefined) counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
}
