import { type Call, LANES, RUSH_WAYS } from '../call-library.ts';
import { COVER_JOBS } from '../cover-jobs.ts';

/**
 * The call with its men in one fixed order, so that the order in which they are written means nothing: rushers from the near
 * edge to the far edge, the one who joins late last; cover men deep, then under, then man to man.
 */
export function inListedOrder(call: Call): Call {
  const late = ({ way }: Call['rush'][number]) => Number(way === 'late_if_back_blocks');
  const rush = [...call.rush].sort(
    (a, b) =>
      late(a) - late(b) ||
      LANES.indexOf(b.lane) - LANES.indexOf(a.lane) ||
      RUSH_WAYS.indexOf(a.way) - RUSH_WAYS.indexOf(b.way) ||
      before(a.role, b.role),
  );
  const cover = [...call.cover].sort(
    (a, b) => COVER_JOBS.indexOf(a.job) - COVER_JOBS.indexOf(b.job) || before(a.role, b.role),
  );
  return { ...call, rush, cover };
}

function before(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
