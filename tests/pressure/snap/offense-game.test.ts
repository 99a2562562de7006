import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, joinFilms, numberAt, type SnapRecord, textAt } from '../../../src/game/film.ts';
import { offenseGames } from '../../../src/pressure/snap/offense-game.ts';

const record: fc.Arbitrary<SnapRecord> = fc.record(
  {
    // An offense may be called as a file is: then it is that file's offense.
    offense: fc.constantFrom('Far', 'Near', 'b.csv'),
    game: fc.constantFrom('one', 'two'),
    week: fc.integer({ min: 1, max: 3 }),
  },
  { requiredKeys: [] },
);
const sheet = fc.array(record, { maxLength: 12 });

describe('offenseGames', () => {
  it('puts together the snaps of one offense in one game, those without an offense under their file', () => {
    fc.assert(
      fc.property(sheet, sheet, (first, second) => {
        const chart = joinFilms([filmFromRecords(first, 'a.csv'), filmFromRecords(second, 'b.csv')]);
        const namesOf = (i: number) => [
          textAt(chart, 'offense', i) ?? (i < first.length ? 'a.csv' : 'b.csv'),
          textAt(chart, 'game', i) ?? '',
        ];
        const games = offenseGames(chart);
        for (const { offense, game, rows } of games) for (const i of rows) expect(namesOf(i)).toEqual([offense, game]);
        expect(games.flatMap(({ rows }) => rows).sort((a, b) => a - b)).toEqual([...Array(chart.size).keys()]);
        expect(new Set(games.map(({ offense, game }) => JSON.stringify([offense, game]))).size).toBe(games.length);
      }),
      { numRuns: 200 },
    );
  });

  it('orders games by the week of their first snap with a week, those without one last', () => {
    fc.assert(
      fc.property(sheet, (records) => {
        const chart = filmFromRecords(records);
        const games = offenseGames(chart);
        for (const { week, rows } of games) {
          const weeks = rows.flatMap((i) => numberAt(chart, 'week', i) ?? []);
          expect(week).toBe(weeks[0] ?? Number.POSITIVE_INFINITY);
        }
        const weeks = games.map(({ week }) => week);
        expect(weeks).toEqual([...weeks].sort((a, b) => (a === b ? 0 : a - b)));
      }),
      { numRuns: 100 },
    );
  });
});
