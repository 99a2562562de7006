import { THIN_SNAPS } from '../../game/thin-snaps.ts';
import { betaQuantile } from '../../stats/beta.ts';
import { share } from '../../stats/share.ts';
import { nodeTotal } from './chain-tally.ts';
import type { FittedTarget } from './forecast-film.ts';
import type { ExpectedCount, Forecast, ForecastClass } from './forecast-result.ts';
import { nextCountInterval } from './next-count.ts';
import { TARGET_STRENGTHS } from './target-strengths.ts';

/** A count forecast for fewer snaps says nothing: its interval spans most of the scale (measured on open play data). */
export const LEAST_NEXT_SNAPS = 5;

/** The cell of a chain a forecast is asked for. */
export interface ForecastCell {
  /** Situation id, or `all`. */
  readonly situation: string;
  /** Its node; null where no snap of it was ever charted, so that the root speaks for it. */
  readonly node: number | null;
  /** Such snaps expected on Friday. */
  readonly nextSnaps: number;
}

/** The forecast of a fitted target in one cell. */
export function forecastCell(fitted: FittedTarget, cell: ForecastCell): Forecast {
  const node = cell.node ?? 0;
  const { own, definition } = fitted;
  const ownSnaps = cell.node === null ? 0 : nodeTotal(own, node);
  const classes = definition.classes.map((name, k) => forecastClass(fitted, cell, { name, k, ownSnaps }));
  return {
    target: definition.target,
    situation: cell.situation,
    classes,
    ownSnaps,
    mostlyFrom: mostlyFrom(fitted, cell),
    ownShare: ownShareAt(fitted, node),
    nextSnaps: cell.nextSnaps,
    expected: expectedCounts(fitted, cell, classes),
    thin: ownSnaps < THIN_SNAPS,
  };
}

/** Weight of the offense's own film in a cell's share: its own snaps there, and what the cells above take from it. */
function ownShareAt(
  { fit, own, archive, tree }: Pick<FittedTarget, 'fit' | 'own' | 'archive' | 'tree'>,
  node: number,
): number {
  if (nodeTotal(own, 0) === 0) return 0;
  if (archive === null) return 1;
  const here = fit.ownWeight[node] as number;
  if (node === 0) return here;
  return here + (1 - here) * ownShareAt({ fit, own, archive, tree }, tree.parent[node] as number);
}

interface ClassPlace {
  readonly name: string;
  readonly k: number;
  readonly ownSnaps: number;
}

function forecastClass(
  { fit, own }: FittedTarget,
  cell: ForecastCell,
  { name, k, ownSnaps }: ClassPlace,
): ForecastClass {
  const node = cell.node ?? 0;
  const mean = fit.shares[node * fit.classes + k] as number;
  const concentration = fit.concentration[node] as number;
  const alpha = mean * concentration;
  const film = share(ownSnaps === 0 ? 0 : (own.counts[node * fit.classes + k] as number), ownSnaps);
  const [low, high] = [0.025, 0.975].map((p) => betaQuantile(p, alpha, concentration - alpha)) as [number, number];
  return { name, share: mean, low, high, alpha, film };
}

function mostlyFrom({ fit, own, archiveGames }: FittedTarget, cell: ForecastCell): Forecast['mostlyFrom'] {
  if (nodeTotal(own, 0) === 0) return archiveGames === 0 ? 'nothing' : 'archive';
  const root = fit.ownWeight[0] as number;
  const here = cell.node === null || cell.node === 0 ? 0 : (fit.ownWeight[cell.node] as number);
  const above = (1 - here) * (archiveGames === 0 ? 1 : root);
  const archive = 1 - here - above;
  if (cell.node !== 0 && here >= above && here >= archive) return 'here';
  return above >= archive ? 'all_their_snaps' : 'archive';
}

function expectedCounts(fitted: FittedTarget, cell: ForecastCell, classes: readonly ForecastClass[]): ExpectedCount[] {
  const trials = Math.round(cell.nextSnaps);
  const charted = fitted.archiveGames > 0 || nodeTotal(fitted.own, 0) > 0;
  if (cell.nextSnaps < LEAST_NEXT_SNAPS || !charted) return [];
  const concentration = fitted.fit.concentration[cell.node ?? 0] as number;
  const { gameToGame } = TARGET_STRENGTHS[fitted.definition.target].plan;
  return classes.map(({ name, share: mean }) => {
    return { name, ...nextCountInterval({ trials, mean, concentration, gameToGame }) };
  });
}
