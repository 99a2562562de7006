import type { Call } from '../../game/call-library.ts';
import type { Hash } from '../../game/vocabulary.ts';
import { fieldSideOf } from '../snap/field-side.ts';

/** A side of the field seen from behind the offense. */
export type Side = 'left' | 'right';

/** What is seen before the snap that a call's side depends on; undefined where it was not charted. */
export interface SideLook {
  readonly hash?: Hash | undefined;
  readonly strength?: string | undefined;
  readonly backSpot?: string | undefined;
}

/**
 * The side a call is sent from on one snap, seen from behind the offense; null where nothing decides it: a call that may
 * come from either side, a ball in the middle for a field call, a back behind the quarterback for a back call, or a look
 * that was not charted.
 */
export function nearSide(sentFrom: Call['sent_from'], look: SideLook): Side | null {
  switch (sentFrom) {
    case 'field':
      return fieldOf(look);
    case 'boundary':
      return opposite(fieldOf(look));
    case 'strength':
      return asSide(look.strength);
    case 'weak':
      return opposite(asSide(look.strength));
    case 'back':
      return backOf(look);
    case 'away_from_back':
      return opposite(backOf(look));
    case 'either':
      return null;
    default:
      return sentFrom satisfies never;
  }
}

function fieldOf(look: SideLook): Side | null {
  return look.hash === undefined ? null : asSide(fieldSideOf(look.hash));
}

function backOf(look: SideLook): Side | null {
  const strength = asSide(look.strength);
  if (look.backSpot === 'strong') return strength;
  return look.backSpot === 'weak' ? opposite(strength) : null;
}

function opposite(side: Side | null): Side | null {
  if (side === null) return null;
  return side === 'left' ? 'right' : 'left';
}

function asSide(word: string | undefined): Side | null {
  return word === 'left' || word === 'right' ? word : null;
}
