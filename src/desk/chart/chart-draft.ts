import type { ColumnName } from '../../game/columns.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';
import type { Depth } from './chart-fields.ts';
import { type ChartState, openChart, type Passes } from './chart-state.ts';

/** What is kept at every key: the snap under the pen, and the snaps that are in no file yet. */
export interface ChartDraft {
  readonly depth: Depth;
  readonly passes: Passes;
  readonly game: SnapCells;
  /** The end of the file that the snaps were typed on, to know it by. */
  readonly base: string;
  readonly size: number;
  readonly unsaved: readonly (readonly [index: number, cells: SnapCells])[];
  readonly at: number;
  readonly draft: SnapCells;
  readonly known: readonly ColumnName[];
  readonly stop: number;
  readonly entry: string;
}

/** The end of a file, and its length: enough to see that it is another. */
export function baseOf(text: string): string {
  return `${text.length} ${text.slice(-200)}`;
}

/** The draft of a chart; `saved` are the snaps as they stand in the file; `base` is from its text. */
export function draftOf(state: ChartState, saved: readonly SnapCells[], base: string): ChartDraft {
  const { depth, passes, game, snaps, at, draft, known, stop, entry } = state;
  const unsaved = snaps.flatMap((snap, i) => (snap === saved[i] ? [] : [[i, snap] as const]));
  return { depth, passes, game, base, size: snaps.length, unsaved, at, draft, known: [...known], stop, entry };
}

/** A chart as it was left: the snaps of the file with those that had not reached it, and the pen where it was. */
export function resumed(opening: Parameters<typeof openChart>[0], left: ChartDraft): ChartState {
  const snaps = opening.snaps.slice(0, left.size);
  for (const [index, cells] of left.unsaved) snaps[index] = cells;
  const { depth, passes, game, at, draft, known, stop, entry } = left;
  return { ...openChart({ ...opening, depth, passes, game, snaps }), at, draft, known: new Set(known), stop, entry };
}
