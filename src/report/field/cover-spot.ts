import type { CoverJob } from '../../game/cover-jobs.ts';
import { FIELD_WIDTH, type FieldPoint, insideField } from './field-size.ts';
import type { OffenseSet } from './offense-set.ts';

/** Where a job is done, and whether it is a zone, a man, or the passer. */
export interface CoverSpot {
  readonly kind: 'zone' | 'man' | 'watch';
  readonly at: FieldPoint;
}

/**
 * A job's place: a deep zone by its share of the field from the far side, a short one by yards from the ball toward the
 * near side, a man by his number on a side, a spot over the ball; `past` is yards past the line.
 */
type JobPlace =
  | { readonly kind: 'deep'; readonly share: number; readonly past: number }
  | { readonly kind: 'under'; readonly lateral: number; readonly past: number }
  | { readonly kind: 'man'; readonly side: 'near' | 'far' | 'boundary'; readonly number: 1 | 2 }
  | { readonly kind: 'back' }
  | { readonly kind: 'watch'; readonly past: number };

/** The drawn set is two by two, so a third receiver is the back. */
const PLACES: Readonly<Record<CoverJob, JobPlace>> = {
  deep_third_near: { kind: 'deep', share: 5 / 6, past: 15 },
  deep_third_middle: { kind: 'deep', share: 1 / 2, past: 15.5 },
  deep_third_far: { kind: 'deep', share: 1 / 6, past: 15 },
  deep_half_near: { kind: 'deep', share: 3 / 4, past: 15.5 },
  deep_half_far: { kind: 'deep', share: 1 / 4, past: 15.5 },
  deep_middle: { kind: 'deep', share: 1 / 2, past: 15.5 },
  seam_near: { kind: 'under', lateral: 9, past: 10 },
  seam_far: { kind: 'under', lateral: -9, past: 10 },
  hook_near: { kind: 'under', lateral: 4.5, past: 8 },
  hook_middle: { kind: 'under', lateral: 0, past: 8.5 },
  hook_far: { kind: 'under', lateral: -4.5, past: 8 },
  flat_near: { kind: 'under', lateral: 15, past: 5 },
  flat_far: { kind: 'under', lateral: -15, past: 5 },
  hot_near: { kind: 'under', lateral: 5.5, past: 6.5 },
  hot_far: { kind: 'under', lateral: -5.5, past: 6.5 },
  man_1_near: { kind: 'man', side: 'near', number: 1 },
  man_2_near: { kind: 'man', side: 'near', number: 2 },
  man_3_near: { kind: 'back' },
  man_1_far: { kind: 'man', side: 'far', number: 1 },
  man_2_far: { kind: 'man', side: 'far', number: 2 },
  man_3_far: { kind: 'back' },
  man_back: { kind: 'back' },
  man_end: { kind: 'man', side: 'boundary', number: 2 },
  spy: { kind: 'watch', past: 4 },
  robber: { kind: 'watch', past: 9 },
};

/**
 * Where on the drawn field a cover job is done.
 *
 * @param near - 1 when the call is sent from the right of the drawing, -1 from the left
 */
export function coverSpot(job: CoverJob, near: 1 | -1, offense: OffenseSet): CoverSpot {
  const place = PLACES[job];
  const { ball } = offense;
  switch (place.kind) {
    case 'back':
      return { kind: 'man', at: offense.back };
    case 'man':
      return { kind: 'man', at: receiverSpot(place, near, offense) };
    case 'watch':
      return { kind: 'watch', at: { across: ball.across, past: place.past } };
    case 'deep': {
      const across = FIELD_WIDTH * (near === 1 ? place.share : 1 - place.share);
      return { kind: 'zone', at: insideField({ across, past: place.past }) };
    }
    case 'under':
      return { kind: 'zone', at: insideField({ across: ball.across + near * place.lateral, past: place.past }) };
    default:
      return place satisfies never;
  }
}

function receiverSpot(man: Extract<JobPlace, { kind: 'man' }>, near: 1 | -1, offense: OffenseSet): FieldPoint {
  const inField = man.side !== 'boundary' && (man.side === 'near') === (near === 1);
  return (inField ? offense.field : offense.boundary)[man.number - 1] ?? offense.back;
}
