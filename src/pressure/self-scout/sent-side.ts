import type { Call, CallLibrary } from '../../game/call-library.ts';
import { type Film, textAt } from '../../game/film.ts';
import { plainName } from '../../game/plain-name.ts';
import type { Hash } from '../../game/vocabulary.ts';
import { nearSide, type SideLook } from '../protection/call-side.ts';
import { fieldSideOf } from '../snap/field-side.ts';

/**
 * From where each of our pressures was sent, as a reader of film counts it: "the field" or "the boundary". Undefined
 * where the call was not charted or may come from either side, and with the ball in the middle, where there is neither.
 */
export function sentSide(film: Film, library: CallLibrary | null): (index: number) => string | undefined {
  const calls = new Map((library?.calls ?? []).map((call) => [plainName(call.name), call]));
  return (index) => {
    const call = calls.get(plainName(textAt(film, 'call', index) ?? ''));
    return call && call.family !== 'base' ? sideOf(call, lookAt(film, index)) : undefined;
  };
}

function lookAt(film: Film, index: number): SideLook {
  return {
    hash: textAt(film, 'hash', index) as Hash | undefined,
    strength: textAt(film, 'strength', index),
    backSpot: textAt(film, 'back_spot', index),
  };
}

function sideOf({ sent_from }: Pick<Call, 'sent_from'>, look: SideLook): string | undefined {
  const [field, near] = [look.hash === undefined ? 'none' : fieldSideOf(look.hash), nearSide(sent_from, look)];
  if (field === 'none' || near === null) return undefined;
  return near === field ? 'the field' : 'the boundary';
}
