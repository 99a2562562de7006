import type { ColumnName } from '../../game/columns.ts';
import type { SheetKind } from '../../ingest/sheet-kind.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';
import { type ChartField, DEPTHS, type Depth, fieldsOf } from './chart-fields.ts';
import { followOn } from './follow-on.ts';
import { isPass } from './play-facts.ts';

/** Both passes over a game in one, or one of them. */
export type Passes = 'both' | 'first' | 'second';

/** A chart under the pen. */
export interface ChartState {
  readonly kind: SheetKind;
  readonly calls?: readonly string[];
  readonly depth: Depth;
  readonly passes: Passes;
  /** What every new snap of the game begins with: offense, game, week, quarter. */
  readonly game: SnapCells;
  readonly snaps: readonly SnapCells[];
  /** The snap under the pen; one past the last is a new one. */
  readonly at: number;
  readonly draft: SnapCells;
  /** Cells that were filled in and need no second look. */
  readonly known: ReadonlySet<ColumnName>;
  /** The stop under the pen, by its place among the fields of the sheet. */
  readonly stop: number;
  /** What was typed of a number or name so far. */
  readonly entry: string;
  /** The states before, the latest last, to go back to. */
  readonly past: readonly Omit<ChartState, 'past'>[];
}

/** How a chart is opened. */
export interface ChartOpening {
  readonly kind: SheetKind;
  /** Our calls by name, offered in this order where a call is charted. */
  readonly calls?: readonly string[];
  readonly depth: Depth;
  readonly passes: Passes;
  readonly game: SnapCells;
  readonly snaps: readonly SnapCells[];
}

/** A chart with the pen on a new snap. */
export function openChart(opening: ChartOpening): ChartState {
  const empty = { at: 0, draft: {}, known: new Set<ColumnName>(), stop: 0, entry: '', past: [] };
  return goTo({ ...opening, ...empty }, opening.passes === 'second' ? firstPass(opening.snaps) : opening.snaps.length);
}

function firstPass(snaps: readonly SnapCells[]): number {
  return Math.max(0, snaps.findIndex(isPass));
}

/** The chart with the pen on a snap, at its first stop. */
export function goTo(state: ChartState, at: number): ChartState {
  const found = state.snaps[at];
  const coming = found === undefined ? followOn(state.snaps[at - 1], state.game) : { cells: found, known: SITUATION };
  const moved = { ...state, at, draft: coming.cells, known: coming.known, stop: -1, entry: '' };
  return { ...moved, stop: Math.max(0, nextStop(moved)) };
}

/** A snap that is charted is stopped at for its look and play; its situation stands. */
const SITUATION: ReadonlySet<ColumnName> = new Set(['down', 'to_go', 'ball_on']);

/** The next stop after the pen that the snap has something to say at, -1 when there is none. */
export function nextStop(state: ChartState, from = state.stop): number {
  const fields = fieldsOf(state.kind);
  for (let i = from + 1; i < fields.length; i++) if (isVisited(state, fields[i] as ChartField)) return i;
  return -1;
}

/** Whether the pen stops at a field by itself. */
export function isVisited(state: ChartState, field: ChartField): boolean {
  return isOffered(state, field) && !state.known.has(field.column);
}

/** Whether a field is on the strip at this depth, in this pass, for this snap. */
export function isOffered({ depth, passes, draft }: ChartState, field: ChartField): boolean {
  const inPass = passes === 'both' || (passes === 'first') === (field.pass === 1);
  return inPass && DEPTHS.indexOf(field.depth) <= DEPTHS.indexOf(depth) && field.applies(draft);
}
