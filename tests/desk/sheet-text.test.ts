import { array, constantFrom, assert as holds, integer, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetWriter } from '../../src/desk/chart/sheet-text.ts';
import type { SnapCells } from '../../src/season/chart-sheet.ts';

const HEAD = { remarks: ['# remark'], columns: ['snap', 'gain'] } as const;

/** One change to the snaps: put in, taken out, or another snap in the place of one. */
const change = record({ kind: constantFrom('in', 'out', 'other'), at: integer({ min: 0, max: 6 }), gain: integer() });

/** A column the sheet has not had before comes in with every fifth gain. */
const snapOf = (gain: number): SnapCells => ({
  gain: String(gain),
  ...(gain % 5 === 0 ? { hash: 'left' } : {}),
  ...(gain % 7 === 0 ? { concept: 'a, b' } : {}),
});

interface Change {
  readonly kind: string;
  readonly at: number;
  readonly gain: number;
}

function changed(snaps: readonly SnapCells[], { kind, at, gain }: Change): readonly SnapCells[] {
  return kind === 'out' ? snaps.toSpliced(at, 1) : snaps.toSpliced(at, kind === 'in' ? 0 : 1, snapOf(gain));
}

describe('a sheet written while it is typed', () => {
  it('is after every change the sheet that is written from nothing, its columns in the order in which they came', () => {
    holds(
      property(array(change, { maxLength: 12 }), (changes) => {
        const write = sheetWriter(HEAD);
        let snaps: readonly SnapCells[] = [snapOf(1), snapOf(2), snapOf(3)];
        for (const one of changes) {
          snaps = changed(snaps, one);
          const text = write(snaps);
          const columns = (text.split('\r\n')[1] ?? '').split(',') as (keyof SnapCells)[];
          expect(text).toBe(sheetWriter({ ...HEAD, columns })(snaps));
          expect(columns.slice(0, 2)).toEqual(HEAD.columns);
          expect(snaps.every((snap) => Object.keys(snap).every((name) => columns.includes(name as never)))).toBe(true);
        }
      }),
    );
  });
});
