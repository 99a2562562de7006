import { describe, expect, it } from 'vitest';
import type { Family } from '../../../src/game/families.ts';
import { fitOf, ranked, STYLES } from './styles.ts';

/** What a coordinator expects of each style: common practice, no source. */
const EXPECTED: Readonly<
  Record<string, { readonly leads: readonly Family[]; readonly ahead: readonly [Family, Family][] }>
> = {
  option: {
    leads: ['four_under', 'peel_spy'],
    ahead: [
      ['peel_spy', 'man_free'],
      ['peel_spy', 'peel'],
      ['base', 'add_on'],
    ],
  },
  'air raid': {
    leads: ['three_under', 'four_under', 'peel_spy'],
    ahead: [
      ['three_under', 'man_free'],
      ['base', 'hot'],
      ['base', 'add_on'],
    ],
  },
  'screen team': {
    leads: ['peel', 'peel_spy', 'four_under'],
    ahead: [
      ['peel', 'hot'],
      ['four_under', 'three_under'],
      ['peel', 'add_on'],
    ],
  },
  'held ball, back in': {
    leads: ['add_on', 'hot'],
    ahead: [
      ['add_on', 'base'],
      ['add_on', 'man_free'],
      ['peel', 'peel_spy'],
    ],
  },
  'back out wide': {
    leads: ['peel', 'peel_spy'],
    ahead: [
      ['peel', 'zero'],
      ['peel', 'hot'],
      ['peel', 'add_on'],
    ],
  },
  'trips team': { leads: ['three_under'], ahead: [['three_under', 'four_under']] },
  balanced: { leads: ['four_under'], ahead: [['four_under', 'three_under']] },
  'running quarterback': {
    leads: ['peel_spy'],
    ahead: [
      ['peel_spy', 'zero'],
      ['peel_spy', 'man_free'],
      ['peel_spy', 'peel'],
    ],
  },
  heavy: {
    leads: ['four_under'],
    ahead: [
      ['four_under', 'peel_spy'],
      ['four_under', 'add_on'],
    ],
  },
  empty: {
    leads: ['man_free'],
    ahead: [
      ['base', 'man_free'],
      ['man_free', 'zero'],
      ['man_free', 'three_under'],
    ],
  },
};

const orders = STYLES.map((offense) => ({ style: offense.style, order: ranked(fitOf(offense)) }));
const pressures = (order: readonly Family[]) => order.filter((family) => family !== 'base');

describe('fit on two invented offenses of each style', () => {
  it.each(orders)('leads against $style with what common practice would', ({ style, order }) => {
    expect(EXPECTED[style]?.leads).toContain(pressures(order)[0]);
  });

  it.each(orders)('puts the families in the order of common practice against $style', ({ style, order }) => {
    for (const [first, second] of EXPECTED[style]?.ahead ?? []) {
      expect(order.indexOf(first), `${first} before ${second}`).toBeLessThan(order.indexOf(second));
    }
  });

  it('orders the families differently for every two styles', () => {
    const shapes = orders.map(({ style, order }) => ({ style, order: order.join(' ') }));
    for (const one of shapes) {
      for (const other of shapes) if (one.style !== other.style) expect(one.order).not.toBe(other.order);
    }
  });

  it('leads with at least six different families over the ten styles', () => {
    expect(new Set(orders.map(({ order }) => pressures(order)[0])).size).toBeGreaterThanOrEqual(6);
  });

  it('puts the add-on ahead of its place elsewhere where the ball is held and the back stays in', () => {
    const places = orders.map(({ style, order }) => ({ style, place: order.indexOf('add_on') }));
    const [held, rest] = [true, false].map((wanted) =>
      places.filter(({ style }) => (style === 'held ball, back in') === wanted).map(({ place }) => place),
    ) as [number[], number[]];
    expect(Math.max(...held)).toBeLessThan(Math.min(...rest));
  });
});
