import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { LOOKS, lookCodes, RECEIVER_LOOKS, receiverCodes, receiverLookOf } from '../../../src/pressure/snap/look.ts';
import { NOT_KNOWN } from '../../../src/pressure/snap/not-known.ts';

describe('lookCodes', () => {
  it('reads the depth of the quarterback, and empty before it', () => {
    const chart = filmFromRecords([
      { quarterback_depth: 'under_center' },
      { quarterback_depth: 'pistol', back_spot: 'behind' },
      { quarterback_depth: 'shotgun', back_spot: 'none' },
      { quarterback_depth: 'shotgun', receivers: '3x2' },
      { back_spot: 'none' },
      { quarterback_depth: 'shotgun', receivers: '3x1' },
    ]);
    expect([...lookCodes(chart)].map((code) => LOOKS[code]?.id)).toEqual([
      'under_center',
      'pistol',
      'empty',
      'empty',
      'empty',
      'shotgun',
    ]);
  });

  it('is not known when neither depth nor an empty backfield was charted', () => {
    expect([...lookCodes(filmFromRecords([{ back_spot: 'weak' }, { receivers: '2x2' }, {}]))]).toEqual([
      NOT_KNOWN,
      NOT_KNOWN,
      NOT_KNOWN,
    ]);
  });
});

describe('receiverLookOf', () => {
  const source = 'common practice, no source';
  it.each([
    { receivers: '2x2', look: 'balanced', source },
    { receivers: '1x1', look: 'balanced', source },
    { receivers: '3x1', look: 'trips', source },
    { receivers: '1x3', look: 'trips', source },
    { receivers: '3x2', look: 'empty', source },
    { receivers: '2x1', look: 'other', source },
    { receivers: 'bunch', look: undefined, source },
  ])('$receivers is $look', ({ receivers, look }) => {
    expect(receiverLookOf(receivers)).toBe(look);
  });

  it('leaves a blank not known', () => {
    const codes = receiverCodes(filmFromRecords([{ receivers: '2x2' }, {}]));
    expect(RECEIVER_LOOKS[codes[0]!]?.id).toBe('balanced');
    expect(codes[1]).toBe(NOT_KNOWN);
  });
});
