import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchProtection, unblockedArrival } from '../../../src/pressure/protection/protection.ts';
import { meetProtection } from '../../../src/pressure/protection/protection-meeting.ts';
import { PROTECTIONS, type ProtectionPicture } from '../../../src/pressure/protection/protection-result.ts';
import { protectionWords } from '../../../src/report/words/protection-words.ts';
import { demoCall, demoDefense } from '../demo-defense.ts';

const HALF_AWAY: ProtectionPicture = { protection: 'half_slide_covered', slide: 'far', back: 'in' };
const OUT_AWAY: ProtectionPicture = { protection: 'five_man_slide', slide: 'far', back: 'out' };
const match = (name: string, picture: ProtectionPicture) => matchProtection(demoCall(name), demoDefense, picture);
const fateOf = (name: string, picture: ProtectionPicture, role: string) =>
  match(name, picture).rushers.find((rusher) => rusher.role === role)?.fate;

describe('matchProtection, scenarios (common practice, no source)', () => {
  it('the add-on frees the middle safety against six when he is sent opposite the turn', () => {
    expect(fateOf('Hackle Extra', HALF_AWAY, 'safety_middle')).toBe('free');
    expect(protectionWords(match('Hackle Extra', HALF_AWAY), demoDefense.roles)).toBe(
      'Middle safety joins as the seventh and comes free through the near B gap: they keep six and slide far',
    );
  });

  it('the add-on moves to the other side when they turn toward it, and has a longer way', () => {
    const away = match('Hackle Extra', HALF_AWAY).rushers.find(({ role }) => role === 'safety_middle');
    const toward = match('Hackle Extra', { ...HALF_AWAY, slide: 'near' }).rushers.find(
      ({ role }) => role === 'safety_middle',
    );
    expect(away?.lane).toBe('near_B');
    expect(toward?.lane).toBe('far_D');
    expect(toward?.arrival).toBeGreaterThan(away?.arrival ?? Number.NaN);
  });

  it('the add-on does not come when the back is out, and comes as one of eight when a second man stays in', () => {
    expect(match('Hackle Extra', OUT_AWAY).added).toEqual([]);
    expect(match('Hackle Extra', { ...HALF_AWAY, protection: 'seven_man' }).added).toEqual([
      'safety_middle',
      'safety_boundary',
    ]);
  });

  it('the same six men free nobody against six when nobody is added', () => {
    expect(match('Hackle Peel', HALF_AWAY).free).toBe(0);
  });

  it('six rushers free one when the back is out, and none when the edge takes him wide', () => {
    expect(match('Anvil Peel', OUT_AWAY).free).toBe(1);
    const wide = match('Anvil Peel', { ...OUT_AWAY, back: 'wide_near' });
    expect(wide.peeled).toEqual(['nickel']);
    expect(wide.rushers).toHaveLength(5);
    expect(wide.free).toBe(0);
  });

  it('a back who goes wide to the far side is taken by the far edge', () => {
    expect(match('Anvil Peel', { ...OUT_AWAY, back: 'wide_far' }).peeled).toEqual(['will']);
  });

  it('a call without a peel man sends everyone, wherever the back goes', () => {
    expect(match('Anvil Zero', { ...OUT_AWAY, back: 'wide_near' }).rushers).toHaveLength(6);
  });

  it('a safety from depth is nobody’s in a man protection', () => {
    expect(fateOf('Funnel Split', { protection: 'man_dual_read', slide: 'none', back: 'in' }, 'safety_middle')).toBe(
      'free',
    );
  });

  it('five rushers free nobody against six or more protectors', () => {
    for (const protection of ['half_slide_covered', 'seven_man', 'max'] as const) {
      expect(match('Latch Roof', { ...HALF_AWAY, protection }).free).toBe(0);
    }
  });

  it('four rushers free nobody against five', () => {
    expect(match('Stay Roof', OUT_AWAY).free).toBe(0);
  });
});

describe('matchProtection', () => {
  it('takes the guard away from the slide as uncovered behind a front with nobody over him', () => {
    expect(match('Anvil Peel', HALF_AWAY).picture.protection).toBe('half_slide_uncovered');
  });

  it('takes him as covered when the call puts a man on the line over him', () => {
    const call = demoCall('Anvil Peel');
    const rush = call.rush.map((rusher) =>
      rusher.role === 'mike' ? { ...rusher, from: { lateral: 1.5, depth: 1 } } : rusher,
    );
    const found = matchProtection({ ...call, rush }, demoDefense, HALF_AWAY);
    expect(found.picture.protection).toBe('half_slide_covered');
  });

  it('says who is free and why, in words, for every call against every picture', () => {
    for (const call of demoDefense.calls) {
      for (const protection of PROTECTIONS) {
        const found = matchProtection(call, demoDefense, { protection, slide: 'far', back: 'in' });
        const words = protectionWords(found, demoDefense.roles);
        expect(words).toMatch(/: (they keep|five block)/);
        expect(words.includes('comes free')).toBe(found.free > found.soft);
      }
    }
  });

  it('a blocked man is never shown home before the same man would be free', () => {
    for (const call of demoDefense.calls) {
      const free = new Map(
        meetProtection(call, demoDefense.roles, HALF_AWAY).rushers.map((r) => [
          r.role,
          unblockedArrival(r, 'high_school', 7),
        ]),
      );
      for (const { role, arrival } of matchProtection(call, demoDefense, HALF_AWAY).rushers) {
        expect(arrival).toBeGreaterThanOrEqual(free.get(role) ?? Number.NaN);
      }
    }
  });

  it('one more rusher never frees fewer, for every call and picture', () => {
    const pictures = fc.record({
      protection: fc.constantFrom(...PROTECTIONS),
      slide: fc.constantFrom('near' as const, 'far' as const, 'none' as const),
      back: fc.constantFrom('in' as const, 'out' as const, 'wide_near' as const, 'wide_far' as const),
    });
    // A cover man who adds late is a rusher already, so calls with one are left out.
    const calls = demoDefense.calls.filter(({ cover }) => !cover.some(({ adds }) => adds));
    fc.assert(
      fc.property(fc.constantFrom(...calls), pictures, fc.nat(3), (call, picture, pick) => {
        const spare = call.cover[pick];
        if (!spare) throw new Error(`${call.name} covers with fewer than four`);
        const more = { role: spare.role, lane: 'far_D' as const, way: 'straight' as const, peels: false };
        const added = { ...call, rush: [...call.rush, more], cover: call.cover.filter((man) => man !== spare) };
        const before = meetProtection(call, demoDefense.roles, picture).free;
        expect(meetProtection(added, demoDefense.roles, picture).free).toBeGreaterThanOrEqual(before);
      }),
    );
  });
});
