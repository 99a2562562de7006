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
    const { rows: kept, notes } = countsBesideFilm(rows, { opponent: 'Harrow Creek', others: ['LARKMOOR', 'Alder'] });
    expect(kept).toEqual([tally('Stonewater', 12)]);
    expect(notes).toEqual([
      'the tallies of larkmoor (35 snaps) are left out: its film is here and counts, and no snap may count twice',
    ]);
  });

  it("of this week's opponent are left out, whatever film there is", () => {
    const { rows, notes } = countsBesideFilm([tally('Harrow  Creek', 9)], { opponent: 'harrow creek', others: [] });
    expect(rows).toEqual([]);
    expect(notes.join()).toContain("this week's opponent is forecast from its film");
  });

  it('keep every tally of an offense without film, and no tally of one with it', () => {
    const name: fc.Arbitrary<string> = fc.constantFrom('Alder', 'Larkmoor', 'Stonewater', 'Fenwick');
    const tallies = fc.array(fc.record({ name, count: fc.nat(50) }), { maxLength: 12 });
    fc.assert(
      fc.property(tallies, fc.uniqueArray(name), (drawn, others) => {
        const all = drawn.map((one) => tally(one.name, one.count));
        const { rows, notes } = countsBesideFilm(all, { opponent: 'Nobody', others });
        const free = all.filter(({ offense }) => !others.includes(offense));
        expect(countedSnaps(rows)).toBe(countedSnaps(free));
        expect(rows.filter(({ offense }) => others.includes(offense))).toEqual([]);
        expect(notes).toHaveLength(
          new Set(all.map(({ offense }) => offense).filter((one) => others.includes(one))).size,
        );
      }),
      { numRuns: 60 },
    );
  });
});
