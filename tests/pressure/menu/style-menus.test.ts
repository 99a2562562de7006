import { describe, expect, it } from 'vitest';
import type { Family } from '../../../src/game/families.ts';
import { filmOf, STYLES } from '../fit/styles.ts';
import { familyShares, menuAgainst, planAgainst } from './style-menus.ts';

/** What a coordinator expects of a menu: common practice, no source. */
interface Expected {
  /** Families one of which is sent most. */
  readonly leads: readonly Family[];
  /** The family with the theory that is most right, where another word behind the same path may be sent as often: at least a fifth. */
  readonly answer?: Family;
  /** Families of which more than a call or two a game would be a mistake; together at most this share of our pressures. */
  readonly sparing: readonly Family[];
}

const SPARING = 0.12;

const EXPECTED: Readonly<Record<string, Expected>> = {
  option: {
    leads: ['four_under', 'three_under'],
    answer: 'four_under',
    sparing: ['man_free', 'zero', 'peel', 'add_on', 'hot'],
  },
  'air raid': { leads: ['peel_spy', 'three_under'], sparing: ['zero', 'add_on', 'peel'] },
  'screen team': { leads: ['peel', 'peel_spy', 'man_free'], sparing: ['zero', 'add_on', 'hot'] },
  'held ball, back in': { leads: ['hot', 'add_on'], sparing: ['peel_spy', 'four_under'] },
  'back out wide': { leads: ['peel', 'peel_spy', 'man_free'], sparing: ['zero', 'add_on', 'hot'] },
  'trips team': { leads: ['three_under'], sparing: ['four_under', 'zero', 'add_on'] },
  balanced: { leads: ['four_under'], sparing: ['three_under', 'zero', 'add_on'] },
  // Zone has eyes on the quarterback: it is the other word behind the spy's path.
  'running quarterback': {
    leads: ['peel_spy', 'three_under'],
    answer: 'peel_spy',
    sparing: ['man_free', 'zero', 'peel', 'add_on', 'hot'],
  },
  heavy: { leads: ['four_under'], sparing: ['peel_spy', 'add_on'] },
  empty: { leads: ['man_free'], sparing: ['zero', 'peel', 'peel_spy', 'add_on', 'hot'] },
};

const plans = STYLES.map((offense) => {
  const plan = planAgainst(filmOf(offense));
  const menu = menuAgainst(plan);
  return { style: offense.style, plan, menu, families: familyShares(menu) };
});

describe('the menu against an invented offense of each style', () => {
  it.each(plans)('sends most against $style what common practice would', ({ style, families }) => {
    const [first] = [...families].sort((a, b) => b[1] - a[1])[0] ?? [];
    expect(EXPECTED[style]?.leads).toContain(first);
  });

  it.each(plans)('sends against $style the family that answers it', ({ style, families }) => {
    const { leads = [], answer } = EXPECTED[style] ?? {};
    const found = answer === undefined ? leads : [answer];
    expect(Math.max(...found.map((family) => families.get(family) ?? 0))).toBeGreaterThanOrEqual(0.2);
  });

  it.each(plans)('hardly sends against $style what common practice warns of', ({ style, families }) => {
    const warned = (EXPECTED[style]?.sparing ?? []).reduce((sum, family) => sum + (families.get(family) ?? 0), 0);
    expect(warned).toBeLessThanOrEqual(SPARING);
  });

  it.each(plans)('leads against $style with no call plainly wrong while a better one is idle', ({ plan, menu }) => {
    const [lead] = menu.calls;
    const net = (call: string) => plan.fit?.calls.find((fit) => fit.call === call && fit.situation === 'all')?.net;
    const here = net(lead?.call ?? '');
    if (here === undefined || here.high >= 0) return;
    // Out for a reason of its own: a hole they meet, or a call that has to be installed first.
    const idle = menu.leftOut.filter(({ why }) => why.kind === 'nowhere_better').map(({ call }) => net(call));
    expect(idle.filter((fit) => fit !== undefined && fit.low > here.high)).toEqual([]);
  });

  it('never carries the same calls for two styles', () => {
    // The second screen team and the second team with its back out wide are answered by the same calls in another mix.
    const firsts = plans.filter(({ style }, i) => plans.findIndex((plan) => plan.style === style) === i);
    const carried = firsts.map(({ style, menu }) => ({
      style,
      calls: menu.calls
        .map(({ call }) => call)
        .sort()
        .join(),
    }));
    for (const one of carried) {
      const same = carried.filter(({ style, calls }) => style !== one.style && calls === one.calls);
      expect(
        same.map(({ style }) => style),
        one.style,
      ).toEqual([]);
    }
  });

  it('is never the same mix for two styles', () => {
    const mixes = plans.map(({ style, menu }) => {
      const sent = menu.calls.flatMap(({ call, mix }) => mix.map((one) => [`${call} ${one.situation}`, one.share]));
      return { style, sent: new Map(sent as [string, number][]) };
    });
    for (const one of mixes) {
      for (const other of mixes) {
        if (one.style === other.style) continue;
        const keys = [...new Set([...one.sent.keys(), ...other.sent.keys()])];
        const apart = keys.map((key) => Math.abs((one.sent.get(key) ?? 0) - (other.sent.get(key) ?? 0)));
        expect(Math.max(...apart), `${one.style} and ${other.style}`).toBeGreaterThan(0.1);
      }
    }
  });
});
