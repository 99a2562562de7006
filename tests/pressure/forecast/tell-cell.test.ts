import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { tellCells, tellLiterals } from '../../../src/pressure/forecast/tell-cell.ts';
import { tellFeatures } from '../../../src/pressure/forecast/tell-feature.ts';
import { setSize, snapSet } from '../../../src/pressure/snap/snap-set.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;
const all = (size: number) => snapSet(size, () => true);

function cellsOf(records: readonly SnapRecord[], charted = all(records.length)) {
  return tellCells(tellLiterals(tellFeatures(filmFromRecords(records), cuts), records.length), charted);
}

describe('tellCells', () => {
  it('builds conjunctions of up to three features with at least eight charted snaps', () => {
    const half = (i: number, step: number, words: readonly [string, string]) =>
      words[Math.floor(i / step) % 2] as string;
    const records = Array.from({ length: 64 }, (_, i): SnapRecord => {
      return {
        hash: half(i, 1, ['left', 'right']),
        tempo: half(i, 2, ['huddle', 'fast']),
        back_spot: half(i, 4, ['weak', 'strong']),
        personnel: half(i, 8, ['11', '12']),
      };
    });
    const cells = cellsOf(records);
    const sizes = cells.map(({ seen }) => seen.length);
    expect(Math.max(...sizes)).toBe(3);
    expect(cells).toHaveLength(8 + 24 + 32);
    expect(cells.every(({ snaps }) => setSize(snaps) >= 8)).toBe(true);
  });

  it('counts only charted snaps and never makes a cell of a blank', () => {
    const records = Array.from({ length: 20 }, (_, i): SnapRecord => (i < 10 ? { hash: 'left' } : {}));
    expect(cellsOf(records).map(({ seen }) => seen)).toEqual([[{ feature: 'hash', value: 'left' }]]);
    expect(
      cellsOf(
        records,
        snapSet(20, (i) => i > 4),
      ),
    ).toEqual([]);
  });

  it('merges conjunctions of the same snaps under the shortest description', () => {
    const records = Array.from({ length: 20 }, (_, i): SnapRecord => {
      return i < 10 ? { hash: 'left', tempo: 'fast', motion: 'across' } : { hash: 'right', tempo: 'huddle' };
    });
    expect(cellsOf(records).map(({ seen }) => seen)).toEqual([
      [{ feature: 'hash', value: 'left' }],
      [{ feature: 'hash', value: 'right' }],
    ]);
  });
});
