import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transposed } from '../../src/stats/contingency-table.ts';
import { goodmanKruskalLambda, PREDICTION_DIRECTIONS, theilU } from '../../src/stats/predictability.ts';

/** Eye colour by hair colour, Goodman and Kruskal 1954, p. 744. */
const EYES_BY_HAIR = [
  [1768, 807, 189, 47],
  [946, 1387, 746, 53],
  [115, 438, 288, 16],
];
const MEASURES = [
  ["Theil's U", theilU],
  ['lambda', goodmanKruskalLambda],
] as const;
const table = fc.tuple(fc.integer({ min: 2, max: 4 }), fc.integer({ min: 2, max: 4 })).chain(([rows, columns]) =>
  fc.array(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: columns, maxLength: columns }), {
    minLength: rows,
    maxLength: rows,
  }),
);

describe('predictability', () => {
  it('lambda of hair given eyes is .192 and of eyes given hair .224 (Goodman and Kruskal 1954; from memory)', () => {
    expect(goodmanKruskalLambda(EYES_BY_HAIR, 'column-given-row')?.toFixed(3)).toBe('0.192');
    expect(goodmanKruskalLambda(EYES_BY_HAIR, 'row-given-column')?.toFixed(3)).toBe('0.224');
  });

  it('lambda is 0.1 and 0.18333 for the table of the rapportools manual', () => {
    const printed = [
      [5, 9, 7, 1],
      [4, 8, 11, 15],
      [3, 7, 22, 8],
    ];
    expect(goodmanKruskalLambda(printed, 'column-given-row')).toBeCloseTo(0.1, 12);
    expect(goodmanKruskalLambda(printed, 'row-given-column')).toBeCloseTo(0.18333, 5);
  });

  it('lambda is 0 when every row shares its most frequent column, though U is not', () => {
    expect(
      goodmanKruskalLambda(
        [
          [8, 2],
          [6, 4],
        ],
        'column-given-row',
      ),
    ).toBe(0);
    expect(
      theilU(
        [
          [8, 2],
          [6, 4],
        ],
        'column-given-row',
      ),
    ).toBeGreaterThan(0.03);
  });
});

describe.each(MEASURES)('%s', (_name, measure) => {
  it('lies within 0 and 1', () => {
    fc.assert(
      fc.property(table, fc.constantFrom(...PREDICTION_DIRECTIONS), (counts, direction) => {
        const value = measure(counts, direction);
        fc.pre(value !== null);
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  it('turns its direction with the table, and does not mind relabelling', () => {
    fc.assert(
      fc.property(table, (counts) => {
        const value = measure(counts, 'column-given-row');
        const turned = measure(transposed(counts), 'row-given-column');
        const relabeled = measure(
          counts.toReversed().map((row) => row.toReversed()),
          'column-given-row',
        );
        if (value === null) {
          expect([turned, relabeled]).toEqual([null, null]);
        } else {
          expect(turned).toBeCloseTo(value, 10);
          expect(relabeled).toBeCloseTo(value, 10);
        }
      }),
    );
  });

  it('of a perfect pairing is 1 both ways', () => {
    for (const direction of PREDICTION_DIRECTIONS)
      expect(
        measure(
          [
            [5, 0],
            [0, 7],
          ],
          direction,
        ),
      ).toBeCloseTo(1, 12);
  });

  it('is undefined, not 0 or 1, when there is nothing to guess', () => {
    expect(measure([[5], [9]], 'column-given-row')).toBeNull();
    expect(
      measure(
        [
          [5, 0],
          [9, 0],
        ],
        'column-given-row',
      ),
    ).toBeNull();
    expect(
      measure(
        [
          [0, 0],
          [0, 0],
        ],
        'column-given-row',
      ),
    ).toBeNull();
    expect(measure([[5], [9]], 'row-given-column')).toBe(0);
  });
});
