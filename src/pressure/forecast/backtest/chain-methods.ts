import { sharesOnSnap } from '../chain-snap.ts';
import { pathOf } from '../chain-tree.ts';
import type { ChainKind } from '../forecast-film.ts';
import type { ForecastMethod, Predict } from './forecast-method.ts';
import type { WindowFilm } from './window-film.ts';

const PLAINER: Readonly<Record<ChainKind, readonly string[]>> = {
  plan: ['own_rate', 'own_down_distance', 'archive_down_distance', 'raw_cell'],
  line: ['own_rate', 'own_down_distance', 'archive_down_distance', 'raw_cell_look'],
};

/** Both chains, from the offense's own games alone and with the archive behind them. */
export const CHAIN_METHODS: readonly ForecastMethod[] = [
  chain('plan', 'own', 'the chain before the look, own games'),
  chain('plan', 'archive', 'the chain before the look, with the archive'),
  chain('line', 'own', 'the chain with the look, own games'),
  chain('line', 'archive', 'the chain with the look, with the archive'),
];

function chain(knows: ChainKind, from: 'own' | 'archive', words: string): ForecastMethod {
  const fit = (window: WindowFilm): Predict | null => {
    const fitted = window.chain(knows, from);
    if (fitted === null) return null;
    const tree = window.film.trees[knows];
    const snaps = { tree, fit: fitted, own: window.own(knows), archive: from === 'own' ? null : window.archive(knows) };
    return (row) => sharesOnSnap(snaps, pathOf(tree, row));
  };
  return { id: `chain_${knows}_${from}`, words, knows, against: PLAINER[knows], fit };
}
