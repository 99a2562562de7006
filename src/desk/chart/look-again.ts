import type { ColumnName } from '../../game/columns.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';
import { fieldsOf } from './chart-fields.ts';
import { type ChartState, isOffered, nextStop } from './chart-state.ts';

/** What a formation settles for most offenses; its strength and what moves are looked at on every snap. Judgment. */
const SETTLED: readonly ColumnName[] = ['receivers', 'back_spot', 'quarterback_depth'];

/** What the last snap in the same formation had at the stops from the pen on; null where there is nothing to take. */
export function lookAgain(state: ChartState): SnapCells | null {
  const { draft, snaps, at, kind, stop } = state;
  const column = fieldsOf(kind)[stop]?.column;
  if (draft.formation === undefined || column === undefined || !SETTLED.includes(column)) return null;
  const before = snaps.slice(0, at).findLast(({ formation }) => formation === draft.formation);
  const found = fieldsOf(kind)
    .slice(stop)
    .flatMap((field) => {
      const text = before?.[field.column];
      return text !== undefined && SETTLED.includes(field.column) && isOffered(state, field)
        ? [[field.column, text] as const]
        : [];
    });
  return found.length === 0 ? null : Object.fromEntries(found);
}

/** The look taken as it was; what that snap left blank is asked for. */
export function withLookAgain(state: ChartState): ChartState {
  const cells = lookAgain(state);
  if (cells === null) return state;
  const known = new Set([...state.known, ...(Object.keys(cells) as ColumnName[])]);
  const taken = { ...state, draft: { ...state.draft, ...cells }, known, entry: '' };
  return { ...taken, stop: nextStop(taken, state.stop - 1) };
}
