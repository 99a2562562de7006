import type { Film } from '../../game/film.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';
import { wordClasses } from './word-classes.ts';

/** What the defense sees of the backfield at the line: no back, or how deep the quarterback stands. */
export const LOOKS = [
  { id: 'empty', label: 'empty' },
  { id: 'under_center', label: 'under center' },
  { id: 'pistol', label: 'pistol' },
  { id: 'shotgun', label: 'shotgun' },
] as const;
/** How the receivers stand: as many on each side, three or more on one, five out, or anything else. */
export const RECEIVER_LOOKS = [
  { id: 'balanced', label: 'balanced receivers' },
  { id: 'trips', label: 'trips' },
  { id: 'empty', label: 'five receivers out' },
  { id: 'other', label: 'other receivers' },
] as const;
/** The id of one of {@link RECEIVER_LOOKS}. */
export type ReceiverLookId = (typeof RECEIVER_LOOKS)[number]['id'];

/**
 * The look of every snap as an index into {@link LOOKS}. Empty is read from a back spot of `none` or by five receivers
 * out; where neither was charted the quarterback's depth alone decides. 255 where nothing tells it.
 */
export function lookCodes(chart: Film): Uint8Array {
  const hasNoBack = wordClasses(chart, 'back_spot', (spot) => spot === 'none');
  const isEmpty = wordClasses(chart, 'receivers', (receivers = '') => receiverLookOf(receivers) === 'empty');
  const depth = wordClasses(chart, 'quarterback_depth', depthCode);
  return codesBySnap(chart.size, (i) => (hasNoBack(i) || isEmpty(i) ? 0 : depth(i)));
}

/** The receivers' look of every snap as an index into {@link RECEIVER_LOOKS}; 255 where they were not charted. */
export function receiverCodes(chart: Film): Uint8Array {
  const index = new Map<ReceiverLookId, number>(RECEIVER_LOOKS.map(({ id }, i) => [id, i]));
  const look = wordClasses(chart, 'receivers', (receivers = '') => {
    const found = receiverLookOf(receivers);
    return found === undefined ? NOT_KNOWN : (index.get(found) ?? NOT_KNOWN);
  });
  return codesBySnap(chart.size, look);
}

/**
 * The receivers' look of a code such as `3x1`, or undefined when it is not a code.
 *
 * @param receivers - receivers to the strength, `x`, receivers away from it
 */
export function receiverLookOf(receivers: string): ReceiverLookId | undefined {
  const sides = /^(\d)x(\d)$/.exec(receivers);
  if (!sides) return undefined;
  const [strong, weak] = [Number(sides[1]), Number(sides[2])];
  if (strong + weak >= 5) return 'empty';
  if (Math.max(strong, weak) >= 3) return 'trips';
  return strong === weak ? 'balanced' : 'other';
}

function depthCode(depth: string | undefined): number {
  const code = LOOKS.findIndex(({ id }) => id === depth);
  return code === -1 ? NOT_KNOWN : code;
}
