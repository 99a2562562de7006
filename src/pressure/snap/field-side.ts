import { type Chart, textAt } from '../../ingest/chart.ts';
import type { Hash } from '../../ingest/vocabulary.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';

/** The wide side of the field seen from behind the offense; `none` when the ball lies in the middle. */
export const FIELD_SIDES = ['left', 'right', 'none'] as const;
/** One word of {@link FIELD_SIDES}. */
export type FieldSide = (typeof FIELD_SIDES)[number];

/** What a slide can be measured against: the back, the wide side of the field, the passing strength. */
export type SlideReference = 'back' | 'field' | 'strength';

/** Where a slide went relative to its reference. */
export const SLIDE_DIRECTIONS = ['to', 'away'] as const;

/** The wide side of the field for a ball on `hash`: the other side, and none from the middle. */
export function fieldSideOf(hash: Hash): FieldSide {
  if (hash === 'middle') return 'none';
  return hash === 'left' ? 'right' : 'left';
}

/** The wide side of every snap as an index into {@link FIELD_SIDES}; 255 where the hash was not charted. */
export function fieldSideCodes(chart: Chart): Uint8Array {
  return codesBySnap(chart.size, (i) => {
    const hash = textAt(chart, 'hash', i) as Hash | undefined;
    return hash === undefined ? NOT_KNOWN : FIELD_SIDES.indexOf(fieldSideOf(hash));
  });
}

/**
 * Whether each slide went to its reference or away, as an index into {@link SLIDE_DIRECTIONS}. 255 where the slide was
 * not charted or was man, and where the reference has no side: a back behind the quarterback, one on each side or none,
 * a ball in the middle, no strength.
 */
export function slideCodes(chart: Chart, reference: SlideReference): Uint8Array {
  return codesBySnap(chart.size, (i) => {
    const slide = slideSideAt(chart, i);
    const side = referenceSideAt(chart, i, reference);
    if (slide === undefined || side === undefined) return NOT_KNOWN;
    return slide === side ? 0 : 1;
  });
}

type Side = 'left' | 'right';

function slideSideAt(chart: Chart, index: number): Side | undefined {
  const slide = textAt(chart, 'slide', index)?.replace('full_', '');
  return asSide(slide);
}

function referenceSideAt(chart: Chart, index: number, reference: SlideReference): Side | undefined {
  if (reference === 'back') return backSideAt(chart, index);
  if (reference === 'strength') return asSide(textAt(chart, 'strength', index));
  const hash = textAt(chart, 'hash', index) as Hash | undefined;
  return hash === undefined ? undefined : asSide(fieldSideOf(hash));
}

function backSideAt(chart: Chart, index: number): Side | undefined {
  const strength = asSide(textAt(chart, 'strength', index));
  const spot = textAt(chart, 'back_spot', index);
  if (strength === undefined) return undefined;
  if (spot === 'strong') return strength;
  if (spot !== 'weak') return undefined;
  return strength === 'left' ? 'right' : 'left';
}

function asSide(word: string | undefined): Side | undefined {
  return word === 'left' || word === 'right' ? word : undefined;
}
