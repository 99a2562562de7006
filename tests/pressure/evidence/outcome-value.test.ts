import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { FAMILIES } from '../../../src/game/families.ts';
import { outcomePremiums, outcomeValues } from '../../../src/pressure/evidence/outcome-value.ts';

describe('values of outcome kinds', () => {
  it.each([
    {
      answer: 'dropback',
      down: 3,
      kind: 3,
      value: 3.2356,
      source: 'nflverse and FTN Data via nflverse 2022, values by answer, dropback 3rd explosive',
    },
    {
      answer: 'screen',
      down: 2,
      kind: 0,
      value: -1.0938,
      source: 'nflverse and FTN Data via nflverse 2022, values by answer, screen 2nd loss',
    },
    {
      answer: 'quick',
      down: 1,
      kind: 2,
      value: 0.4511,
      source: 'nflverse and FTN Data via nflverse 2022, values by answer, quick 1st gain',
    },
    {
      answer: 'run',
      down: 4,
      kind: 1,
      value: -3.3075,
      source: 'nflverse and FTN Data via nflverse 2022, values by down, run 4th stop',
    },
    { answer: 'quick', down: 3, kind: 0, value: -1.7657, source: 'straight 3rd loss: under 15 quick losses on 3rd' },
  ] as const)('$answer on down $down: $value', ({ answer, down, kind, value }) => {
    expect(outcomeValues(answer, down)[kind]).toBeCloseTo(value, 2);
  });

  it('rise from takeaway over loss and stop to explosive on every early down', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ANSWERS), fc.integer({ min: 1, max: 3 }), (answer, down) => {
        const [loss, stop, gain, explosive, takeaway] = outcomeValues(answer, down);
        expect(
          [takeaway, loss, stop, gain, explosive].every((value, i, all) => i === 0 || value > (all[i - 1] ?? 0)),
        ).toBe(true);
      }),
    );
  });

  it('are dearest on fourth down, where a stop hands the ball over', () => {
    for (const answer of ANSWERS) expect(outcomeValues(answer, 4)[1]).toBeLessThan(outcomeValues(answer, 3)[1] - 1);
  });
});

describe('premiums against a family', () => {
  it('are nothing on runs, for the base, and for the spy nobody charts', () => {
    for (const family of FAMILIES) expect(outcomePremiums(family, 'run')).toEqual([0, 0, 0, 0, 0]);
    for (const answer of ANSWERS) {
      expect(outcomePremiums('base', answer)).toEqual([0, 0, 0, 0, 0]);
      expect(outcomePremiums('peel_spy', answer)).toEqual([0, 0, 0, 0, 0]);
    }
  });

  it('make an explosive against zero dearer by 0.78 (open data 2019-23)', () => {
    expect(outcomePremiums('zero', 'dropback')[3]).toBeCloseTo(0.78, 2);
  });
});
