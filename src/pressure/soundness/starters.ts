import type { Call } from '../../game/call-library.ts';
import { sideOf } from '../../game/lane.ts';
import type { Side } from './fault.ts';

/** The men who rush a side at the snap. */
export function startersOn({ rush }: Call, side: Side): readonly Call['rush'][number][] {
  return rush.filter(({ lane, way }) => sideOf(lane) === side && way !== 'late_if_back_blocks');
}
