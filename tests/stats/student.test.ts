import { describe, expect, it } from 'vitest';
import { StatsInputError } from '../../src/stats/errors.ts';
import { studentWidth } from '../../src/stats/student.ts';

describe('studentWidth', () => {
  it.each([
    { level: 0.95, degrees: 1, width: 12.706 },
    { level: 0.95, degrees: 5, width: 2.571 },
    { level: 0.95, degrees: 9, width: 2.262 },
    { level: 0.9, degrees: 10, width: 1.812 },
    { level: 0.99, degrees: 30, width: 2.75 },
  ])('is $width for $level at $degrees degrees, as in the table', ({ level, degrees, width }) => {
    // Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t.
    expect(studentWidth(level, degrees)).toBeCloseTo(width, 3);
  });

  it('comes down to the normal width when nothing is missing', () => {
    expect(studentWidth(0.95, 1e6)).toBeCloseTo(1.959964, 4);
  });

  it.each([
    [1, 5],
    [0, 5],
    [0.95, 0],
    [Number.NaN, 5],
  ])('refuses level %d with %d degrees', (level, degrees) => {
    expect(() => studentWidth(level, degrees)).toThrow(StatsInputError);
  });
});
