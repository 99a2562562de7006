import { isSituation, SITUATION_TABLE } from '../../game/situations.ts';
import type { MenuMixCell } from './model.ts';

/** A situation with its snaps and how often pressure is sent. */
export interface CellSituation {
  readonly id: string;
  readonly expectedSnaps: number;
  readonly rate: number;
}

/** A mix with the pressures of each of its situations. */
export interface PartedCell extends MenuMixCell {
  readonly parts: readonly { readonly id: string; readonly pressures: number }[];
}

/** Fewer snaps than this a game have no mix of their own: nobody calls a mix of one and a half. Judgment. */
const LEAST_SNAPS = 1.5;

/** The mixes of a week: every situation has its own but for the rare ones, which share their neighbor's. */
export function mixCells(situations: readonly CellSituation[]): PartedCell[] {
  const homes = new Map(situations.map(({ id }) => [id, homeOf(id, situations)]));
  return situations
    .filter(({ id }) => homes.get(id) === id)
    .map(({ id: home }) => {
      const own = situations.filter(({ id }) => homes.get(id) === home);
      const parts = own.map(({ id, expectedSnaps, rate }) => ({ id, pressures: expectedSnaps * rate }));
      return {
        situations: own.map(({ id }) => id),
        expectedSnaps: own.reduce((sum, { expectedSnaps }) => sum + expectedSnaps, 0),
        pressures: parts.reduce((sum, { pressures }) => sum + pressures, 0),
        parts,
      };
    });
}

/** Follows the neighbors until a situation is common enough, or has no neighbor that is expected at all. */
function homeOf(id: string, situations: readonly CellSituation[]): string {
  const snaps = situations.find((one) => one.id === id)?.expectedSnaps ?? 0;
  const next = isSituation(id) ? SITUATION_TABLE[id].joins : null;
  if (snaps >= LEAST_SNAPS || next === null || !situations.some((one) => one.id === next)) return id;
  return homeOf(next, situations);
}
