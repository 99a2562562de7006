import { sharesOnSnap } from '../chain-snap.ts';
import { pathOf } from '../chain-tree.ts';
import type { ChainKind } from '../forecast-film.ts';
import type { ForecastMethod, MethodId, Predict } from './forecast-method.ts';
import type { WindowFilm } from './window-film.ts';

const PLAINER: Readonly<Record<ChainKind, readonly MethodId[]>> = {
  plan: ['own_rate', 'own_down_distance', 'archive_down_distance', 'raw_cell'],
  line: ['own_rate', 'own_down_distance', 'archive_down_distance', 'raw_cell_look'],
};

/** Both chains, from the offense's own games alone and with the archive behind them. */
export const CHAIN_METHODS: readonly ForecastMethod[] = [
  chain('plan', 'own'),
  chain('plan', 'archive'),
  chain('line', 'own'),
  chain('line', 'archive'),
];

function chain(knows: ChainKind, from: 'own' | 'archive'): ForecastMethod {
  const fit = (window: WindowFilm): Predict | null => {
    const fitted = window.chain(knows, from);
    if (fitted === null) return null;
    const tree = window.film.trees[knows];
    const snaps = { tree, fit: fitted, own: window.own(knows), archive: from === 'own' ? null : window.archive(knows) };
    return (row) => sharesOnSnap(snaps, pathOf(tree, row));
  };
  return { id: `chain_${knows}_${from}`, knows, against: PLAINER[knows], fit };
}
