import type { ColumnName } from '../../game/columns.ts';
import { type DownDistanceBall, leftAfter } from '../../game/next-snap.ts';
import { writeFieldPosition } from '../../game/written-numbers.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';
import { situationOf } from './follow-on.ts';
import { withCell } from './snap-cells.ts';

/** Yards of a flag as they are typed at the down: a sign, digits, and nothing yet. */
const YARDS = /^[+-]\d{0,2}$/;

/** Whether what is typed at the down are the yards of a flag. */
export function isFlag(entry: string): boolean {
  return YARDS.test(entry);
}

/** The snap with a flag and no play: what was seen of it stays, a gain does not count. */
export function flagged(draft: SnapCells): SnapCells {
  return { ...withCell(draft, 'gain', ''), result: 'penalty' };
}

/** What a flag leaves, and which of it needs no second look. */
export interface AfterFlag {
  readonly cells: SnapCells;
  readonly known: ReadonlySet<ColumnName>;
}

/**
 * Down, distance and ball after a flag's yards were walked off; the down is played over unless the yards reach the
 * line to gain or the flag gives a first down.
 *
 * @param yards - as typed: `-5` against the offense, `+5` against the defense
 * @see NFHS, "Football Rules Book" (2023), rules 5-1 and 5-2: series and line to gain after a penalty; from memory
 */
export function walkedOff(cells: SnapCells, yards: string, isFirst = false): AfterFlag {
  const situation = situationOf(cells);
  const left = walked(situation, Number(yards), isFirst);
  const texts: readonly (readonly [ColumnName, string])[] = [
    ['down', written(left.down)],
    ['to_go', written(left.toGo)],
    ['ball_on', isOnField(left.ballOn) ? writeFieldPosition(left.ballOn) : ''],
  ];
  const next = texts.reduce((snap, [column, text]) => withCell(snap, column, text), cells);
  return { cells: next, known: new Set(texts.filter(([, text]) => text !== '').map(([column]) => column)) };
}

function walked(before: DownDistanceBall, yards: number, isFirst: boolean): DownDistanceBall {
  const { down, toGo, ballOn } = leftAfter(before, yards);
  if (isFirst || down === 1) return { down: 1, toGo: Math.min(10, ballOn || 10), ballOn };
  return { down: before.down, toGo, ballOn };
}

function written(value: number): string {
  return Number.isNaN(value) ? '' : String(value);
}

function isOnField(ballOn: number): boolean {
  return ballOn > 0 && ballOn < 100;
}
