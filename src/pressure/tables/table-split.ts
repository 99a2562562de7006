import { type Film, numberAt, textAt } from '../../game/film.ts';
import { HASHES, type Hash } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type AskedOfBoth, askBoth, askWords, type BothFilms } from '../others/asked-of-both.ts';
import { codesBySnap } from '../snap/codes-by-snap.ts';
import { fieldSideOf } from '../snap/field-side.ts';
import { fieldZoneOf } from '../snap/field-zone.ts';
import { LOOKS, lookCodes, RECEIVER_LOOKS, receiverCodes } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';
import { wordClasses } from '../snap/word-classes.ts';
import { STRENGTH_SIDES, TABLE_ZONES, type TableSplit } from './tables-result.ts';

/** The values of a split as codes of both charts. */
export function askSplit(both: BothFilms, by: TableSplit, cuts: SituationCuts): AskedOfBoth {
  switch (by) {
    case 'formation':
    case 'personnel':
      return askWords(both, by);
    case 'receivers':
      return askBoth(both, idsOf(RECEIVER_LOOKS), receiverCodes);
    case 'look':
      return askBoth(both, idsOf(LOOKS), lookCodes);
    case 'field_zone':
      return askZones(both, cuts);
    case 'hash':
      return askBoth(both, HASHES, hashCodes);
    case 'strength_side':
      return askBoth(both, STRENGTH_SIDES, strengthSideCodes);
    default:
      return by satisfies never;
  }
}

/** The four zones of the table in both charts. */
export function askZones(both: BothFilms, cuts: SituationCuts): AskedOfBoth {
  return askBoth(both, TABLE_ZONES, (chart) => tableZoneCodes(chart, cuts));
}

/**
 * The zone of every snap as an index into the table's four: between their own goal line and the red zone all is open
 * field. 255 where the ball position was not charted.
 */
export function tableZoneCodes(chart: Film, cuts: SituationCuts): Uint8Array {
  return codesBySnap(chart.size, (i) => {
    const yards = numberAt(chart, 'ball_on', i);
    if (yards === undefined) return NOT_KNOWN;
    const zone = (TABLE_ZONES as readonly string[]).indexOf(fieldZoneOf(yards, cuts));
    return zone === -1 ? TABLE_ZONES.indexOf('open_field') : zone;
  });
}

function hashCodes(chart: Film): Uint8Array {
  const at = wordClasses(chart, 'hash', (word) => (word === undefined ? NOT_KNOWN : HASHES.indexOf(word as Hash)));
  return codesBySnap(chart.size, at);
}

/** Where the strength is set; 255 where hash or strength was not charted, and where there is no strength. */
function strengthSideCodes(chart: Film): Uint8Array {
  return codesBySnap(chart.size, (i) => {
    const [hash, strength] = [textAt(chart, 'hash', i), textAt(chart, 'strength', i)];
    if (hash === undefined || strength === undefined || strength === 'none') return NOT_KNOWN;
    const wide = fieldSideOf(hash as Hash);
    if (wide === 'none') return STRENGTH_SIDES.indexOf('ball_in_middle');
    return STRENGTH_SIDES.indexOf(strength === wide ? 'to_field' : 'to_boundary');
  });
}

function idsOf(list: readonly { readonly id: string }[]): readonly string[] {
  return list.map(({ id }) => id);
}
