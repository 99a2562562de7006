import { describe, expect, it } from 'vitest';
import type { CallLibrary } from '../../../src/game/call-library.ts';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { ANSWERS, FAMILIES } from '../../../src/game/vocabulary.ts';
import { cellIndex } from '../../../src/pressure/evidence/evidence-cell.ts';
import { countOwnFilm } from '../../../src/pressure/evidence/evidence-own-film.ts';
import { inventedSettings } from '../invented-offense.ts';

const CUTS = inventedSettings().situations;
const count = (records: readonly SnapRecord[], library: CallLibrary | null = null) =>
  countOwnFilm(filmFromRecords(records), library, CUTS);
const SACK: SnapRecord = { family: 'hot', play_kind: 'dropback', down: 3, to_go: 8, gain: -7, result: 'sack' };

describe('our own film', () => {
  it('counts every snap one, in its own cell and kind', () => {
    const { counts, snaps, unread } = count([SACK, SACK, { ...SACK, family: 'zero' }]);
    const [hot, zero] = [FAMILIES.indexOf('hot'), FAMILIES.indexOf('zero')];
    const dropback = ANSWERS.indexOf('dropback');
    expect(counts[cellIndex(hot, dropback) * 5]).toBe(2);
    expect(counts[cellIndex(zero, dropback) * 5]).toBe(1);
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(3);
    expect([snaps[hot], snaps[zero], unread]).toEqual([2, 1, 0]);
  });

  it('splits a bare pass over the pass answers, still as one snap', () => {
    const { counts, snaps } = count([{ ...SACK, play_kind: 'pass', result: 'complete', gain: 5 }]);
    expect(counts.reduce((sum, n) => sum + n, 0)).toBeCloseTo(1, 12);
    expect(snaps[FAMILIES.indexOf('hot')]).toBe(1);
    expect(counts[cellIndex(FAMILIES.indexOf('hot'), ANSWERS.indexOf('run')) * 5 + 1]).toBe(0);
  });

  it('leaves out and counts what cannot be read: no family, no outcome, a penalty, no play kind', () => {
    const { family: _, ...unnamed } = SACK;
    const penalty = { ...SACK, result: 'penalty' };
    const blank = { family: 'hot', down: 1, to_go: 10, gain: 3 };
    expect(count([unnamed, penalty, blank, SACK]).unread).toBe(3);
  });

  it('knows the family of a charted call from the library', () => {
    const { family: _, ...called } = { ...SACK, call: 'Torch' };
    const library = { calls: [{ name: 'Torch', family: 'zero' }] } as unknown as CallLibrary;
    expect(count([called]).unread).toBe(1);
    expect(count([called], library).snaps[FAMILIES.indexOf('zero')]).toBe(1);
  });

  it('is empty when there is none', () => {
    const { counts, unread } = countOwnFilm(null, null, CUTS);
    expect([counts.every((n) => n === 0), unread]).toEqual([true, 0]);
  });
});
