import type { Film } from '../../game/film.ts';
import type { Hash } from '../../game/vocabulary.ts';
import { codesBySnap } from './codes-by-snap.ts';
import { NOT_KNOWN } from './not-known.ts';
import { wordClasses } from './word-classes.ts';

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

/**
 * Whether each slide went to its reference or away, as an index into {@link SLIDE_DIRECTIONS}. 255 where the slide was
 * not charted or was man, and where the reference has no side: a back behind the quarterback, one on each side or none,
 * a ball in the middle, no strength.
 */
export function slideCodes(chart: Film, reference: SlideReference): Uint8Array {
  const slideAt = wordClasses(chart, 'slide', (word) => asSide(word?.replace('full_', '')));
  const referenceAt = referenceSide(chart, reference);
  return codesBySnap(chart.size, (i) => {
    const slide = slideAt(i);
    const side = referenceAt(i);
    if (slide === undefined || side === undefined) return NOT_KNOWN;
    return slide === side ? 0 : 1;
  });
}

type Side = 'left' | 'right';

type SideAt = (index: number) => Side | undefined;

function referenceSide(chart: Film, reference: SlideReference): SideAt {
  if (reference === 'back') return backSide(chart);
  if (reference === 'strength') return wordClasses(chart, 'strength', asSide);
  return wordClasses(chart, 'hash', (hash) => (hash === undefined ? undefined : asSide(fieldSideOf(hash as Hash))));
}

function backSide(chart: Film): SideAt {
  const strengthAt = wordClasses(chart, 'strength', asSide);
  const spotAt = wordClasses(chart, 'back_spot', (spot) => spot);
  return (i) => {
    const [strength, spot] = [strengthAt(i), spotAt(i)];
    if (strength === undefined) return undefined;
    if (spot === 'strong') return strength;
    if (spot !== 'weak') return undefined;
    return strength === 'left' ? 'right' : 'left';
  };
}

function asSide(word: string | undefined): Side | undefined {
  return word === 'left' || word === 'right' ? word : undefined;
}
