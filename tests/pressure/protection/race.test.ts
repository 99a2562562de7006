import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PASS_ANSWERS } from '../../../src/game/answers.ts';
import { unblockedArrival } from '../../../src/pressure/protection/protection.ts';
import { meetProtection } from '../../../src/pressure/protection/protection-meeting.ts';
import { PROTECTIONS, type ProtectionPicture } from '../../../src/pressure/protection/protection-result.ts';
import {
  createHomeCurves,
  homeBeforeRelease,
  medianArrival,
  mixCurves,
  RACE_TIMES,
} from '../../../src/pressure/protection/race.ts';
import { demoCall, demoDefense } from '../demo-defense.ts';

const curves = createHomeCurves('high_school');
const HALF_AWAY: ProtectionPicture = { protection: 'half_slide_covered', slide: 'far', back: 'in' };
const curveOf = (name: string, picture: ProtectionPicture) =>
  curves(meetProtection(demoCall(name), demoDefense.roles, picture), 'dropback');
const pictures = fc.record({
  protection: fc.constantFrom(...PROTECTIONS),
  slide: fc.constantFrom('near' as const, 'far' as const, 'none' as const),
  back: fc.constantFrom('in' as const, 'out' as const, 'wide_near' as const, 'wide_far' as const),
});
const release = {
  mu: fc.double({ min: 0.3, max: 1.5, noNaN: true }),
  sigma: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
};

describe('homeBeforeRelease', () => {
  it('is the chance of an earlier arrival when one man comes at a known time', () => {
    // Closed form: a release certain at t meets whoever is home by t.
    const step = Float64Array.from(RACE_TIMES, (time) => (time >= 2.5 ? 1 : 0));
    expect(homeBeforeRelease(step, { mu: Math.log(3), sigma: 0.001 })).toBeCloseTo(1, 6);
    expect(homeBeforeRelease(step, { mu: Math.log(2), sigma: 0.001 })).toBeCloseTo(0, 6);
    // Log-normal with median 2.475 (half a step before): half the balls are out later.
    expect(homeBeforeRelease(step, { mu: Math.log(2.475), sigma: 0.3 })).toBeCloseTo(0.5, 6);
  });

  it('agrees with plain simulation of 20,000 even draws of the release', () => {
    const curve = curveOf('Hackle Extra', HALF_AWAY);
    const law = { mu: 1.1, sigma: 0.27 };
    let home = 0;
    for (let i = 0; i < 20_000; i += 1) {
      const u = (i + 0.5) / 20_000;
      const seconds = Math.exp(law.mu + law.sigma * acklam(u));
      const at = Math.round((seconds - 0.4) / 0.05);
      home += curve[Math.min(Math.max(at, 0), curve.length - 1)] ?? 0;
    }
    expect(homeBeforeRelease(curve, law)).toBeCloseTo(home / 20_000, 3);
  });

  it('more time to throw never lowers it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...demoDefense.calls), pictures, fc.record(release), (call, picture, law) => {
        const curve = curves(meetProtection(call, demoDefense.roles, picture), 'dropback');
        const later = { ...law, mu: law.mu + 0.05 };
        expect(homeBeforeRelease(curve, later)).toBeGreaterThanOrEqual(homeBeforeRelease(curve, law) - 1e-12);
      }),
    );
  });
});

describe('home curves', () => {
  it('never fall as time passes, and stay within 0 and 1', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...demoDefense.calls),
        pictures,
        fc.constantFrom(...PASS_ANSWERS),
        (call, picture, answer) => {
          const curve = Array.from(curves(meetProtection(call, demoDefense.roles, picture), answer));
          expect(curve.every((share, i) => share >= (curve[i - 1] ?? 0) - 1e-12 && share <= 1)).toBe(true);
        },
      ),
    );
  });

  it('adding the late rusher never lowers the chance that somebody is home', () => {
    const withLate = demoDefense.calls.filter(({ rush }) => rush.some(({ way }) => way === 'late_if_back_blocks'));
    expect(withLate.length).toBeGreaterThan(0);
    fc.assert(
      fc.property(fc.constantFrom(...withLate), pictures, fc.record(release), (call, picture, law) => {
        const without = {
          ...call,
          rush: call.rush.filter(({ way }) => way !== 'late_if_back_blocks'),
          cover: call.cover.map((man) => ({ ...man, adds: false })),
        };
        const home = (of: typeof call) =>
          homeBeforeRelease(curves(meetProtection(of, demoDefense.roles, picture), 'dropback'), law);
        expect(home(call)).toBeGreaterThanOrEqual(home(without) - 1e-12);
      }),
    );
  });

  it('a deeper passer and a passer on the move never make anyone come sooner', () => {
    for (const call of demoDefense.calls) {
      const meeting = meetProtection(call, demoDefense.roles, HALF_AWAY);
      const [quick, dropback, deep, movement] = (['quick', 'dropback', 'deep_shot', 'movement'] as const).map(
        (answer) => curves(meeting, answer),
      );
      const neverSooner = (late: Float64Array | undefined, soon: Float64Array | undefined) =>
        late?.every((share, i) => share <= (soon?.[i] ?? 0) + 1e-12);
      expect([neverSooner(dropback, quick), neverSooner(deep, dropback), neverSooner(movement, dropback)]).toEqual([
        true,
        true,
        true,
      ]);
    }
  });

  it('a mix lies between its parts', () => {
    const [a, b] = [curveOf('Hackle Extra', HALF_AWAY), curveOf('Stay Roof', HALF_AWAY)];
    const mixed = mixCurves([a, b], [0.25, 0.75]);
    expect(mixed[40]).toBeCloseTo(0.25 * (a[40] ?? 0) + 0.75 * (b[40] ?? 0), 12);
  });
});

describe('the race, scenarios (common practice, no source)', () => {
  const home = (name: string, picture: ProtectionPicture, seconds: number) =>
    homeBeforeRelease(curveOf(name, picture), { mu: Math.log(seconds), sigma: 0.15 });

  it('a safety from 8 yards never beats a ball out at 1.7 s and beats one held 3.6 s, opposite the turn', () => {
    const safety = meetProtection(demoCall('Hackle Extra'), demoDefense.roles, HALF_AWAY).rushers.find(
      ({ role }) => role === 'safety_middle',
    );
    if (!safety) throw new Error('no safety in the rush');
    const arrival = unblockedArrival(safety, 'high_school', 7);
    // Computed from the sprint figures: about 2.8 to 3.3 s with a read of the back.
    expect(arrival).toBeGreaterThan(2.8);
    expect(arrival).toBeLessThan(3.3);
    expect(home('Hackle Extra', HALF_AWAY, 1.7) - home('Hackle Peel', HALF_AWAY, 1.7)).toBeLessThan(0.01);
    expect(home('Hackle Extra', HALF_AWAY, 3.6) - home('Hackle Peel', HALF_AWAY, 3.6)).toBeGreaterThan(0.2);
  });

  it('six rushers are home more often than five, and five more often than four, when the back is out', () => {
    const out: ProtectionPicture = { protection: 'five_man_slide', slide: 'far', back: 'out' };
    expect(home('Anvil Zero', out, 2.7)).toBeGreaterThan(home('Stay Roof', out, 2.7));
    expect(home('Latch Roof', out, 2.7)).toBeGreaterThan(home('Stay Roof', out, 2.7));
  });

  it('eight protectors slow five rushers down', () => {
    expect(home('Latch Roof', { ...HALF_AWAY, protection: 'max' }, 3)).toBeLessThanOrEqual(
      home('Latch Roof', HALF_AWAY, 3),
    );
  });
});

describe('medianArrival', () => {
  it('is the first time by which half are home, and the last one looked at when that never comes', () => {
    expect(medianArrival(Float64Array.from(RACE_TIMES, (time) => (time > 2.99 ? 0.6 : 0.2)))).toBeCloseTo(3, 9);
    expect(medianArrival(new Float64Array(RACE_TIMES.length))).toBeCloseTo(8, 9);
  });
});

/** Acklam's rational approximation of the normal quantile, relative error below 1.2e-9. */
function acklam(p: number): number {
  const a = [
    -39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269, -30.66479806614716, 2.506628277459239,
  ];
  const b = [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972, -13.28068155288572];
  const c = [
    -0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734, 4.374664141464968,
    2.938163982698783,
  ];
  const d = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416];
  const poly = (k: number[], x: number) => k.reduce((sum, value) => sum * x + value, 0);
  const tail = (q: number) => poly(c, q) / (poly(d, q) * q + 1);
  if (p < 0.02425) return tail(Math.sqrt(-2 * Math.log(p)));
  if (p > 0.97575) return -tail(Math.sqrt(-2 * Math.log(1 - p)));
  const [q, r] = [p - 0.5, (p - 0.5) ** 2];
  return (poly(a, r) * q) / (poly(b, r) * r + 1);
}
