import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { countsBesideFilm } from '../../../../src/pressure/forecast/counts/beside-film.ts';
import { type CountRow, countedSnaps } from '../../../../src/pressure/forecast/counts/count-row.ts';

const tally = (offense: string, count: number): CountRow => ({
  ...{ offense, situation: 'first_ten', state: 'normal', target: 'snap', class: 'any' },
  count,
});

describe('tallies beside film', () => {
  it('of an offense on film are left out and named with their snaps', () => {
    const rows = [tally('Larkmoor', 30), tally('Stonewater', 12), tally('larkmoor ', 5)];
    const { rows: kept, leftOut } = countsBesideFilm(rows, { opponent: 'Harrow Creek', others: ['LARKMOOR', 'Alder'] });
    expect(kept).toEqual([tally('Stonewater', 12)]);
    expect(leftOut).toEqual([{ offense: 'larkmoor', snaps: 35, why: 'on_film' }]);
  });

  it("of this week's opponent are left out, whatever film there is", () => {
    const { rows, leftOut } = countsBesideFilm([tally('Harrow  Creek', 9)], { opponent: 'harrow creek', others: [] });
    expect(rows).toEqual([]);
    expect(leftOut).toEqual([{ offense: 'Harrow  Creek', snaps: 9, why: 'opponent' }]);
  });

  it('keep every tally of an offense without film, and no tally of one with it', () => {
    const name: fc.Arbitrary<string> = fc.constantFrom('Alder', 'Larkmoor', 'Stonewater', 'Fenwick');
    const tallies = fc.array(fc.record({ name, count: fc.nat(50) }), { maxLength: 12 });
    fc.assert(
      fc.property(tallies, fc.uniqueArray(name), (drawn, others) => {
        const all = drawn.map((one) => tally(one.name, one.count));
        const { rows, leftOut } = countsBesideFilm(all, { opponent: 'Nobody', others });
        const free = all.filter(({ offense }) => !others.includes(offense));
        expect(countedSnaps(rows)).toBe(countedSnaps(free));
        expect(rows.filter(({ offense }) => others.includes(offense))).toEqual([]);
        expect(leftOut).toHaveLength(
          new Set(all.map(({ offense }) => offense).filter((one) => others.includes(one))).size,
        );
      }),
      { numRuns: 60 },
    );
  });
});
