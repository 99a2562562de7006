import type { Family } from '../../game/vocabulary.ts';
import { type AskedRule, shareSpread } from './asked-rule.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';
import type { FitBreakEven } from './fit-result.ts';
import { type NetWhere, netWhere } from './net-where.ts';
import type { Theory } from './theory.ts';

/** What turns each family: the rules counted together, and the family it is measured against, if any. */
const TURNS: readonly {
  readonly family: Family;
  readonly against: Family | null;
  readonly rules: readonly string[];
}[] = [
  { family: 'base', against: null, rules: ['base_held_back_in'] },
  { family: 'three_under', against: null, rules: ['three_under_flat'] },
  { family: 'four_under', against: 'three_under', rules: ['four_under_trips'] },
  { family: 'man_free', against: 'peel_spy', rules: ['man_free_quarterback_run', 'man_free_scramble'] },
  { family: 'hot', against: null, rules: ['hot_screen', 'hot_quick_outside'] },
  { family: 'zero', against: 'peel', rules: ['zero_back_wide'] },
  { family: 'peel', against: null, rules: ['peel_back_wide'] },
  { family: 'peel_spy', against: null, rules: ['spy_quarterback_run', 'spy_scramble'] },
  { family: 'add_on', against: null, rules: ['add_on_screen', 'add_on_quick'] },
];

/** What break-evens are worked out from. */
export interface BreakEvenInput {
  readonly theories: ReadonlyMap<Family, Theory>;
  readonly asked: readonly AskedRule[];
  /** The snaps of the situation expected when a family's rushers come. */
  readonly facing: (family: Family) => ExpectedSnaps;
}

/**
 * Where each family turns in a situation: with the rest of their snaps as they are, the share of snaps meeting these
 * rules at which right and wrong are level (or the two families are). A rule the coach switched off turns nothing.
 */
export function breakEvens({ theories, asked, facing }: BreakEvenInput): FitBreakEven[] {
  return TURNS.flatMap(({ family, against, rules }) => {
    const expected = facing(family);
    const counted = asked.filter(({ ready }) => rules.includes(ready.rule.id));
    const [own, other] = [theories.get(family), against === null ? undefined : theories.get(against)];
    if (counted.length === 0 || !own) return [];
    const net = netWhere(own, counted, expected);
    const less = other ? netWhere(other, counted, expected) : LEVEL;
    return [
      {
        family,
        against,
        situation: expected.situation,
        rules: counted.map(({ ready }) => ready.rule.id),
        shown: shareSpread(counted, expected),
        ...turnOf(net, less),
      },
    ];
  });
}

const LEVEL: NetWhere = { met: 0, not: 0 };

function turnOf(own: NetWhere, other: NetWhere): Pick<FitBreakEven, 'turnsAt' | 'rightBelow'> {
  if (own.met === null || own.not === null) return { turnsAt: null, rightBelow: (own.not ?? own.met ?? 0) > 0 };
  const [met, not] = [own.met - (other.met ?? 0), own.not - (other.not ?? 0)];
  const turns = met * not < 0;
  return { turnsAt: turns ? not / (not - met) : null, rightBelow: not > met };
}
