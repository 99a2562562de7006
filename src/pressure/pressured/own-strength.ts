import { logGamma } from '../../stats/beta.ts';

/** Snaps of what is due against which an offense's snaps in a group are weighed: 8 to 4096 by octaves. */
export const STRENGTHS: Float64Array = Float64Array.from({ length: 10 }, (_, i) => 2 ** (i + 3));

/**
 * What the strength is before the offense's own film is seen: log-normal, median 512 and standard deviation of the
 * logarithm 1. On open professional play data of 2022 (four games to the next, 32 offenses; nflverse CC BY 4.0, FTN Data
 * and NFL NextGenStats via nflverse CC BY-SA 4.0) fixed strengths of 64 and less forecast worse than paying an offense's
 * own shift no attention, 512 did no harm to any question, and this belief weighed by the film lost at most .0001.
 */
const BELIEF = { median: 512, spread: 1 };

/** Counts of one group and the shares they are thought to lie around. */
export interface GroupEvidence {
  /** Snaps of each class, cut down where those of one game are alike. */
  readonly counts: readonly number[];
  /** Above 0 where a count is; sums to 1. */
  readonly prior: readonly number[];
}

/**
 * The chance of each of {@link STRENGTHS} after the offense's groups were seen: each is Dirichlet-multinomial around its
 * prior, so an offense that changes against pressure brings the strength down by itself.
 *
 * @returns chances that sum to 1
 * @see Mosimann 1962, Biometrika 49:65
 */
export function strengthChances(groups: readonly GroupEvidence[]): Float64Array {
  const logs = STRENGTHS.map((strength) => {
    const belief = -((Math.log(strength / BELIEF.median) / BELIEF.spread) ** 2) / 2;
    return groups.reduce((sum, group) => sum + logChance(group, strength), belief);
  });
  const top = Math.max(...logs);
  const chances = logs.map((log) => Math.exp(log - top));
  const total = chances.reduce((sum, chance) => sum + chance, 0);
  return chances.map((chance) => chance / total);
}

/** Weight of a group's own snaps beside its prior, 0 to 1, averaged over the strengths. */
export function ownWeight(snaps: number, chances: Float64Array): number {
  return chances.reduce((sum, chance, i) => sum + (chance * snaps) / (snaps + (STRENGTHS[i] as number)), 0);
}

function logChance({ counts, prior }: GroupEvidence, strength: number): number {
  let [total, log] = [0, 0];
  counts.forEach((count, k) => {
    if (count === 0) return;
    total += count;
    const parameter = strength * (prior[k] as number);
    log += logGamma(parameter + count) - logGamma(parameter);
  });
  return total === 0 ? 0 : log + logGamma(strength) - logGamma(strength + total);
}
