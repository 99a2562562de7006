import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transposed } from '../../src/stats/contingency-table.ts';
import { StatsInputError } from '../../src/stats/errors.ts';
import { fisherExact } from '../../src/stats/fisher.ts';

const twoByTwo = fc.array(fc.array(fc.integer({ min: 0, max: 15 }), { minLength: 2, maxLength: 2 }), {
  minLength: 2,
  maxLength: 2,
});
const small = fc.tuple(fc.integer({ min: 2, max: 3 }), fc.integer({ min: 2, max: 3 })).chain(([rows, columns]) =>
  fc.array(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);

const factorial = (n: number): number => (n <= 1 ? 1 : n * factorial(n - 1));

/** Every row of whole numbers with a given sum. */
function rowsOf(sum: number, length: number): number[][] {
  if (length === 1) return [[sum]];
  return Array.from({ length: sum + 1 }, (_, n) => rowsOf(sum - n, length - 1).map((rest) => [n, ...rest])).flat();
}

/** Lists all tables with the same margins: every row but the last in every way, the last as the columns demand. */
function byEnumeration(table: number[][]): number {
  const weight = (cells: number[]) => 1 / cells.reduce((product, n) => product * factorial(n), 1);
  const total = (list: number[]) => list.reduce((a, b) => a + b, 0);
  const columns = transposed(table).map(total);
  const choices = table.slice(0, -1).map((row) => rowsOf(total(row), row.length));
  const tops = choices.reduce<number[][][]>((made, rows) => made.flatMap((t) => rows.map((row) => [...t, row])), [[]]);
  const tables = tops.map((top) => [...top, columns.map((sum, j) => sum - total(top.map((row) => row[j]!)))]);
  const weights = tables
    .map((t) => t.flat())
    .filter((cells) => cells.every((n) => n >= 0))
    .map(weight);
  const rare = weights.filter((w) => w <= weight(table.flat()) * (1 + 1e-7));
  return total(rare) / total(weights);
}

describe('Fisher 2 x 2', () => {
  it('of the lady tasting tea is 34/70 two-sided (Fisher 1935)', () => {
    const table = [
      [3, 1],
      [1, 3],
    ];
    expect(fisherExact({ table, seed: 1 }).p).toBeCloseTo(34 / 70, 12);
  });

  it('turns with the table: rows swapped, rows and columns swapped', () => {
    fc.assert(
      fc.property(twoByTwo, (table) => {
        const there = fisherExact({ table, seed: 1 }).p;
        expect(fisherExact({ table: table.toReversed(), seed: 1 }).p).toBeCloseTo(there, 10);
        expect(fisherExact({ table: transposed(table), seed: 1 }).p).toBeCloseTo(there, 10);
      }),
    );
  });

  it.each([
    [
      [
        [1.5, 2],
        [3, 4],
      ],
    ],
    [
      [
        [-1, 2],
        [3, 4],
      ],
    ],
  ])('refuses %j', (table) => {
    expect(() => fisherExact({ table, seed: 1 })).toThrow(StatsInputError);
  });
});

describe('Fisher r x c', () => {
  it("of job satisfaction by income is 0.7827 (Agresti 1990, in R's help page of fisher.test; from memory)", () => {
    const got = fisherExact({
      table: [
        [1, 3, 10, 6],
        [2, 3, 10, 7],
        [1, 6, 14, 12],
        [0, 1, 9, 11],
      ],
      seed: 1,
    });
    expect(got.method).toBe('exact');
    expect(got.p.toFixed(4)).toBe('0.7827');
  });

  it('agrees with listing every table', () => {
    fc.assert(
      fc.property(small, (table) => {
        const used = table.some((row) => row.some((n) => n > 0));
        fc.pre(used);
        expect(fisherExact({ table, seed: 1 }).p).toBeCloseTo(byEnumeration(table), 8);
      }),
      { numRuns: 60 },
    );
  });

  it('draws tables when there are too many, seeded', () => {
    const table = Array.from({ length: 6 }, (_, i) => Array.from({ length: 6 }, (_, j) => 12 + ((i * j) % 3)));
    const run = (seed: number) => fisherExact({ table, seed, draws: 199 });
    expect(run(1).method).toBe('monte-carlo');
    expect(run(1)).toEqual(run(1));
    expect(run(1).p).toBeGreaterThan(0.5); // nearly even counts
  });

  it('finds nothing with fewer than two used rows or columns', () => {
    expect(
      fisherExact({
        table: [
          [3, 0],
          [4, 0],
        ],
        seed: 1,
      }),
    ).toEqual({ p: 1, method: 'exact' });
    expect(fisherExact({ table: [], seed: 1 })).toEqual({ p: 1, method: 'exact' });
  });
});
