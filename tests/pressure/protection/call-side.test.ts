import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SENT_FROM } from '../../../src/game/call-library.ts';
import { nearSide } from '../../../src/pressure/protection/call-side.ts';

describe('nearSide', () => {
  // Field is the wide side, boundary the short side (NFL Football Operations, "Terms glossary", hashmarks; from memory); middle has neither.
  it.each([
    { sentFrom: 'field', look: { hash: 'left' }, side: 'right' },
    { sentFrom: 'boundary', look: { hash: 'left' }, side: 'left' },
    { sentFrom: 'field', look: { hash: 'middle' }, side: null },
    { sentFrom: 'field', look: {}, side: null },
    { sentFrom: 'strength', look: { strength: 'left' }, side: 'left' },
    { sentFrom: 'weak', look: { strength: 'left' }, side: 'right' },
    { sentFrom: 'weak', look: { strength: 'none' }, side: null },
    { sentFrom: 'back', look: { strength: 'right', backSpot: 'weak' }, side: 'left' },
    { sentFrom: 'away_from_back', look: { strength: 'right', backSpot: 'weak' }, side: 'right' },
    { sentFrom: 'back', look: { strength: 'right', backSpot: 'behind' }, side: null },
    { sentFrom: 'either', look: { hash: 'left', strength: 'left', backSpot: 'strong' }, side: null },
  ] as const)('a call from $sentFrom with $look comes from $side', ({ sentFrom, look, side }) => {
    expect(nearSide(sentFrom, look)).toBe(side);
  });

  it('turns with the mirrored look', () => {
    const turn = { left: 'right', right: 'left', middle: 'middle', none: 'none' } as const;
    const looks = fc.record({
      hash: fc.constantFrom('left' as const, 'middle' as const, 'right' as const),
      strength: fc.constantFrom('left' as const, 'right' as const, 'none' as const),
      backSpot: fc.constantFrom('strong', 'weak', 'behind', 'none'),
    });
    fc.assert(
      fc.property(fc.constantFrom(...SENT_FROM), looks, (sentFrom, look) => {
        const side = nearSide(sentFrom, look);
        const turned = nearSide(sentFrom, { ...look, hash: turn[look.hash], strength: turn[look.strength] });
        expect(turned).toBe(side === null ? null : turn[side]);
      }),
    );
  });
});
