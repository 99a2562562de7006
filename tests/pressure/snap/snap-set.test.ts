import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  holds,
  intersectInto,
  members,
  sameSet,
  setHash,
  setSize,
  sharedCount,
  snapSet,
} from '../../../src/pressure/snap/snap-set.ts';

const bits = fc.array(fc.boolean(), { minLength: 1, maxLength: 130 });
const pair = bits.chain((one) =>
  fc.tuple(fc.constant(one), fc.array(fc.boolean(), { minLength: one.length, maxLength: one.length })),
);

describe('snapSet', () => {
  it('holds exactly the snaps it was told to', () => {
    fc.assert(
      fc.property(bits, (list) => {
        const set = snapSet(list.length, (i) => list[i]!);
        const chosen = list.flatMap((bit, i) => (bit ? [i] : []));
        expect(members(set)).toEqual(chosen);
        expect(setSize(set)).toBe(chosen.length);
        expect(list.every((bit, i) => holds(set, i) === bit)).toBe(true);
      }),
    );
  });

  it('intersects and counts as plain lists would', () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const [a, b] = [one, other].map((list) => snapSet(list.length, (i) => list[i]!)) as [Uint32Array, Uint32Array];
        const both = one.flatMap((bit, i) => (bit && other[i] ? [i] : []));
        const shared = a.slice();
        intersectInto(shared, a, b);
        expect(members(shared)).toEqual(both);
        expect(sharedCount(a, b)).toBe(both.length);
        expect(sameSet(a, b)).toBe(one.every((bit, i) => bit === other[i]));
      }),
    );
  });

  it('gives equal sets one hash, and neighbors another', () => {
    const set = snapSet(100, (i) => i % 3 === 0);
    expect(setHash(set)).toBe(setHash(snapSet(100, (i) => i % 3 === 0)));
    expect(setHash(set)).not.toBe(setHash(snapSet(100, (i) => i % 3 === 0 || i === 64)));
    expect(setHash(set)).not.toBe(setHash(snapSet(100, (i) => i % 3 === 1)));
  });
});
