import type { CoverJob } from '../../game/call-library.ts';
import { FIELD_WIDTH, type FieldPoint, insideField } from './field-size.ts';
import type { OffenseSet } from './offense-set.ts';

/** Where a job is done, and whether it is a zone, a man, or the passer. */
export interface CoverSpot {
  readonly kind: 'zone' | 'man' | 'watch';
  readonly at: FieldPoint;
}

/**
 * Where on the drawn field a cover job is done.
 *
 * @param near - 1 when the call is sent from the right of the drawing, -1 from the left
 */
export function coverSpot(job: CoverJob, near: 1 | -1, offense: OffenseSet): CoverSpot {
  const man = manSpot(job, near, offense);
  if (man !== null) return { kind: 'man', at: man };
  if (job === 'spy' || job === 'robber')
    return { kind: 'watch', at: { across: offense.ball.across, past: job === 'spy' ? 4 : 9 } };
  return { kind: 'zone', at: insideField(zoneSpot(job, near, offense)) };
}

function manSpot(job: CoverJob, near: 1 | -1, offense: OffenseSet): FieldPoint | null {
  const nearSide = near === 1 ? offense.field : offense.boundary;
  const farSide = near === 1 ? offense.boundary : offense.field;
  switch (job) {
    case 'man_1_near':
      return nearSide[0] ?? null;
    case 'man_2_near':
      return nearSide[1] ?? null;
    case 'man_1_far':
      return farSide[0] ?? null;
    case 'man_2_far':
      return farSide[1] ?? null;
    case 'man_3_near':
    case 'man_3_far':
    case 'man_back':
      return offense.back;
    case 'man_end':
      return offense.boundary[1] ?? null;
    default:
      return null;
  }
}

/** Depth and place of zones; across is a share of the field from the far side, or yards from the ball. */
const DEEP: Partial<Record<CoverJob, readonly [number, number]>> = {
  deep_third_near: [5 / 6, 15],
  deep_third_middle: [1 / 2, 15.5],
  deep_third_far: [1 / 6, 15],
  deep_half_near: [3 / 4, 15.5],
  deep_half_far: [1 / 4, 15.5],
  deep_middle: [1 / 2, 15.5],
};
const UNDERNEATH: Partial<Record<CoverJob, readonly [number, number]>> = {
  seam_near: [9, 10],
  seam_far: [-9, 10],
  hook_near: [4.5, 8],
  hook_middle: [0, 8.5],
  hook_far: [-4.5, 8],
  flat_near: [15, 5],
  flat_far: [-15, 5],
  hot_near: [5.5, 6.5],
  hot_far: [-5.5, 6.5],
};

function zoneSpot(job: CoverJob, near: 1 | -1, { ball }: OffenseSet): FieldPoint {
  const deep = DEEP[job];
  if (deep !== undefined) {
    const [share, past] = deep;
    return { across: FIELD_WIDTH * (near === 1 ? share : 1 - share), past };
  }
  const [lateral, past] = UNDERNEATH[job] ?? [0, 8];
  return { across: ball.across + near * lateral, past };
}
