import { describe, expect, it } from 'vitest';
import type { CallFit } from '../../../src/pressure/fit/fit-result.ts';
import { type BestCallsInput, bestCalls } from '../../../src/pressure/halftime/best-calls.ts';
import type { CallMark } from '../../../src/pressure/halftime/first-half-marks.ts';
import type { MenuCall } from '../../../src/pressure/menu/result.ts';

const spread = (mean: number) => ({ mean, low: mean, high: mean });
const netOf = (call: string, net: number): CallFit => ({
  call,
  family: 'hot',
  situation: 'third_long',
  right: spread(0),
  neutral: spread(0),
  wrong: spread(0),
  unknown: 0,
  net: spread(net),
});
const carried = (call: string, share: number): MenuCall => ({
  call,
  family: 'hot',
  path: 'rake',
  coverage: 'hot three',
  mix: [{ situation: 'third_long', share }],
  expectedCalls: 3,
  reps: 10,
  isNew: false,
  right: 0,
  wrong: 0,
});
const mark = (name: string, situation: string, nets: Record<string, number>): CallMark => ({
  name,
  situation,
  nets: new Map(Object.entries(nets)),
});

/** Third and long, where Sunday calls Rake most, then Torch, and never Latch. */
function thirdLong(halftime: readonly [number, number], marks: readonly CallMark[] = []) {
  const input: BestCallsInput = {
    situations: [
      {
        id: 'third_long',
        expectedSnaps: 6,
        rate: 0.4,
        baseShare: 0.6,
        worst: { answer: 'screen', points: 0 },
      },
    ],
    menu: [carried('Torch', 0.1), carried('Rake', 0.3), carried('Latch', 0.004)],
    sunday: [netOf('Rake', 0.2), netOf('Torch', 0.1), netOf('Latch', 0.9)],
    halftime: [netOf('Rake', halftime[0]), netOf('Torch', halftime[1]), netOf('Latch', 0.9)],
    marks,
  };
  const [only] = bestCalls(input);
  return only;
}

describe('the calls of a situation in tonight’s order', () => {
  it('is the sheet’s own order where tonight’s fit does not turn it by half a snap in ten', () => {
    expect(thirdLong([0.2, 0.1])?.calls.map(({ call }) => call)).toEqual(['Rake', 'Torch']);
    expect(thirdLong([0.1, 0.14])?.calls.map(({ call }) => call)).toEqual(['Rake', 'Torch']);
    expect(thirdLong([0.1, 0.14])?.overtakings).toEqual([]);
  });

  it('puts a call ahead that tonight is right on half a snap in ten more, and names the snaps of the situation', () => {
    const marks = [
      mark('4', 'third_long', { Rake: -1, Torch: 1 }),
      mark('7', 'third_long', { Rake: 1, Torch: 1 }),
      mark('9', 'first_ten', { Rake: -1, Torch: 0 }),
    ];
    const found = thirdLong([0, 0.1], marks);
    expect(found?.calls.map(({ call }) => call)).toEqual(['Torch', 'Rake']);
    expect(found?.overtakings).toEqual([{ call: 'Torch', over: 'Rake', snaps: ['4'] }]);
  });

  it('names snaps of other situations where none of this one did it', () => {
    const found = thirdLong([0, 0.1], [mark('9', 'first_ten', { Rake: -1, Torch: 0 })]);
    expect(found?.overtakings[0]?.snaps).toEqual(['9']);
  });

  it('keeps Sunday’s order between calls that Sunday’s limits, and not fit, put so', () => {
    // Latch fits best by far, yet Sunday's sheet never calls it there: it is not named.
    expect(thirdLong([0.2, 0.1])?.calls.map(({ call }) => call)).not.toContain('Latch');
  });
});
