import { type AskedRule, chanceAt } from './asked-rule.ts';
import type { ExpectedSnaps } from './expected-snaps.ts';
import type { Theory } from './theory.ts';
import type { SnapVerdict } from './verdict-shares.ts';

/** Right less wrong of a theory where some triggers are met, and where not; null where there is no such film snap. */
export interface NetWhere {
  readonly met: number | null;
  readonly not: number | null;
}

/** Right less wrong on the expected snaps that their film shows, split by whether a trigger is met. */
export function netWhere(theory: Theory, asked: readonly AskedRule[], expected: ExpectedSnaps): NetWhere {
  const [met, not] = [mean(), mean()];
  for (const { alpha, rows, weights } of expected.parts) {
    rows.forEach((row, i) => {
      const weight = alpha * (weights[i] as number);
      const chance = chanceAt(asked, row);
      const net = netOf(theory.verdicts[row] as SnapVerdict);
      met.add(net, weight * chance);
      not.add(net, weight * (1 - chance));
    });
  }
  return { met: met.value(), not: not.value() };
}

/** Right less wrong on one snap, in the order of the verdicts: right first, wrong third. */
export function netOf({ shares }: SnapVerdict): number {
  return (shares[0] as number) - (shares[2] as number);
}

function mean() {
  const sums = { value: 0, weight: 0 };
  return {
    add: (value: number, weight: number) => {
      sums.value += weight * value;
      sums.weight += weight;
    },
    value: () => (sums.weight > 0 ? sums.value / sums.weight : null),
  };
}
