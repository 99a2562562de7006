import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changedPlace } from '../../src/season/changed-place.ts';

const plan = { film: { snaps: 12, games: ['a', 'b'] }, cells: [{ n: 1 }, { n: 2 }], menu: null };

describe('the place where a changed file differs', () => {
  it.each<[string, unknown, string]>([
    ['a number as text', { ...plan, film: { ...plan.film, snaps: '12' } }, 'film.snaps: "12" where 12 belongs'],
    ['a missing key', { ...plan, cells: [{ n: 1 }, {}] }, 'cells[1].n: it is missing'],
    ['an emptied list', { ...plan, cells: [] }, 'cells: 0 entries where 2 belong'],
    ['a longer list', { ...plan, cells: [...plan.cells, { n: 3 }] }, 'cells[2]: it does not belong there'],
    ['another number', { ...plan, cells: [{ n: 1 }, { n: 5 }] }, 'cells[1].n: 5 where 2 belongs'],
    ['a list for an object', { ...plan, film: [] }, 'film: [] where {"snaps":12,"games":["a","b"]} belongs'],
    ['something for nothing', { ...plan, menu: {} }, 'menu: {} where null belongs'],
    ['a key of every object', { ...plan, film: { snaps: 12 } }, 'film.games: it is missing'],
    ['nothing at all', null, ': null where {"film":{"snaps":12,"games":["a","b"]},"… belongs'],
  ])('%s', (_, found, words) => expect(changedPlace(found, plan)).toBe(words));

  it('is nowhere when nothing was changed, whatever is held', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => changedPlace(structuredClone(value), value) === null));
  });

  it('is nowhere for the last digits of a number', () => expect(changedPlace([0.1 + 0.2], [0.3])).toBeNull());

  it('is found however deep the file is nested, without end', () => {
    const deep = JSON.parse(`${'['.repeat(4000)}${']'.repeat(4000)}`);
    expect(changedPlace({ ...plan, menu: deep }, plan)).toMatch(/^menu: \[\[\[/);
  });
});
