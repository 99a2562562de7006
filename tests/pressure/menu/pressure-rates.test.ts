import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pressureRates } from '../../../src/pressure/menu/pressure-rates.ts';

const limits = { least: 0.1, most: 0.8, band: 0.15 };
const situations = [
  { expectedSnaps: 25, net: -0.1 },
  { expectedSnaps: 15, net: 0.05 },
  { expectedSnaps: 10, net: 0.4 },
];

describe('pressure rates', () => {
  it('bend around our own rate and keep its mean', () => {
    const rates = pressureRates(situations, limits, 0.4);
    const mean = rates.reduce((sum, rate, s) => sum + rate * situations[s]!.expectedSnaps, 0) / 50;
    expect(mean).toBeCloseTo(0.4, 9);
    expect(rates[2]).toBeGreaterThan(rates[1]!);
    expect(rates[1]).toBeGreaterThan(rates[0]!);
  });

  it('are our own rate everywhere where no situation suits the calls better', () => {
    expect(
      pressureRates(
        situations.map((one) => ({ ...one, net: 0.2 })),
        limits,
        0.4,
      ),
    ).toEqual([0.4, 0.4, 0.4]);
  });

  it('take the middle of what is allowed without film', () => {
    expect(pressureRates([{ expectedSnaps: 10, net: 0 }], limits, null)[0]).toBeCloseTo(0.45, 12);
  });

  it('never leave the band, and never the limits', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const situation = fc.record({ expectedSnaps: number(0.1, 40), net: number(-1, 1) });
    fc.assert(
      fc.property(fc.array(situation, { minLength: 1, maxLength: 13 }), number(0, 1), (list, own) => {
        const center = Math.min(0.8, Math.max(0.1, own));
        for (const rate of pressureRates(list, limits, own)) {
          expect(rate).toBeGreaterThanOrEqual(0.1 - 1e-9);
          expect(rate).toBeLessThanOrEqual(0.8 + 1e-9);
          expect(Math.abs(rate - center)).toBeLessThanOrEqual(0.15 + 1e-9);
        }
      }),
    );
  });

  it('bend smoothly: a little more fit is a little more pressure', () => {
    const at = (net: number) => pressureRates([{ expectedSnaps: 10, net }, situations[0]!], limits, 0.4)[0]!;
    for (let net = -0.5; net < 0.5; net += 0.05) {
      expect(at(net + 0.05)).toBeGreaterThan(at(net));
      expect(at(net + 0.05) - at(net)).toBeLessThan(0.02);
    }
  });
});
