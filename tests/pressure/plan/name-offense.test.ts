import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, textAt } from '../../../src/game/film.ts';
import { offenseOf, withOffense } from '../../../src/pressure/plan/name-offense.ts';

const filmOf = (...offenses: readonly (string | undefined)[]) =>
  filmFromRecords(offenses.map((offense) => ({ down: 1, ...(offense === undefined ? {} : { offense }) })));
const namesOf = (film: Film) => Array.from({ length: film.size }, (_, i) => textAt(film, 'offense', i));

describe('the offense on film', () => {
  it('is the one named on most snaps, in whatever order they come', () => {
    expect(offenseOf(filmOf('Ash', 'Birch', 'Birch'))).toBe('Birch');
    expect(offenseOf(filmOf('Birch', 'Birch', 'Ash'))).toBe('Birch');
    expect(offenseOf(filmOf(undefined, undefined, 'Ash'))).toBe('Ash');
  });

  it('is the first of the alphabet where two are named as often, whichever came first', () => {
    expect(offenseOf(filmOf('Birch', 'Ash'))).toBe('Ash');
    expect(offenseOf(filmOf('Ash', 'Birch'))).toBe('Ash');
  });

  it('is called the opponent where no snap names one', () => {
    expect(offenseOf(filmOf(undefined, undefined))).toBe('the opponent');
  });
});

describe('a name for snaps that carry none', () => {
  it('is given to those alone', () => {
    expect(namesOf(withOffense(filmOf('Ash', undefined, 'Birch'), 'Cedar'))).toEqual(['Ash', 'Cedar', 'Birch']);
    expect(namesOf(withOffense(filmOf(undefined, undefined), 'Cedar'))).toEqual(['Cedar', 'Cedar']);
  });

  it('is one offense with the snaps that already carry it', () => {
    const film = withOffense(filmOf('Ash', undefined, 'Birch', undefined), 'Birch');
    expect(namesOf(film)).toEqual(['Ash', 'Birch', 'Birch', 'Birch']);
    const column = film.columns.offense;
    expect(column?.kind === 'code' && new Set(column.codes).size).toBe(2);
  });
});
