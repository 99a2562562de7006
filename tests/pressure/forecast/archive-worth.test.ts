import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { archiveWorth } from '../../../src/pressure/forecast/archive-worth.ts';

describe('what an archive is worth', () => {
  it('adds up what is not known: its strength, its snaps, its offenses', () => {
    const source = 'by hand: 1 / (1/1024 + 1/256 + 1/4096) = 4096 / 21';
    expect(archiveWorth(1024, { snaps: 256, offenses: 4 }), source).toBeCloseTo(4096 / 21, 9);
  });

  it('pools completely where the strength is infinite, and takes no snap as one', () => {
    expect(archiveWorth(Number.POSITIVE_INFINITY, { snaps: 3, offenses: 1 })).toBe(Number.POSITIVE_INFINITY);
    expect(archiveWorth(64, { snaps: 0, offenses: 1 })).toBe(archiveWorth(64, { snaps: 1, offenses: 1 }));
  });

  it('grows with snaps and offenses, and never beyond its strength or its snaps', () => {
    const count = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(count, count, fc.integer({ min: 1, max: 60 }), (strength, snaps, offenses) => {
        const worth = archiveWorth(strength, { snaps, offenses });
        expect(worth).toBeLessThan(Math.min(strength, snaps));
        expect(archiveWorth(strength, { snaps: snaps + 1, offenses })).toBeGreaterThan(worth);
        expect(archiveWorth(strength, { snaps, offenses: offenses + 1 })).toBeGreaterThan(worth);
      }),
    );
  });
});
