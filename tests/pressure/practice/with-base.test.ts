import { expect, it } from 'vitest';
import type { ChosenMenu } from '../../../src/pressure/practice/script-input.ts';
import { withBase } from '../../../src/pressure/practice/with-base.ts';
import { libraryOf } from '../menu/invented-menu-week.ts';

const pressure = { name: 'Hot', path: 'd', family: 'hot', coverage: 'hot' } as const;
const base = ['Stay', 'Stay Nickel'].map((name) => ({ name, path: 'stay', family: 'base', coverage: 'roof' }) as const);
const menu = {
  calls: [{ call: 'Hot', family: 'hot' }],
  situations: [
    { id: 'first_ten', expectedSnaps: 20, baseShare: 0.6 },
    { id: 'third_long', expectedSnaps: 10, baseShare: 0.3 },
  ],
} as unknown as ChosenMenu;

it.each([1, 2])('gives %i base calls what the menu leaves to the base, no more and no less', (count) => {
  const { calls } = withBase(menu, libraryOf([pressure, ...base.slice(0, count)]));
  const added = calls.filter(({ family }) => family === 'base');
  expect(added.map(({ call }) => call)).toEqual(base.slice(0, count).map(({ name }) => name));
  for (const { id, baseShare } of menu.situations) {
    const shares = added.map(({ mix }) => mix.find(({ situation }) => situation === id)?.share ?? Number.NaN);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(baseShare, 12);
    expect(new Set(shares).size).toBe(1);
  }
  // 20 snaps at .6 and 10 at .3 are 15 snaps of base.
  expect(added.reduce((sum, { expectedCalls }) => sum + expectedCalls, 0)).toBeCloseTo(15, 12);
  expect(calls[0]).toBe(menu.calls[0]);
});

it('leaves a menu with a base call, and a library without one, as they are', () => {
  const withOne = { ...menu, calls: [{ call: 'Stay', family: 'base' }] } as unknown as ChosenMenu;
  expect(withBase(withOne, libraryOf([pressure, ...base]))).toBe(withOne);
  expect(withBase(menu, libraryOf([pressure]))).toBe(menu);
});
