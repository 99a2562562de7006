import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sprintProfile, sprintSeconds, sprintYards } from '../../../src/pressure/protection/sprint.ts';

const man = { group: 'secondary', speed: 'average' } as const;
const college = sprintProfile('college', man);

describe('sprintSeconds', () => {
  it.each([
    {
      what: 'college, 10 yd',
      level: 'college',
      yards: 10,
      seconds: 1.78,
      within: 0.11,
      source:
        'Brechue, Mayhew and Piper 2010, Characteristics of sprint performance in college football players, n = 61',
    },
    {
      what: 'college, 40 yd',
      level: 'college',
      yards: 40,
      seconds: 5.18,
      within: 0.35,
      source:
        'Brechue, Mayhew and Piper 2010, Characteristics of sprint performance in college football players, n = 61',
    },
    {
      what: 'pro free safety, 40 yd',
      level: 'pro',
      yards: 40,
      seconds: 4.57,
      within: 0.05,
      source: 'averages of the league combine, from memory',
    },
    { what: 'pro safety, 10 yd', level: 'pro', yards: 10, seconds: 1.55, within: 0.03, source: 'from memory' },
  ] as const)('$what in $seconds s ($source)', ({ level, yards, seconds, within }) => {
    expect(Math.abs(sprintSeconds(yards, sprintProfile(level, man)) - seconds)).toBeLessThanOrEqual(within);
  });

  it('reaches the published peak of 9.16 yd/s by 18 m to within a tenth of a yard a second', () => {
    // Source: Brechue, Mayhew, Piper 2010: peak interval velocity 8.38 m/s by 18 m.
    const seconds = sprintSeconds(18 / 0.9144, college);
    const speed = (sprintYards(seconds + 1e-6, college) - sprintYards(seconds, college)) / 1e-6;
    expect(speed).toBeGreaterThan(0.95 * (8.38 / 0.9144));
    expect(speed).toBeLessThan(1.01 * (8.38 / 0.9144));
  });

  it('is the inverse of the distance run', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (yards, start) => {
          expect(sprintYards(sprintSeconds(yards, college, start), college, start)).toBeCloseTo(yards, 8);
        },
      ),
    );
  });

  it('is shorter with a running start and for a faster man', () => {
    const fast = sprintProfile('high_school', { group: 'line', speed: 'fast' });
    const slow = sprintProfile('high_school', { group: 'line', speed: 'slow' });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (yards) => {
        expect(sprintSeconds(yards, college, 2)).toBeLessThan(sprintSeconds(yards, college));
        expect(sprintSeconds(yards, fast)).toBeLessThan(sprintSeconds(yards, slow));
      }),
    );
  });

  it('is 0 for no distance', () => {
    expect(sprintSeconds(0, college)).toBe(0);
  });
});
