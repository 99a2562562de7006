import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { compareCharts } from '../../../src/pressure/chart-comparison/compare-charts.ts';

function chartsOf(column: keyof SnapRecord, pairs: readonly (readonly [unknown, unknown])[]) {
  const side = (at: 0 | 1) =>
    filmFromRecords(pairs.map((pair, i) => ({ game: 'g', snap: i + 1, [column]: pair[at] }) as SnapRecord));
  return [side(0), side(1)] as const;
}

function fieldsOf([first, second]: ReturnType<typeof chartsOf>) {
  const result = compareCharts(first, second);
  if (result.kind !== 'compared') throw new Error(result.kind);
  return result.fields;
}

/** Pairs of words from a square table of counts. */
function crossed(table: readonly (readonly number[])[]): (readonly [string, string])[] {
  return table.flatMap((row, i) => row.flatMap((count, j) => Array(count).fill([`word ${i}`, `word ${j}`])));
}

describe('two charts of one game', () => {
  it.each([
    {
      table: [
        [20, 5],
        [10, 15],
      ],
      agreement: 0.7,
      kappa: 0.4,
      standardError: null,
      digits: 9,
      source: "worked example of Cohen's kappa in many textbooks: 50 proposals, two readers, from memory",
    },
    {
      table: [
        [75, 1, 4],
        [5, 4, 1],
        [0, 0, 10],
      ],
      agreement: 0.89,
      kappa: 0.676,
      standardError: 0.088,
      digits: 3,
      source: 'Fleiss, Levin and Paik, Statistical Methods for Rates and Proportions, table 18.1, from memory',
    },
  ])('reproduces a published kappa ($source)', ({ table, agreement, kappa, standardError, digits }) => {
    const [field] = fieldsOf(chartsOf('call', crossed(table)));
    expect(field?.agreed.estimate).toBeCloseTo(agreement, 9);
    expect(field?.kappa?.estimate).toBeCloseTo(kappa, digits);
    if (standardError !== null) expect(field?.kappa?.standardError).toBeCloseTo(standardError, digits);
  });

  it('a blank is no disagreement and is counted apart', () => {
    const pairs = [
      ['left', 'left'],
      ['left', undefined],
      [undefined, 'right'],
      [undefined, undefined],
    ] as const;
    const [field] = fieldsOf(chartsOf('slide', pairs));
    expect(field).toMatchObject({ both: 1, onlyFirst: 1, onlySecond: 1, agreed: { count: 1, trials: 1 } });
  });

  it('measured numbers agree within their span, counts only when they are the same', () => {
    const pairs = [
      [5, 6],
      [5, 7],
    ] as const;
    expect(fieldsOf(chartsOf('gain', pairs))[0]).toMatchObject({
      agreed: { count: 1, trials: 2 },
      within: 1,
      kappa: null,
    });
    const measured = fieldsOf(chartsOf('gain', [...pairs, [3, 3], [4, 4]]))[0];
    expect(measured).toMatchObject({
      agreed: { count: 3, trials: 4 },
      disputes: [{ first: '5', second: '7', snaps: 1 }],
    });
    const [first, second] = [4, 5].map((rushers) => filmFromRecords([{ game: 'g', snap: 1, rushers_faced: rushers }]));
    const result = first && second ? compareCharts(first, second) : null;
    expect(result).toMatchObject({ fields: [{ column: 'rushers_faced', agreed: { count: 0, trials: 1 } }] });
  });

  // How far apart two honest charters may be: common practice, no source. A score is read off the board.
  it.each<readonly [column: keyof SnapRecord, near: readonly [number, number], far: readonly [number, number]]>([
    ['time_to_throw', [2.4, 2.6], [2.4, 2.7]],
    ['ball_on', [35, 36], [35, 37]],
    ['clock', [300, 290], [300, 289]],
    ['target_depth', [12, 10], [12, 9]],
    ['score_margin', [-7, -7], [-7, -6]],
  ])('two charters agree on %s when they are %j and not when they are %j', (column, near, far) => {
    const [field] = fieldsOf(chartsOf(column, [near, near, far]));
    expect(field?.agreed).toMatchObject({ count: 2, trials: 3 });
    expect(field?.disputes).toEqual([{ first: String(far[0]), second: String(far[1]), snaps: 1 }]);
  });

  it('puts the most disputed column first and says what is disputed', () => {
    const first = filmFromRecords([
      { game: 'g', snap: 1, slide: 'left', hash: 'left' },
      { game: 'g', snap: 2, slide: 'left', hash: 'left' },
    ]);
    const second = filmFromRecords([
      { game: 'g', snap: 2, slide: 'man', hash: 'left' },
      { game: 'g', snap: 1, slide: 'right', hash: 'left' },
      { game: 'g', snap: 9, slide: 'right', hash: 'left' },
    ]);
    const result = compareCharts(first, second);
    expect(result).toMatchObject({
      kind: 'compared',
      matched: 2,
      onlyFirst: 0,
      onlySecond: 1,
      fields: [{ column: 'slide' }, { column: 'hash' }],
    });
    expect(result.kind === 'compared' && result.fields[0]?.disputes).toEqual([
      { first: 'left', second: 'right', snaps: 1 },
      { first: 'left', second: 'man', snaps: 1 },
    ]);
  });

  it('matches by the snap number alone when each chart holds one game, whatever it is called', () => {
    const first = filmFromRecords([{ game: 'week 3', snap: 1, hash: 'left' }]);
    const second = filmFromRecords([{ game: 'w3', snap: 1, hash: 'left' }]);
    expect(compareCharts(first, second)).toMatchObject({ matchedBy: 'snap', matched: 1 });
    const two = filmFromRecords([
      { game: 'week 3', snap: 1, hash: 'left' },
      { game: 'week 4', snap: 1, hash: 'right' },
    ]);
    expect(compareCharts(two, first)).toMatchObject({ matchedBy: 'game_and_snap', matched: 1, onlyFirst: 1 });
  });

  it('says why charts without snap numbers, or of other games, cannot be compared', () => {
    const numbered = filmFromRecords([{ game: 'g', snap: 1 }]);
    const unnumbered = filmFromRecords([{ game: 'g', down: 1 }]);
    for (const [first, second, chart] of [
      [numbered, unnumbered, 'second'],
      [unnumbered, numbered, 'first'],
    ] as const) {
      expect(compareCharts(first, second)).toEqual({ kind: 'no_snap_numbers', chart });
    }
    expect(compareCharts(numbered, filmFromRecords([{ game: 'g', snap: 7 }]))).toEqual({ kind: 'no_snap_in_both' });
  });

  it('a chart agrees fully with itself, and the order of the charts changes no count', () => {
    const word = fc.option(fc.constantFrom('left', 'right', 'man'), { nil: undefined });
    fc.assert(
      fc.property(fc.array(fc.tuple(word, word), { minLength: 1, maxLength: 20 }), (pairs) => {
        const [first, second] = chartsOf('slide', pairs);
        const own = compareCharts(first, first);
        if (own.kind === 'compared') for (const field of own.fields) expect(field.agreed.count).toBe(field.both);
        const there = fieldsOf([first, second]).map(({ column, agreed }) => [column, agreed]);
        const back = fieldsOf([second, first]).map(({ column, agreed }) => [column, agreed]);
        expect(there).toEqual(back);
      }),
      { numRuns: 60 },
    );
  });
});
