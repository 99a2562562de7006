import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lane } from '../../src/game/call-library.ts';
import { COVER_JOBS, type CoverJob } from '../../src/game/cover-jobs.ts';
import { callPicture } from '../../src/report/field/call-picture.ts';
import { coverSpot } from '../../src/report/field/cover-spot.ts';
import { fieldDrawing } from '../../src/report/field/field-drawing.ts';
import { DRAWN_SIZE, drawnAt } from '../../src/report/field/field-scale.ts';
import { FIELD_WIDTH, HASH_TO_SIDELINE } from '../../src/report/field/field-size.ts';
import { offenseSet } from '../../src/report/field/offense-set.ts';
import { roleLetters } from '../../src/report/field/role-letters.ts';
import { demoDefense } from '../pressure/demo-defense.ts';
import { inventedLibrary } from './invented-library.ts';

describe('the drawn field', () => {
  it.each([
    {
      level: 'high_school',
      near: 53 + 4 / 12,
      between: 53 + 4 / 12,
      source: 'NFHS Football Rules Book, rule 1-2, field in thirds; from memory',
    },
    { level: 'college', near: 60, between: 40, source: 'NCAA Football Rules, rule 2-12-7; from memory' },
    {
      level: 'pro',
      near: 70.75,
      between: 18.5,
      source: 'NFL Football Operations, Terms glossary, hashmarks; from memory',
    },
  ] as const)('has the hash marks of $level in feet ($source)', ({ level, near, between }) => {
    expect(HASH_TO_SIDELINE[level] * 3).toBeCloseTo(near, 6);
    expect((FIELD_WIDTH - 2 * HASH_TO_SIDELINE[level]) * 3).toBeCloseTo(between, 6);
  });

  it('puts the ball on the left hash and everybody inside the sidelines', () => {
    for (const level of ['high_school', 'college', 'pro'] as const) {
      const set = offenseSet(level);
      expect(set.ball.across).toBe(HASH_TO_SIDELINE[level]);
      for (const man of [...set.field, ...set.boundary, ...set.line]) {
        expect(man.across).toBeGreaterThan(0);
        expect(man.across).toBeLessThan(FIELD_WIDTH);
      }
    }
  });
});

describe('coverSpot', () => {
  const offense = offenseSet('high_school');

  it('finds a place inside the field for every job, from either side', () => {
    for (const job of COVER_JOBS) {
      for (const near of [1, -1] as const) {
        const { at } = coverSpot(job, near, offense);
        expect(at.across).toBeGreaterThan(0);
        expect(at.across).toBeLessThan(FIELD_WIDTH);
      }
    }
  });

  const placeOf = (job: CoverJob) => coverSpot(job, 1, offense).at;
  const fromBall = (job: CoverJob) => Math.abs(placeOf(job).across - offense.ball.across);

  it('shares the deep field out evenly', () => {
    const shares = (...jobs: readonly CoverJob[]) => jobs.map((job) => placeOf(job).across / FIELD_WIDTH);
    const thirds = shares('deep_third_far', 'deep_third_middle', 'deep_third_near');
    expect(thirds.map((share) => share * 6)).toEqual([1, 3, 5].map((sixth) => expect.closeTo(sixth, 9)));
    const halves = shares('deep_half_far', 'deep_half_near');
    expect(halves.map((share) => share * 4)).toEqual([1, 3].map((quarter) => expect.closeTo(quarter, 9)));
    expect(shares('deep_middle')[0]).toBeCloseTo(0.5, 9);
  });

  // Common practice, no source: the under coverage by depth.
  it('keeps the flat in front of the hook, the hook in front of the seam and all of them in front of the deep', () => {
    const past = (job: CoverJob) => placeOf(job).past;
    const order = ['spy', 'flat_near', 'hot_near', 'hook_near', 'hook_middle', 'robber', 'seam_near'] as const;
    const depths = order.map(past);
    expect(depths).toEqual([...depths].sort((a, b) => a - b));
    for (const job of ['deep_third_near', 'deep_third_middle', 'deep_third_far', 'deep_half_near'] as const) {
      expect(past(job)).toBeGreaterThan(Math.max(...depths) + 3);
    }
    for (const zone of ['flat', 'hot', 'hook', 'seam'] as const) expect(past(`${zone}_far`)).toBe(past(`${zone}_near`));
  });

  it('has the hook inside, then the hot zone, the seam and the flat, the same on both sides of the ball', () => {
    const near = (['hook_near', 'hot_near', 'seam_near', 'flat_near'] as const).map(fromBall);
    expect(near).toEqual([...near].sort((a, b) => a - b));
    expect(fromBall('hook_middle')).toBe(0);
    for (const zone of ['hook', 'hot', 'seam', 'flat'] as const) {
      expect(fromBall(`${zone}_far`)).toBeCloseTo(fromBall(`${zone}_near`), 9);
      expect(placeOf(`${zone}_near`).across).toBeGreaterThan(offense.ball.across);
      expect(placeOf(`${zone}_far`).across).toBeLessThan(offense.ball.across);
    }
  });

  it('turns near and far round when the call comes from the other side', () => {
    expect(coverSpot('deep_third_near', 1, offense)).toEqual(coverSpot('deep_third_far', -1, offense));
    expect(coverSpot('man_1_near', -1, offense)).toEqual(coverSpot('man_1_far', 1, offense));
    expect(coverSpot('deep_third_near', 1, offense).at.across).toBeGreaterThan(FIELD_WIDTH / 2);
  });
});

describe('fieldDrawing', () => {
  const library = inventedLibrary();

  it.each(library.calls.map((call) => [call.name, call] as const))(
    '%s: all eleven stand on it, rushers filled',
    (_, call) => {
      const { text } = fieldDrawing(callPicture(library, call), library.level, 'words');
      expect(text.match(/<circle/g)).toHaveLength(11);
      expect(text.match(/<circle class="filled"/g)).toHaveLength(call.rush.length);
      expect(text.match(/<path class="a"/g)).toHaveLength(call.rush.length);
      expect(text).not.toMatch(/NaN|undefined/);
    },
  );
});

describe('the drawing of our calls', () => {
  const calls = [inventedLibrary(), demoDefense].flatMap((library) => library.calls.map((call) => ({ library, call })));

  it.each(calls.map((one) => [one.call.name, one] as const))('%s: no man stands on another', (_, { library, call }) => {
    const { text } = fieldDrawing(callPicture(library, call), library.level, 'words');
    const discs = [...text.matchAll(/<circle class="\w+" cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)].map(
      ([, x, y, r]) => ({ x: Number(x), y: Number(y), r: Number(r) }),
    );
    expect(discs).toHaveLength(11);
    discs.forEach((one, i) => {
      expect(one.x - one.r).toBeGreaterThanOrEqual(0);
      expect(one.x + one.r).toBeLessThanOrEqual(DRAWN_SIZE.width);
      for (const other of discs.slice(i + 1))
        expect(Math.hypot(one.x - other.x, one.y - other.y)).toBeGreaterThanOrEqual(one.r + other.r);
    });
  });

  it.each(calls.map((one) => [one.call.name, one] as const))(
    '%s: every man starts where his role stands, and no two rush one way',
    (_, { library, call }) => {
      const { rush, cover, offense } = callPicture(library, call);
      const standsAt = (id: string) => library.roles.find((role) => role.id === id);
      const men = [
        ...call.rush.map(({ role, from }, i) => ({ role, moved: from !== undefined, at: rush[i]?.from })),
        ...call.cover.map(({ role }, i) => ({ role, moved: false, at: cover[i]?.from })),
      ];
      for (const { role, at } of men.filter(({ moved }) => !moved)) {
        expect(at?.past).toBe(standsAt(role)?.depth);
        expect((at?.across ?? Number.NaN) - offense.ball.across).toBeCloseTo(standsAt(role)?.lateral ?? Number.NaN, 9);
      }
      const straight = rush.filter(({ way }) => way === 'straight').map(({ crosses }) => crosses.across);
      for (const { to } of rush) expect(to.past).toBeLessThan(0);
      expect(new Set(straight).size).toBe(straight.length);
    },
  );

  it('draws the lanes in order, the same on both sides of the ball', () => {
    const [call] = demoDefense.calls;
    if (call === undefined) throw new Error('the demo has calls');
    const crossing = (lane: Lane) => {
      const [rusher] = call.rush;
      if (rusher === undefined) throw new Error('somebody rushes');
      const { rush, offense } = callPicture(demoDefense, { ...call, sent_from: 'field', rush: [{ ...rusher, lane }] });
      return (rush[0]?.crosses.across ?? Number.NaN) - offense.ball.across;
    };
    const far = (['far_D', 'far_C', 'far_B', 'far_A'] as const).map(crossing);
    const near = (['near_A', 'near_B', 'near_C', 'near_D'] as const).map(crossing);
    expect([...far, ...near]).toEqual([...far, ...near].sort((a, b) => a - b));
    expect(near.map((yards) => expect.closeTo(-yards, 9)).reverse()).toEqual(far);
    // Five linemen with splits of two to three feet reach about four yards to each side; D is outside of a tight end.
    expect(near[2]).toBeLessThan(5);
    expect(near[3]).toBeLessThan(8);
  });

  it('keeps the order from left to right and from shallow to deep, sideline to sideline', () => {
    const ball = HASH_TO_SIDELINE.high_school;
    const across = Array.from({ length: 54 }, (_, yard) => drawnAt({ across: yard, past: 0 }, ball).x);
    expect(across).toEqual([...across].sort((a, b) => a - b));
    expect(drawnAt({ across: 0, past: 0 }, ball).x).toBeCloseTo(0, 6);
    expect(drawnAt({ across: FIELD_WIDTH, past: 0 }, ball).x).toBeCloseTo(DRAWN_SIZE.width, 6);
    const down = Array.from({ length: 24 }, (_, i) => drawnAt({ across: 0, past: 17 - i }, ball).y);
    expect(down).toEqual([...down].sort((a, b) => a - b));
  });
});

describe('roleLetters', () => {
  it('gives every role its own letters', () => {
    const titles = fc.array(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }), {
      minLength: 11,
      maxLength: 11,
    });
    fc.assert(
      fc.property(titles, (names) => {
        const letters = roleLetters(names.map((title, i) => ({ id: `r${i}`, title })));
        expect(new Set(letters.values()).size).toBe(11);
      }),
      { numRuns: 100 },
    );
  });

  it('uses initials, and a second letter where the first is taken', () => {
    const letters = roleLetters([
      { id: 'n', title: 'Nose' },
      { id: 'k', title: 'Nickel' },
      { id: 'b', title: 'Boundary corner' },
    ]);
    expect([...letters.values()]).toEqual(['N', 'Ni', 'BC']);
  });
});
