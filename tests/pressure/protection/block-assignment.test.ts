import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LANES, type Lane } from '../../../src/game/call-library.ts';
import { assignBlockers } from '../../../src/pressure/protection/block-assignment.ts';
import { type CountedBy, LINE_SPOTS, type Threat } from '../../../src/pressure/protection/protection-blockers.ts';
import { PROTECTIONS, type ProtectionPicture } from '../../../src/pressure/protection/protection-result.ts';

const GAPS_IN_ORDER = ['A', 'B', 'C', 'D', 'B'] as const;
const HALF: ProtectionPicture = { protection: 'half_slide_covered', slide: 'far', back: 'in' };
const TURNED: ProtectionPicture = { protection: 'half_slide_uncovered', slide: 'far', back: 'in' };
const FIVE: ProtectionPicture = { protection: 'five_man_slide', slide: 'far', back: 'out' };
const FULL: ProtectionPicture = { protection: 'full_slide', slide: 'far', back: 'in' };
const SEVEN: ProtectionPicture = { protection: 'seven_man', slide: 'far', back: 'in' };

const threat = (lane: Lane, more: Partial<Threat> = {}): Threat => ({
  role: lane,
  lane,
  late: false,
  path: 7,
  countedBy: 'nobody',
  ...more,
});
/** Rushers on the man side (near) and the slide side (far), filling gaps from the inside out. */
const rush = (man: number, slide: number): Threat[] => [
  ...GAPS_IN_ORDER.slice(0, man).map((gap) => threat(`near_${gap}`)),
  ...GAPS_IN_ORDER.slice(0, slide).map((gap) => threat(`far_${gap}`)),
];
const lanes = (near: string, far: string): Threat[] => [
  ...[...near].map((gap) => threat(`near_${gap}` as Lane)),
  ...[...far].map((gap) => threat(`far_${gap}` as Lane)),
];
const freeLanes = (threats: Threat[], picture: ProtectionPicture): string[] => {
  const { fates } = assignBlockers(threats, picture);
  return threats.filter((_, i) => fates[i] === 'free' || fates[i] === 'late').map(({ lane }) => lane);
};
const sides = (found: string[]): string =>
  found
    .map((lane) => (lane.startsWith('near') ? 'M' : 'S'))
    .sort()
    .join('');

/**
 * Computed from the cited rules, man side near, slide side far, back to the man side: Hepola, Sliding to Protect,
 * American Football Monthly; Six-Man Slide Pass Protection and Empty Pass Protection, 2015; 5/6 Man Combo Protection,
 * coaches' association pages; Kuchar, Pressures to Attack Full-Slide Protection, 2015; 2 Under 3 Deep Overload Blitz,
 * 2019; It Really Isn't That Simple, 2020. Each cell: sides of the free men, M man side, S slide side.
 */
const TABLE = [
  { man: 3, slide: 2, half: '', five: 'M', full: '', seven: '' },
  { man: 2, slide: 3, half: '', five: '', full: '', seven: '' },
  { man: 4, slide: 1, half: 'M', five: 'MM', full: 'M', seven: '' },
  { man: 3, slide: 3, half: '', five: 'M', full: '', seven: '' },
  { man: 4, slide: 2, half: 'M', five: 'MM', full: 'M', seven: '' },
  { man: 2, slide: 4, half: 'S', five: 'S', full: 'S', seven: 'S' },
  { man: 4, slide: 3, half: 'M', five: 'MM', full: 'M', seven: '' },
  { man: 3, slide: 4, half: 'S', five: 'MS', full: 'S', seven: 'S' },
  { man: 5, slide: 2, half: 'MM', five: 'MMM', full: 'MM', seven: 'M' },
] as const;

describe('assignBlockers against the table computed from the cited rules', () => {
  it.each(TABLE)('$man on the man side, $slide on the slide side', ({ man, slide, half, five, full, seven }) => {
    const threats = rush(man, slide);
    expect(sides(freeLanes(threats, HALF))).toBe(half);
    expect(sides(freeLanes(threats, FIVE))).toBe(five);
    expect(sides(freeLanes(threats, FULL))).toBe(full);
    expect(sides(freeLanes(threats, SEVEN))).toBe(seven);
    expect(assignBlockers(threats, HALF).free).toBe(half.length);
  });

  it('the man left free is the widest of the overloaded side', () => {
    expect(freeLanes(rush(4, 2), HALF)).toEqual(['near_D']);
    expect(freeLanes(rush(2, 4), HALF)).toEqual(['far_D']);
    expect(freeLanes(rush(4, 1), FULL)).toEqual(['near_D']);
    expect(freeLanes(rush(2, 4), FULL)).toEqual(['far_D']);
  });

  // The guard away from the slide is uncovered and turns with it (It Really Isn't That Simple, 2020).
  it.each([
    { near: 'BBC', far: 'AB', free: 1, soft: 0 },
    { near: 'ABC', far: 'AB', free: 0, soft: 0 },
    { near: 'AABC', far: 'BC', free: 1, soft: 1 },
    { near: 'AABC', far: 'ABC', free: 1, soft: 0 },
    { near: 'BCD', far: 'ABC', free: 1, soft: 0 },
  ])('a turned guard: $near on the man side, $far on the slide side frees $free', ({ near, far, free, soft }) => {
    const found = assignBlockers(lanes(near, far), TURNED);
    expect(found.free).toBe(free);
    expect(found.soft).toBe(soft);
  });

  it.each([
    { what: 'a six-man half slide', picture: HALF, man: 3, slide: 3 },
    { what: 'five men', picture: FIVE, man: 2, slide: 3 },
    { what: 'seven men', picture: SEVEN, man: 4, slide: 3 },
  ])('$what holds $man on the man side and $slide on the slide side, and no more', ({ picture, man, slide }) => {
    expect(assignBlockers(rush(man, slide), picture).free).toBe(0);
    expect(assignBlockers(rush(man + 1, slide), picture).free).toBe(1);
    expect(assignBlockers(rush(man, slide + 1), picture).free).toBe(1);
  });

  it('seven rushers always free at least one against six (Hepola, Sliding to Protect)', () => {
    const seven = fc.array(fc.constantFrom(...LANES), { minLength: 7, maxLength: 8 });
    fc.assert(
      fc.property(seven, fc.constantFrom(HALF, TURNED, FULL), (found, picture) => {
        expect(
          assignBlockers(
            found.map((lane) => threat(lane)),
            picture,
          ).free,
        ).toBeGreaterThanOrEqual(1);
      }),
    );
  });
});

describe('a rusher who joins late', () => {
  // A late man through a lane with every blocker engaged is nobody's (Coming Unblocked, 2011; Wake Up, 2013).
  it('is the one left free when every blocker has a man', () => {
    const threats = [...rush(3, 3), threat('near_A', { late: true })];
    expect(assignBlockers(threats, HALF).fates.at(-1)).toBe('free');
    expect(assignBlockers(threats, HALF).free).toBe(1);
  });

  it('is picked up when a blocker of his side has nobody', () => {
    const threats = [...rush(2, 3), threat('near_B', { late: true })];
    expect(assignBlockers(threats, HALF).free).toBe(0);
  });
});

describe('man and scan', () => {
  const MAN: ProtectionPicture = { protection: 'man_dual_read', slide: 'none', back: 'in' };
  const own = LINE_SPOTS.map((spot) => threat('near_A', { role: spot, countedBy: spot }));

  it('a man nobody counted is free however few rush', () => {
    expect(assignBlockers([threat('far_B', { countedBy: 'nobody' })], MAN).free).toBe(1);
  });

  it('the back picks up one of the men he reads, the inside one first', () => {
    const reads = [threat('near_C', { countedBy: 'back' }), threat('far_B', { countedBy: 'back' })];
    expect(assignBlockers([...own, ...reads], MAN).fates.slice(-2)).toEqual(['free', 'blocked']);
  });

  it('a back who is out leaves the man he reads free', () => {
    expect(assignBlockers([threat('near_C', { countedBy: 'back' })], { ...MAN, back: 'out' }).free).toBe(1);
  });

  it('a back who crosses gets there late, and the rest are blocked as in the half slide', () => {
    const found = assignBlockers(rush(3, 3), { ...HALF, protection: 'scan' });
    expect(found.free).toBe(0);
    expect(found.fates.filter((fate) => fate === 'late')).toHaveLength(1);
  });

  it('a back who crosses takes the widest man of his side, outside in, however they are listed', () => {
    const scan: ProtectionPicture = { ...HALF, protection: 'scan' };
    const three = rush(3, 3);
    for (const listed of [three, three.toReversed(), [...three.slice(2), ...three.slice(0, 2)]]) {
      const { fates } = assignBlockers(listed, scan);
      expect(listed.filter((_, i) => fates[i] === 'late').map(({ lane }) => lane)).toEqual(['near_C']);
    }
  });

  it('of two men in one gap the one with the shorter way is blocked first', () => {
    const reads = [
      threat('near_C', { role: 'a', countedBy: 'back', path: 11 }),
      threat('far_C', { role: 'b', countedBy: 'back', path: 9 }),
    ];
    expect(assignBlockers([...own, ...reads], MAN).fates.slice(-2)).toEqual(['free', 'blocked']);
    expect(assignBlockers([...own, ...reads.toReversed()], MAN).fates.slice(-2)).toEqual(['blocked', 'free']);
  });

  it('an idle lineman doubles a neighbor', () => {
    expect(assignBlockers(rush(2, 2), HALF).fates.filter((fate) => fate === 'doubled').length).toBeGreaterThan(0);
  });
});

const mirrorLane = (lane: Lane) =>
  (lane.startsWith('near') ? lane.replace('near', 'far') : lane.replace('far', 'near')) as Lane;
const mirrorCount = (by: CountedBy): CountedBy => {
  const at = (LINE_SPOTS as readonly string[]).indexOf(by);
  return at < 0 ? by : (LINE_SPOTS[4 - at] ?? by);
};
const threats = fc
  .array(fc.record({ lane: fc.constantFrom(...LANES), late: fc.boolean(), by: fc.nat(7) }), { maxLength: 8 })
  .map((rows) => {
    const order = rows.map((row, i) => ({ ...row, i }));
    const spots = new Set<string>();
    return order.map(({ lane, late, by, i }) => {
      const counted: CountedBy = LINE_SPOTS[by] ?? (by === 5 ? 'nobody' : 'back');
      const taken = spots.has(counted) && counted !== 'back' ? 'nobody' : counted;
      spots.add(taken);
      return threat(lane, { role: `r${i}`, late, countedBy: taken });
    });
  });
const pictures = fc.record({
  protection: fc.constantFrom(...PROTECTIONS),
  slide: fc.constantFrom('near' as const, 'far' as const, 'none' as const),
  back: fc.constantFrom('in' as const, 'out' as const),
});

describe('in general', () => {
  it('one more rusher never frees fewer', () => {
    fc.assert(
      fc.property(threats, pictures, fc.constantFrom(...LANES), (found, picture, lane) => {
        const more = [...found, threat(lane, { role: 'one more', countedBy: 'back' })];
        expect(assignBlockers(more, picture).free).toBeGreaterThanOrEqual(assignBlockers(found, picture).free);
      }),
    );
  });

  it('the mirrored rush against the mirrored slide meets the same', () => {
    const turn = { near: 'far', far: 'near', none: 'none' } as const;
    fc.assert(
      fc.property(threats, pictures, (found, picture) => {
        const mirrored = found.map((one) => ({
          ...one,
          lane: mirrorLane(one.lane),
          countedBy: mirrorCount(one.countedBy),
        }));
        const answer = assignBlockers(mirrored, { ...picture, slide: turn[picture.slide] });
        expect(answer.fates).toEqual(assignBlockers(found, picture).fates);
      }),
    );
  });

  it('the order in which rushers are listed changes what none of them meets', () => {
    fc.assert(
      fc.property(threats, pictures, fc.infiniteStream(fc.nat(99)), (found, picture, keys) => {
        const shuffled = found.map((one) => ({ one, key: keys.next().value })).sort((a, b) => a.key - b.key);
        const listed = shuffled.map(({ one }) => one);
        const meets = (list: Threat[]) =>
          new Map(assignBlockers(list, picture).fates.map((fate, i) => [list[i]?.role, fate]));
        expect(Object.fromEntries(meets(listed))).toEqual(Object.fromEntries(meets(found)));
      }),
    );
  });

  it('blockers used never exceed the protectors, nor the rushers', () => {
    const size: Record<string, number> = { five_man_slide: 5, five_man_man: 5, seven_man: 7, max: 8 };
    fc.assert(
      fc.property(threats, pictures, (found, picture) => {
        const { used, blockers, free } = assignBlockers(found, picture);
        const full = size[picture.protection] ?? 6;
        expect(blockers).toBe(picture.back === 'in' || full === 5 ? full : full - 1);
        expect(used).toBeLessThanOrEqual(blockers);
        expect(used + free).toBe(found.length);
      }),
    );
  });

  it('a back who stays in never frees more', () => {
    fc.assert(
      fc.property(threats, pictures, (found, picture) => {
        const stays = assignBlockers(found, { ...picture, back: 'in' }).free;
        expect(stays).toBeLessThanOrEqual(assignBlockers(found, { ...picture, back: 'out' }).free);
      }),
    );
  });
});
