import type { Film } from '../../game/film.ts';
import type { WeekPlan } from '../plan/week-plan.ts';
import { type LiveForecast, liveForecasts } from './live-forecast.ts';
import { liveTallies } from './live-tally.ts';
import { type MovedSearch, movedTonight } from './moved.ts';
import { type OwnTonight, ownTonight } from './own-tonight.ts';
import { type RankedCall, type RankedFamily, rankCalls, rankFamilies } from './rank-calls.ts';

/** A carried call for the second half. */
export interface HalftimeCall extends RankedCall {
  /** Times called tonight, and times the plan expects it in the whole game. */
  readonly used: number;
  readonly planned: number;
  /** Sunday's share of the snaps of each situation. */
  readonly mix: readonly { readonly situation: string; readonly share: number }[];
}

/** A path our opponent has seen go with one coverage too often tonight, and the carried calls that break it. */
export interface PathWarning {
  readonly path: string;
  readonly coverage: string;
  readonly count: number;
  readonly trials: number;
  readonly instead: readonly string[];
}

/** The halftime update. */
export interface HalftimeUpdate {
  readonly schema: 'pressure-plan.halftime/1';
  readonly version: string;
  readonly opponent: string;
  readonly us: string;
  readonly invented: boolean;
  readonly liveSnaps: number;
  /** Live snaps whose answer could be told. */
  readonly answersKnown: number;
  readonly discount: number;
  readonly forecasts: readonly LiveForecast[];
  readonly moved: MovedSearch;
  readonly families: readonly RankedFamily[];
  /** Carried calls, best first; empty without a menu. */
  readonly calls: readonly HalftimeCall[];
  readonly situations: readonly { readonly id: string; readonly label: string; readonly expectedSnaps: number }[];
  readonly tonight: OwnTonight;
  readonly warnings: readonly PathWarning[];
}

/** Fewer calls of a path than this show no habit; judgment. */
const PATH_CALLS = 3;

/**
 * Sunday's plan after the snaps charted tonight: forecast brought up to date, what truly moved, families and carried
 * calls ranked again, and what we have shown ourselves. Pure: the same plan and snaps give the same update, in whatever
 * pieces the snaps came.
 */
export function halftimeUpdate(plan: WeekPlan, live: Film): HalftimeUpdate {
  const { settings, forecast, scores } = plan;
  const discount = settings.live_discount;
  const tallies = liveTallies(live, settings.situations);
  const forecasts = liveForecasts(forecast, tallies, discount);
  const carried = plan.menu?.kind === 'menu' ? plan.menu.calls : [];
  const tonight = ownTonight(live, plan.library);
  const answers = forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
  return {
    schema: 'pressure-plan.halftime/1',
    version: plan.version,
    opponent: plan.opponent,
    us: plan.us,
    invented: plan.film.invented,
    liveSnaps: live.size,
    answersKnown: answers?.classes[0]?.tonight.trials ?? 0,
    discount,
    forecasts,
    moved: movedTonight(forecast, tallies),
    families: rankFamilies({ scores, live: forecasts }),
    calls: rankCalls({ scores, live: forecasts }, carried).map((call) => ({
      ...call,
      used: timesUsed(tonight, call.call),
      planned: carried.find((entry) => entry.call === call.call)?.expectedCalls ?? 0,
      mix: carried.find((entry) => entry.call === call.call)?.mix ?? [],
    })),
    situations: scores.situations,
    tonight,
    warnings: pathWarnings(plan, tonight),
  };
}

function timesUsed(tonight: OwnTonight, call: string): number {
  const key = (name: string) => name.trim().toLowerCase();
  return tonight.calls.filter((entry) => key(entry.call) === key(call)).reduce((sum, { snaps }) => sum + snaps, 0);
}

function pathWarnings(plan: WeekPlan, tonight: OwnTonight): PathWarning[] {
  const carried = plan.menu?.kind === 'menu' ? plan.menu.calls : [];
  return tonight.paths
    .filter(({ share }) => share.trials >= PATH_CALLS && (share.estimate ?? 0) > plan.settings.menu.pairing_cap)
    .filter(({ path }) => isPressure(plan, path))
    .map(({ path, coverage, share }) => ({
      path,
      coverage,
      count: share.count,
      trials: share.trials,
      instead: carried.filter((call) => call.path === path && call.coverage !== coverage).map(({ call }) => call),
    }));
}

/** The base rush gives nothing away: only paths of pressures are warned of. */
function isPressure(plan: WeekPlan, path: string): boolean {
  return plan.library?.calls.some((call) => call.path === path && call.family !== 'base') ?? true;
}
