import type { Film } from '../../../game/film.ts';
import { SITUATIONS } from '../../../game/situations.ts';
import type { WeekSettings } from '../../../game/week-settings.ts';
import { backtestVerdict } from '../backtest/backtest-verdict.ts';
import { nodeAt } from '../chain-tree.ts';
import type { CountRow } from '../counts/count-row.ts';
import { withCounts } from '../counts/counted-film.ts';
import { type ForecastCell, forecastCell } from '../forecast-cell.ts';
import { type FittedTarget, type ForecastFilm, fitTarget, forecastFilm } from '../forecast-film.ts';
import type { Forecast, ForecastChapter } from '../forecast-result.ts';
import { lineForecasts } from '../line-forecasts.ts';
import { nextSnaps } from '../next-snaps.ts';
import { TARGET_DEFINITIONS } from '../target.ts';
import { findTells } from '../tells.ts';

/** What the forecast of a week is made from. */
export interface ForecastInput {
  /** The opponent's snaps. */
  readonly chart: Film;
  /** Snaps of other offenses, or null when there are none. */
  readonly archive: Film | null;
  /** Tallies of other offenses that join the archive; absent when there are none. */
  readonly counts?: readonly CountRow[];
  readonly settings: WeekSettings;
}

/**
 * What they will do: every target over all snaps and in each situation, the tells, how the forecast did on their own
 * film, and the archive's part in it.
 */
export function forecastWeek({ chart, archive, counts = [], settings }: ForecastInput): ForecastChapter {
  const film = withCounts(forecastFilm(chart, archive, settings.situations), counts);
  const fitted = TARGET_DEFINITIONS.map((definition) => fitTarget(film, definition, 'plan'));
  const cells = situationCells(film, fitted, settings.snaps);
  const forecasts = fitted.flatMap((target) => targetForecasts(target, cells));
  return {
    forecasts,
    line: lineForecasts(film, settings.snaps),
    tells: findTells(film, chart, settings.situations),
    backtest: backtestVerdict({ film, chart, cuts: settings.situations, fitted }),
    archive: { used: archive !== null || counts.length > 0 },
  };
}

interface PlanCell extends ForecastCell {
  /** Passes among the snaps expected on Friday. */
  readonly nextPasses: number;
}

function targetForecasts(fitted: FittedTarget, cells: readonly PlanCell[]): Forecast[] {
  return cells.map(({ nextPasses, ...cell }) =>
    forecastCell(fitted, { ...cell, nextSnaps: fitted.definition.per === 'pass' ? nextPasses : cell.nextSnaps }),
  );
}

/** All snaps and the situations as cells of the plan's chain, with what Friday should bring of each. */
function situationCells(film: ForecastFilm, fitted: readonly FittedTarget[], snaps: number): PlanCell[] {
  const tree = film.trees.plan;
  const next = nextSnaps(film, snaps);
  const passShare = passShares(fitted);
  const situations = SITUATIONS.map(({ id }, code) => {
    const node = nodeAt(tree, [code]);
    const expected = next[code] as number;
    return {
      situation: id,
      node: node === 0 ? null : node,
      nextSnaps: expected,
      nextPasses: expected * passShare(node),
    };
  });
  const all = {
    situation: 'all',
    node: 0,
    nextSnaps: snaps,
    nextPasses: snaps * passShare(0),
  };
  return [all, ...situations];
}

function passShares(fitted: readonly FittedTarget[]): (node: number) => number {
  const runOrPass = fitted.find(({ definition }) => definition.target === 'run_or_pass');
  return (node) => runOrPass?.fit.shares[node * 2 + 1] ?? 0;
}
