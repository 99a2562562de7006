import { type Film, numberAt, textAt } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { FIELD_ZONES, fieldZoneCodes } from '../snap/field-zone.ts';
import { GAME_STATES, gameStateCodes } from '../snap/game-state.ts';
import { LOOKS, lookCodes, RECEIVER_LOOKS, receiverCodes } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';

/** One thing that can be seen before the snap, as words. */
export interface TellFeature {
  readonly name: string;
  /** The words for a snap, such as "trips" or "2nd down"; undefined where it was not charted. */
  readonly wordsAt: (index: number) => string | undefined;
}

/** Everything a tell may be made of. */
export function tellFeatures(chart: Film, cuts: SituationCuts): readonly TellFeature[] {
  return [
    { name: 'down', wordsAt: (i) => DOWNS[(numberAt(chart, 'down', i) ?? 0) - 1] },
    { name: 'distance', wordsAt: (i) => distanceWords(numberAt(chart, 'to_go', i)) },
    coded('look', LOOKS, lookCodes(chart)),
    coded('receivers', RECEIVER_LOOKS, receiverCodes(chart)),
    worded(chart, 'back_spot', 'back '),
    worded(chart, 'personnel', 'personnel '),
    worded(chart, 'formation', 'formation '),
    worded(chart, 'hash', 'hash '),
    worded(chart, 'motion', 'motion '),
    worded(chart, 'tempo', ''),
    coded('zone', FIELD_ZONES, fieldZoneCodes(chart, cuts)),
    coded('state', GAME_STATES, gameStateCodes(chart)),
    { name: 'score', wordsAt: (i) => scoreWords(numberAt(chart, 'score_margin', i)) },
    { name: 'quarter', wordsAt: (i) => quarterWords(numberAt(chart, 'quarter', i)) },
  ];
}

const DOWNS = ['1st down', '2nd down', '3rd down', '4th down'];

/** Distances for tells, finer at the long end than the situations; judgment. */
function distanceWords(toGo: number | undefined): string | undefined {
  if (toGo === undefined) return undefined;
  if (toGo <= 3) return '1 to 3 to go';
  if (toGo <= 6) return '4 to 6 to go';
  return toGo <= 10 ? '7 to 10 to go' : '11 or more to go';
}

/** One score is eight points; judgment. */
function scoreWords(margin: number | undefined): string | undefined {
  if (margin === undefined) return undefined;
  if (margin > 8) return 'ahead by more than a score';
  return margin < -8 ? 'behind by more than a score' : 'within a score';
}

function quarterWords(quarter: number | undefined): string | undefined {
  if (quarter === undefined) return undefined;
  return quarter > 4 ? 'overtime' : `quarter ${quarter}`;
}

type WordColumn = 'back_spot' | 'personnel' | 'formation' | 'hash' | 'motion' | 'tempo';

function worded(chart: Film, column: WordColumn, prefix: string): TellFeature {
  return {
    name: column,
    wordsAt: (i) => {
      const word = textAt(chart, column, i);
      return word === undefined ? undefined : `${prefix}${word.replaceAll('_', ' ')}`;
    },
  };
}

function coded(name: string, list: readonly { readonly label: string }[], codes: Uint8Array): TellFeature {
  return { name, wordsAt: (i) => (codes[i] === NOT_KNOWN ? undefined : list[codes[i] as number]?.label) };
}
