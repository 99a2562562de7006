import { newcombeDifference } from '../../../src/stats/difference.ts';
import { goodmanIntervals } from '../../../src/stats/goodman.ts';
import type { Interval } from '../../../src/stats/interval.ts';
import { clopperPearsonInterval, jeffreysInterval, wilsonInterval } from '../../../src/stats/proportion-interval.ts';
import { share } from '../../../src/stats/share.ts';
import { weightedShare } from '../../../src/stats/weighted-share.ts';
import type { Adapter } from '../check.ts';

const single =
  (interval: (x: number, n: number, level: number) => Interval): Adapter =>
  ({ x, n, conf }) => {
    const { low, high } = interval(x, n, conf);
    return { estimate: share(x, n, conf).estimate, lower: low, upper: high };
  };

/** Intervals for one share, several shares, a difference and weighted observations. */
export const PROPORTION_ADAPTERS: Record<string, Adapter> = {
  'binom.wilson': single(wilsonInterval),
  'binom.clopper_pearson': single(clopperPearsonInterval),
  'binom.jeffreys': single(jeffreysInterval),
  'multinomial.goodman': ({ counts, conf }) => {
    const all = goodmanIntervals(counts, conf);
    return { lower: all.map((i) => i.low), upper: all.map((i) => i.high) };
  },
  'diff.newcombe10': ({ conf, ...tallies }) => {
    const { estimate, low, high } = newcombeDifference({ ...tallies, level: conf });
    return { estimate, lower: low, upper: high };
  },
  'weighted.kish_wilson': ({ weights, outcomes, conf }) => {
    const got = weightedShare(
      weights,
      outcomes.map((y: number) => y === 1),
      conf,
    );
    return { estimate: got.estimate, n_eff: got.effectiveTrials, lower: got.low, upper: got.high };
  },
};
