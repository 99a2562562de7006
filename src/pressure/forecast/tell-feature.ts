import { type Film, numberAt, textAt } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { FIELD_ZONES, fieldZoneCodes } from '../snap/field-zone.ts';
import { GAME_STATES, gameStateCodes } from '../snap/game-state.ts';
import { LOOKS, lookCodes, RECEIVER_LOOKS, receiverCodes } from '../snap/look.ts';
import { NOT_KNOWN } from '../snap/not-known.ts';

/** What can be seen before a snap: of any snap, and of our own what came just before and whether we showed early. */
export type FeatureName =
  | 'down'
  | 'distance'
  | 'situation'
  | 'look'
  | 'receivers'
  | WordColumn
  | 'zone'
  | 'state'
  | 'score'
  | 'quarter'
  | 'after_big_play'
  | 'series'
  | 'shown_early';

type WordColumn = 'back_spot' | 'personnel' | 'formation' | 'hash' | 'motion' | 'tempo';

/** One thing seen before the snap: which, and the id or the charted word of what it was. */
export interface SeenValue {
  readonly feature: FeatureName;
  readonly value: string;
}

/** One thing that can be seen before the snap. */
export interface TellFeature {
  readonly name: FeatureName;
  /** The id or the charted word of a snap, such as `trips` or `2`; undefined where it was not charted. */
  readonly valueAt: (index: number) => string | undefined;
}

/** Everything a tell may be made of. */
export function tellFeatures(chart: Film, cuts: SituationCuts): readonly TellFeature[] {
  return [
    { name: 'down', valueAt: (i) => numberAt(chart, 'down', i)?.toString() },
    { name: 'distance', valueAt: (i) => distanceOf(numberAt(chart, 'to_go', i)) },
    coded('look', LOOKS, lookCodes(chart)),
    coded('receivers', RECEIVER_LOOKS, receiverCodes(chart)),
    worded(chart, 'back_spot'),
    worded(chart, 'personnel'),
    worded(chart, 'formation'),
    worded(chart, 'hash'),
    worded(chart, 'motion'),
    worded(chart, 'tempo'),
    coded('zone', FIELD_ZONES, fieldZoneCodes(chart, cuts)),
    coded('state', GAME_STATES, gameStateCodes(chart)),
    { name: 'score', valueAt: (i) => scoreOf(numberAt(chart, 'score_margin', i)) },
    { name: 'quarter', valueAt: (i) => quarterOf(numberAt(chart, 'quarter', i)) },
  ];
}

/** Whether a snap shows all of it. */
export function isSeen(features: readonly TellFeature[], row: number, seen: readonly SeenValue[]): boolean {
  return seen.every(({ feature, value }) => features.find(({ name }) => name === feature)?.valueAt(row) === value);
}

/** Distances for tells, finer at the long end than the situations; judgment. */
function distanceOf(toGo: number | undefined): string | undefined {
  if (toGo === undefined) return undefined;
  if (toGo <= 3) return 'up_to_3';
  if (toGo <= 6) return 'up_to_6';
  return toGo <= 10 ? 'up_to_10' : 'over_10';
}

/** One score is eight points; judgment. */
function scoreOf(margin: number | undefined): string | undefined {
  if (margin === undefined) return undefined;
  if (margin > 8) return 'ahead';
  return margin < -8 ? 'behind' : 'close';
}

function quarterOf(quarter: number | undefined): string | undefined {
  if (quarter === undefined) return undefined;
  return quarter > 4 ? 'overtime' : String(quarter);
}

function worded(chart: Film, column: WordColumn): TellFeature {
  return { name: column, valueAt: (i) => textAt(chart, column, i) };
}

function coded(name: FeatureName, list: readonly { readonly id: string }[], codes: Uint8Array): TellFeature {
  return { name, valueAt: (i) => (codes[i] === NOT_KNOWN ? undefined : list[codes[i] as number]?.id) };
}
