import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { fieldSideOf, SLIDE_DIRECTIONS, slideCodes } from '../../../src/pressure/snap/field-side.ts';

describe('fieldSideOf', () => {
  it('is the side away from the hash, and none from the middle', () => {
    expect(fieldSideOf('left')).toBe('right');
    expect(fieldSideOf('right')).toBe('left');
    expect(fieldSideOf('middle')).toBe('none');
  });
});

describe('slideCodes', () => {
  const direction = (record: SnapRecord, reference: 'back' | 'field' | 'strength') =>
    SLIDE_DIRECTIONS[slideCodes(filmFromRecords([record]), reference)[0]!];

  it('measures a slide against the back through the strength', () => {
    expect(direction({ slide: 'left', strength: 'right', back_spot: 'weak' }, 'back')).toBe('to');
    expect(direction({ slide: 'full_left', strength: 'left', back_spot: 'weak' }, 'back')).toBe('away');
    expect(direction({ slide: 'right', strength: 'right', back_spot: 'strong' }, 'back')).toBe('to');
  });

  it('measures a slide against the wide side and the strength', () => {
    expect(direction({ slide: 'right', hash: 'left' }, 'field')).toBe('to');
    expect(direction({ slide: 'full_left', hash: 'left' }, 'field')).toBe('away');
    expect(direction({ slide: 'left', strength: 'right' }, 'strength')).toBe('away');
  });

  it('has no direction without a slide or without a side to measure against', () => {
    expect(direction({ slide: 'man', strength: 'right' }, 'strength')).toBeUndefined();
    expect(direction({ strength: 'right' }, 'strength')).toBeUndefined();
    expect(direction({ slide: 'left', hash: 'middle' }, 'field')).toBeUndefined();
    expect(direction({ slide: 'left', strength: 'right', back_spot: 'behind' }, 'back')).toBeUndefined();
    expect(direction({ slide: 'left', strength: 'none', back_spot: 'weak' }, 'back')).toBeUndefined();
  });

  it('swaps with the picture: mirrored snaps keep their direction', () => {
    const snap = { slide: 'left', strength: 'right', back_spot: 'weak', hash: 'left' } as const;
    const mirrored = { slide: 'right', strength: 'left', back_spot: 'weak', hash: 'right' } as const;
    for (const reference of ['back', 'field', 'strength'] as const) {
      expect(direction(mirrored, reference)).toBe(direction(snap, reference));
    }
  });
});
