import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readableSnaps, uncountedCalls } from '../../../src/pressure/menu/habits.ts';

describe('readableSnaps', () => {
  it.each([
    { cap: 0.5, snaps: 5, source: '.5^4 = .0625, .5^5 = .031 (arithmetic)' },
    { cap: 0.7, snaps: 9, source: '.7^8 = .058, .7^9 = .040 (arithmetic)' },
    { cap: 0.9, snaps: 29, source: '.9^28 = .052, .9^29 = .047 (arithmetic)' },
    { cap: 0.05, snaps: 1, source: 'one snap has the cap as its chance (arithmetic)' },
    { cap: 0, snaps: 1, source: 'impossible under the cap (arithmetic)' },
  ])('is $snaps at a cap of $cap: $source', ({ cap, snaps }) => {
    expect(readableSnaps(cap)).toBe(snaps);
  });

  it('has no end at a cap of 1', () => {
    expect(readableSnaps(1)).toBe(Number.POSITIVE_INFINITY);
    expect(uncountedCalls(1, 0)).toBe(0);
  });
});

describe('uncountedCalls', () => {
  it('a looser cap never counts more, and more film never counts less', () => {
    const place = fc.record({ cap: fc.double({ min: 0, max: 0.99, noNaN: true }), snaps: fc.nat(40) });
    fc.assert(
      fc.property(place, place, (a, b) => {
        const [tight, loose] = [Math.min(a.cap, b.cap), Math.max(a.cap, b.cap)];
        expect(uncountedCalls(loose, a.snaps)).toBeGreaterThanOrEqual(uncountedCalls(tight, a.snaps));
        const [less, more] = [Math.min(a.snaps, b.snaps), Math.max(a.snaps, b.snaps)];
        expect(uncountedCalls(a.cap, less)).toBeGreaterThanOrEqual(uncountedCalls(a.cap, more));
      }),
      { numRuns: 100, seed: 1 },
    );
  });
});
