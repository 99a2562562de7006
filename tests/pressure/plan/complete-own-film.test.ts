import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { filmFromRecords, textAt } from '../../../src/game/film.ts';
import { defenseSchema } from '../../../src/game/short-form/defense-schema.ts';
import { completeOwnFilm, joinOwnFilm } from '../../../src/pressure/plan/complete-own-film.ts';

const library = defenseSchema.parse(parse(readFileSync('data/demo/season/defense.yaml', 'utf8')));
const [first] = library.calls;

describe('completeOwnFilm', () => {
  it('fills what the call name says and leaves what was charted', () => {
    const film = filmFromRecords([
      { call: ` ${first!.name.toUpperCase()} ` },
      { call: first!.name, coverage: 'busted' },
    ]);
    const { chart, unknownCalls } = completeOwnFilm(film, library);
    expect([textAt(chart, 'path', 0), textAt(chart, 'family', 0), textAt(chart, 'coverage', 0)]).toEqual([
      first!.path,
      first!.family,
      first!.coverage,
    ]);
    expect(textAt(chart, 'coverage', 1)).toBe('busted');
    expect(unknownCalls).toEqual([]);
  });

  it('counts call names the library does not have and fills nothing for them', () => {
    const { chart, unknownCalls } = completeOwnFilm(
      filmFromRecords([{ call: 'Nobody' }, { call: 'Nobody' }, { path: 'x' }]),
      library,
    );
    expect(unknownCalls).toEqual([{ call: 'Nobody', snaps: 2 }]);
    expect(textAt(chart, 'family', 0)).toBeUndefined();
    expect(textAt(chart, 'path', 2)).toBe('x');
  });
});

describe('joinOwnFilm', () => {
  it('is null when no snap was played', () => {
    expect(joinOwnFilm([filmFromRecords([])])).toBeNull();
    expect(joinOwnFilm([filmFromRecords([{ call: 'a' }]), filmFromRecords([{ call: 'b' }])])?.size).toBe(2);
  });
});
