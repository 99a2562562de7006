import type { ChosenMenu } from './chosen.ts';
import type { CompiledMenu } from './compile.ts';

/** The mix of one situation. */
export interface SituationMix {
  readonly id: string;
  readonly expectedSnaps: number;
  readonly set: readonly number[];
  /** Share of the situation's snaps on which the i-th carried call is called. */
  readonly shares: readonly number[];
}

/** The mix of every situation: its own pressure rate, split as its mix splits the pressures. */
export function mixShares({ problem, situations }: CompiledMenu, { set, calls }: ChosenMenu): SituationMix[] {
  return situations.map(({ id, expectedSnaps, rate }) => {
    const m = problem.mixes.findIndex((mix) => mix.situations.includes(id));
    const pressures = problem.mixes[m]?.pressures ?? 0;
    const shares = set.map((_, i) => (pressures === 0 ? 0 : (rate * (calls[i]?.[m] as number)) / pressures));
    return { id, expectedSnaps, set, shares };
  });
}
