import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, filterSnaps, joinFilms, type SnapRecord } from '../../src/game/film.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';

const record: fc.Arbitrary<SnapRecord> = fc.record(
  {
    game: fc.constantFrom('one', 'two'),
    snap: fc.integer({ min: 1, max: 99 }),
    formation: fc.constantFrom('trey', 'deuce', 'empty'),
    time_to_throw: fc.integer({ min: 30, max: 500 }).map((hundredths) => hundredths / 100),
  },
  { requiredKeys: [] },
);
const chart = fc.array(record, { maxLength: 20 }).map((records) => filmFromRecords(records, 'a.csv'));

/** Columns as plain lists of what was charted. */
function plain({ columns, size }: Film) {
  return Object.entries(columns).map(([name, column]) => [
    name,
    Array.from({ length: size }, (_, i) =>
      column.kind === 'code' ? column.values[column.codes[i] ?? 0] : column.numbers[i],
    ),
  ]);
}

describe('joinCharts', () => {
  it('gives of one chart what it gives of that chart and an empty one', () => {
    fc.assert(
      fc.property(chart, (only) => {
        const [alone, beside] = [joinFilms([only]), joinFilms([only, filmFromRecords([], 'empty.csv')])];
        expect(plain(alone)).toEqual(plain(beside));
        expect([alone.size, alone.rowOf, alone.sourceOf]).toEqual([beside.size, beside.rowOf, beside.sourceOf]);
        expect(alone.sources).toEqual(['a.csv']);
      }),
      { numRuns: 100 },
    );
  });

  it('puts the columns into our order, whatever order a sheet has them in', () => {
    const text = 'play_kind,ball_on,to_go,down,game\nrun,own 35,10,1,w1\n';
    const { chart: read } = readSheet({ file: 's.csv', bytes: new TextEncoder().encode(text) }, { kind: 'opponent' });
    expect(Object.keys(read.columns)[0]).toBe('play_kind');
    expect(Object.keys(joinFilms([read]).columns)).toEqual(['game', 'down', 'to_go', 'ball_on', 'play_kind']);
  });

  it('keeps what records hold beside the whole numbers of a sheet', () => {
    const text = 'game,down,to_go,ball_on,play_kind,gain\nw1,1,10,own 35,run,-3\n';
    const { chart: read } = readSheet({ file: 's.csv', bytes: new TextEncoder().encode(text) }, { kind: 'opponent' });
    const records = filmFromRecords([{ gain: 4.1 }, { time_to_throw: 2.35 }]);
    const joined = Object.fromEntries(plain(joinFilms([read, records])));
    expect(joined).toMatchObject({
      gain: [-3, 4.1, Number.NaN],
      time_to_throw: [Number.NaN, Number.NaN, 2.35],
      down: [1, Number.NaN, Number.NaN],
    });
  });
});

describe('filterSnaps', () => {
  it('keeps the snaps asked for, in order', () => {
    fc.assert(
      fc.property(chart, fc.array(fc.boolean(), { minLength: 20, maxLength: 20 }), (all, kept) => {
        const found = filterSnaps(all, (i) => kept[i] ?? false);
        const rows = [...all.rowOf].filter((_, i) => kept[i]);
        expect([...found.rowOf]).toEqual(rows);
        expect(plain(found)).toEqual(
          plain(all).map(([name, values]) => [name, (values as unknown[]).filter((_, i) => kept[i])]),
        );
      }),
      { numRuns: 100 },
    );
  });

  it('gives the chart itself where every snap is kept', () => {
    const all = filmFromRecords([{ gain: 1 }, { gain: 2 }]);
    expect(filterSnaps(all, () => true)).toBe(all);
    expect(filterSnaps(all, (i) => i === 0).size).toBe(1);
  });
});
