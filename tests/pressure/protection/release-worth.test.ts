import { describe, expect, it } from 'vitest';
import { releaseWorth } from '../../../src/pressure/protection/release-worth.ts';

const curve = { mu: 1, sigma: 0.3, worth: 20 };
const weightOf = (throws: number, worth: number) => throws / (throws + worth);

describe('releaseWorth', () => {
  it('agrees with the mean weight over 2,000 worths, each by its normal chance, where no other offense is at hand', () => {
    // Reference: the same belief on a grid a hundred times as fine, from the textbook normal density; 2 to 2048 alike.
    const own = { throws: 25, mean: 1.2 };
    let [sum, chances] = [0, 0];
    for (let i = 0; i <= 2000; i++) {
      const worth = 2 ** (0.75 + (10.5 * i) / 2000);
      const variance = 0.09 / worth + 0.09 / 25;
      const belief = Math.exp(-((Math.log(worth / 20) / 1.2) ** 2) / 2);
      const chance = (belief * Math.exp(-(0.2 ** 2) / (2 * variance))) / Math.sqrt(variance);
      sum += chance * weightOf(25, worth);
      chances += chance;
    }
    expect(weightOf(25, releaseWorth(own, curve, []))).toBeCloseTo(sum / chances, 2);
  });

  it('lets their own times count more, the farther they lie from the curve and the more other offenses differ', () => {
    const near = releaseWorth({ throws: 30, mean: 1.01 }, curve, []);
    const far = releaseWorth({ throws: 30, mean: 1.4 }, curve, []);
    expect(far).toBeLessThan(near / 2);
    const others = (off: number) => [-1, 1, -1, 1, 0].map((side) => ({ throws: 60, mean: 1 + side * off }));
    const own = { throws: 30, mean: 1.05 };
    expect(releaseWorth(own, curve, others(0.3))).toBeLessThan(releaseWorth(own, curve, others(0)) / 2);
  });

  it('is what the curve says where nothing was timed', () => {
    expect(releaseWorth({ throws: 0, mean: 0 }, curve, [{ throws: 9, mean: 2 }])).toBe(20);
  });
});
