import { describe, expect, it } from 'vitest';
import { FILM_COLUMNS } from '../../src/game/columns.ts';
import { createNumbers, numbersLike, widestOf } from '../../src/game/number-entries.ts';

const NUMBERS = FILM_COLUMNS.filter(({ kind }) => kind === 'number');

/** Every number a column may hold: by its least, most and decimals; clock and field by the rules of the game. */
function valuesOf({ cell }: (typeof NUMBERS)[number]): number[] {
  const [least, most, steps] = cell.form === 'number' ? [cell.least, cell.most, 10 ** cell.decimals] : [0, 900, 1];
  return Array.from(
    { length: Math.round((most - least) * steps) + 1 },
    (_, i) => Math.round(least * steps + i) / steps,
  );
}

describe('createNumbers', () => {
  it.each(NUMBERS)('keeps every value $name may have, and not charted, exactly', (column) => {
    const values = [...valuesOf(column), Number.NaN];
    const entries = createNumbers(column.name, values.length);
    entries.set(values);
    expect([...entries]).toEqual(values);
  });

  it('takes 32 bits for whole numbers (IEEE 754-2019 table 3.5: 24 bits of precision) and 64 for decimals', () => {
    expect(createNumbers('gain', 1).BYTES_PER_ELEMENT).toBe(4);
    expect(createNumbers('time_to_throw', 1).BYTES_PER_ELEMENT).toBe(8);
    expect(NUMBERS.length).toBeGreaterThan(10);
  });
});

describe('numbersLike and widestOf', () => {
  it('make room for whatever any of the given entries hold', () => {
    const [whole, any] = [new Float32Array([3]), new Float64Array([2.35])];
    expect(numbersLike(widestOf([whole, whole]), 2)).toEqual(new Float32Array(2));
    expect(numbersLike(widestOf([whole, any]), 2)).toEqual(new Float64Array(2));
    expect(numbersLike(widestOf([]), 1)).toEqual(new Float64Array(1));
  });
});
