import { describe, expect, it } from 'vitest';
import { compileMenu } from '../../../src/pressure/menu/compile.ts';
import type { MenuCandidate } from '../../../src/pressure/menu/model.ts';
import { repsOfCalls, repsOfSet } from '../../../src/pressure/menu/reps.ts';
import { inputOf } from './invented-menu-week.ts';

describe('repsOfSet', () => {
  const { problem } = compileMenu(
    inputOf({
      calls: [
        { name: 'a', path: 'p', family: 'three_under', coverage: 'x', reps: 10 },
        { name: 'b', path: 'p', family: 'man_free', coverage: 'y', reps: 20 },
        { name: 'c', path: 'q', family: 'man_free', coverage: 'y', reps: 12, first: 40, installed: false },
      ],
      snaps: { first: 10 },
      net: () => 0,
    }),
  );
  const of = (...set: number[]) => set.map((c) => problem.candidates[c] as MenuCandidate);

  it('a call alone costs its reps, a new one those of a first install', () => {
    expect([0, 1, 2].map((c) => repsOfSet(of(c)))).toEqual([10, 20, 40]);
  });

  it('a shared path (0.3) and a shared coverage (0.2) are practiced once, at the costlier call', () => {
    expect(repsOfSet(of(0, 1))).toBeCloseTo(30 - 0.3 * 10, 9);
    expect(repsOfSet(of(1, 2))).toBeCloseTo(60 - 0.2 * 20, 9);
    expect(repsOfCalls(of(0, 1)).map((reps) => Math.round(reps * 1e6) / 1e6)).toEqual([7, 20]);
  });

  it('the parts of the calls sum to the set, and no call is free', () => {
    const each = repsOfCalls(of(0, 1, 2));
    expect(each.reduce((sum, reps) => sum + reps, 0)).toBeCloseTo(repsOfSet(of(0, 1, 2)), 9);
    for (const reps of each) expect(reps).toBeGreaterThan(0);
  });
});
