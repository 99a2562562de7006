import { type Film, numberAt } from '../../game/film.ts';
import { COVERAGES_FACED } from '../../game/vocabulary.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';
import { wordClasses } from './word-classes.ts';

/** Rushers the charted defense sent, in groups a coach speaks of. */
export const RUSH_GROUPS = ['three_or_fewer', 'four', 'five', 'six_or_more'] as const;
/** One word of {@link RUSH_GROUPS}. */
export type RushGroup = (typeof RUSH_GROUPS)[number];

/**
 * The group of a number of rushers. Nobody rushes none or one: such a count says that they were not counted.
 *
 * @param rushers - whole number
 * @returns undefined under two
 */
export function rushGroupOf(rushers: number): RushGroup | undefined {
  if (rushers < 2) return undefined;
  if (rushers <= 3) return 'three_or_fewer';
  if (rushers === 4) return 'four';
  return rushers === 5 ? 'five' : 'six_or_more';
}

/** The rush of every snap as an index into the groups; 255 where it was not charted. */
export function rushGroupCodes(chart: Film): Uint8Array {
  return codesBySnap(chart.size, (i) => {
    const rushers = numberAt(chart, 'rushers_faced', i);
    const group = rushers === undefined ? undefined : rushGroupOf(rushers);
    return group === undefined ? NOT_KNOWN : RUSH_GROUPS.indexOf(group);
  });
}

/** The coverage of every snap as an index into the vocabulary's coverages; 255 where it was not charted. */
export function coverageCodes(chart: Film): Uint8Array {
  const at = wordClasses(chart, 'coverage_faced', (word = '') => {
    const code = (COVERAGES_FACED as readonly string[]).indexOf(word);
    return code === -1 ? NOT_KNOWN : code;
  });
  return codesBySnap(chart.size, at);
}
