import { FAMILIES, type Family, familyFacts } from '../../game/families.ts';
import { type AskedRule, shareSpread } from './asked-rule.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';
import type { FitBreakEven } from './fit-result.ts';
import { type NetWhere, netWhere } from './net-where.ts';
import type { Theory } from './theory.ts';

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
  return FAMILIES.flatMap((family) => {
    const { against, rules } = familyFacts(family).turns;
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
