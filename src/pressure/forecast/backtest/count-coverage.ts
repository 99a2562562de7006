import { SITUATIONS } from '../../../game/situations.ts';
import { betaBinomialPmf } from '../../../stats/beta-binomial.ts';
import { meanOrNull } from '../../../stats/mean.ts';
import type { ChainFit } from '../chain-fit.ts';
import { nodeAt } from '../chain-tree.ts';
import { nextCountInterval, nextGameConcentration } from '../next-count.ts';
import { TARGET_STRENGTHS } from '../target-strengths.ts';
import { BUCKET_SIZES, type CountCoverage, type CountSize } from './backtest-result.ts';
import type { ScoredSnaps } from './method-record.ts';
import type { WindowFilm } from './window-film.ts';

/** One 95% interval for a count of the next game, and whether it held. */
export interface CountCheck {
  readonly size: CountSize;
  readonly held: boolean;
  /** Width as a share of the snaps. */
  readonly width: number;
  /** Chance of holding if the forecast were right. */
  readonly due: number;
}

/**
 * Sets the count intervals of the page (the chain before the look, with the archive where there is one) against the
 * counts of the game: for each situation and for the whole game, for every class, of two classes the first. How many
 * snaps a situation had is taken as known.
 */
export function countChecks(window: WindowFilm, { rows, outcomes, classes }: ScoredSnaps): CountCheck[] {
  const fit = window.chain('plan', 'archive') ?? window.chain('plan', 'own');
  if (fit === null) return [];
  const { gameToGame } = TARGET_STRENGTHS[window.definition.target].plan;
  const { cells, trees } = window.film;
  const charted = classes === 2 ? 1 : classes;
  const outcomesIn = (code: number) => outcomes.filter((_, i) => cells.situation[rows[i] as number] === code);
  const buckets = SITUATIONS.map((_, code) => ({
    size: sizeOf,
    outcomes: outcomesIn(code),
    node: nodeAt(trees.plan, [code]),
  }));
  const game = { size: () => 'game' as const, outcomes, node: 0 };
  return [...buckets, game]
    .filter((bucket) => bucket.outcomes.length > 0)
    .flatMap((bucket) =>
      Array.from({ length: charted }, (_, k) => {
        const trials = bucket.outcomes.length;
        const count = bucket.outcomes.filter((outcome) => outcome === k).length;
        return { size: bucket.size(trials), ...checkCount(fit, { node: bucket.node, k, trials, count, gameToGame }) };
      }),
    );
}

/** The checks of one size each added up; a size without a check stays, with nothing to say. */
export function coverageOf(checks: readonly CountCheck[]): readonly CountCoverage[] {
  const sizes: readonly CountSize[] = [...BUCKET_SIZES.map(({ id }) => id), 'game'];
  return sizes.map((size) => {
    const mine = checks.filter((check) => check.size === size);
    return {
      size,
      intervals: mine.length,
      covered: mine.filter(({ held }) => held).length,
      width: meanOrNull(mine.map(({ width }) => width)),
      due: meanOrNull(mine.map(({ due }) => due)),
    };
  });
}

interface CountPlace {
  readonly node: number;
  readonly k: number;
  readonly trials: number;
  readonly count: number;
  readonly gameToGame: number;
}

function checkCount(fit: ChainFit, { node, k, trials, count, gameToGame }: CountPlace): Omit<CountCheck, 'size'> {
  const mean = fit.shares[node * fit.classes + k] as number;
  const worth = { concentration: fit.concentration[node] as number, gameToGame };
  const { low, high } = nextCountInterval({ trials, mean, ...worth });
  const pmf = betaBinomialPmf({ trials, mean, concentration: nextGameConcentration(worth) });
  const due = pmf.subarray(low, high + 1).reduce((sum, chance) => sum + chance, 0);
  return { held: low <= count && count <= high, width: (high - low) / trials, due };
}

function sizeOf(snaps: number): CountSize {
  const found = BUCKET_SIZES.find(({ least, most }) => least <= snaps && snaps <= most);
  return found?.id ?? 'under_5';
}
