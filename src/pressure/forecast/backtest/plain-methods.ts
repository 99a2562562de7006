import type { ChainTally } from '../chain-tally.ts';
import type { ChainKind } from '../forecast-film.ts';
import type { ForecastMethod, MethodId, Predict } from './forecast-method.ts';
import { plainShares } from './plain-shares.ts';
import type { WindowFilm } from './window-film.ts';

/** The plain ways to forecast that a chain has to beat: what a spreadsheet of the film would say. */
export const PLAIN_METHODS: readonly ForecastMethod[] = [
  plain({ id: 'own_rate', knows: 'plan', depth: 0, of: (window) => window.own('plan') }),
  plain({
    id: 'own_down_distance',
    knows: 'plan',
    depth: 1,
    of: (window) => window.own('plan'),
  }),
  plain({
    id: 'raw_cell',
    knows: 'plan',
    depth: Number.POSITIVE_INFINITY,
    of: (window) => window.own('plan'),
  }),
  plain({
    id: 'raw_cell_look',
    knows: 'line',
    depth: Number.POSITIVE_INFINITY,
    of: (window) => window.own('line'),
  }),
  plain({
    id: 'archive_rate',
    knows: 'plan',
    depth: 0,
    of: (window) => window.archive('plan')?.tally ?? null,
  }),
  plain({
    id: 'archive_down_distance',
    knows: 'plan',
    depth: 1,
    of: (window) => window.archive('plan')?.tally ?? null,
  }),
];

interface PlainMethod {
  readonly id: MethodId;
  readonly knows: ChainKind;
  /** Deepest level of the chain's cells it looks at. */
  readonly depth: number;
  readonly of: (window: WindowFilm) => ChainTally | null;
}

function plain({ id, knows, depth, of }: PlainMethod): ForecastMethod {
  const fit = (window: WindowFilm): Predict | null => {
    const tally = of(window);
    return tally === null ? null : plainShares({ tree: window.film.trees[knows], tally, depth });
  };
  return { id, knows, against: [], fit };
}
