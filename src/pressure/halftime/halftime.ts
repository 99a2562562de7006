import type { Film } from '../../game/film.ts';
import { plainName } from '../../game/plain-name.ts';
import type { WeekPlan } from '../plan/week-plan.ts';
import { answersByRush, type RushAnswers } from './answers-by-rush.ts';
import { bestCalls, type SituationCalls } from './best-calls.ts';
import { firstHalfMarks } from './first-half-marks.ts';
import { halftimeFit } from './halftime-fit.ts';
import { type LiveForecast, liveForecasts } from './live-forecast.ts';
import { liveTallies } from './live-tally.ts';
import { type MovedSearch, movedHabits } from './moved.ts';
import { type OurFirstHalf, ourFirstHalf } from './our-first-half.ts';
import { byFit, type FitsThenAndNow, fitWhereCalled } from './rank-by-fit.ts';
import { type RankedCall, type RankedFamily, rankCalls, rankFamilies } from './rank-calls.ts';

/** A carried call for the second half. */
export interface HalftimeCall extends RankedCall {
  /** Times called tonight, and times the plan expects it in the whole game. */
  readonly used: number;
  readonly planned: number;
  /** Sunday's share of the snaps of each situation. */
  readonly mix: readonly { readonly situation: string; readonly share: number }[];
  /** Right less wrong where it is called, -1 to 1, Sunday and now; null where fit was not worked out. */
  readonly fit: { readonly before: number; readonly now: number } | null;
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
  readonly schema: 'pressure-plan.halftime/3';
  readonly version: string;
  readonly opponent: string;
  readonly us: string;
  readonly invented: boolean;
  readonly liveSnaps: number;
  /** Live snaps with a known answer. */
  readonly answersKnown: number;
  readonly discount: number;
  readonly forecasts: readonly LiveForecast[];
  readonly moved: MovedSearch;
  readonly families: readonly RankedFamily[];
  /** Carried calls, those that fit best first; empty without a menu. */
  readonly calls: readonly HalftimeCall[];
  /** Sunday's calls by situation in tonight's order; empty without a menu. */
  readonly situations: readonly SituationCalls[];
  /** False where fit stands as on Sunday, for want of the film behind the plan. */
  readonly fitMoved: boolean;
  /** What they did tonight by how many we sent. */
  readonly byRush: readonly RushAnswers[];
  readonly ours: OurFirstHalf;
  readonly warnings: readonly PathWarning[];
}

/** Fewer calls of a path than this show no habit; judgment. */
const PATH_CALLS = 3;

/** Sunday's plan, tonight's snaps, and the film behind the plan where it is at hand. */
export interface HalftimeInput {
  readonly plan: WeekPlan;
  readonly live: Film;
  readonly film: Film | null;
}

/**
 * Sunday's plan after the snaps charted tonight: forecast brought up to date, what truly moved, carried calls in tonight's
 * order by Sunday's rules of fit, and what we have shown ourselves. Pure: the same plan and snaps give the same update, in
 * whatever pieces the snaps came.
 */
export function halftimeUpdate({ plan, live, film }: HalftimeInput): HalftimeUpdate {
  const { settings, forecast, scores } = plan;
  const discount = settings.live_discount;
  const tallies = liveTallies(live, settings.situations);
  const forecasts = liveForecasts(forecast, tallies, discount);
  const ours = ourFirstHalf(live, plan.library);
  const answers = forecasts.find(({ target, situation }) => target === 'answer' && situation === 'all');
  const moved = halftimeFit({ plan, film, live, forecasts });
  const fits = { sunday: plan.fit.calls, halftime: moved ?? plan.fit.calls };
  return {
    schema: 'pressure-plan.halftime/3',
    version: plan.version,
    opponent: plan.opponent,
    us: plan.us,
    invented: plan.film.invented,
    liveSnaps: live.size,
    answersKnown: answers?.classes[0]?.firstHalf.trials ?? 0,
    discount,
    forecasts,
    moved: movedHabits(forecast, tallies),
    families: rankFamilies({ scores, live: forecasts }),
    calls: halftimeCalls(plan, { forecasts, ours, fits }),
    situations: situationCalls(plan, live, fits),
    fitMoved: moved !== null,
    byRush: answersByRush(live, plan.library, settings.situations),
    ours,
    warnings: pathWarnings(plan, ours),
  };
}

interface HalftimeCallsInput {
  readonly forecasts: readonly LiveForecast[];
  readonly ours: OurFirstHalf;
  readonly fits: FitsThenAndNow;
}

function halftimeCalls(plan: WeekPlan, { forecasts, ours, fits }: HalftimeCallsInput): readonly HalftimeCall[] {
  const menu = plan.menu?.kind === 'menu' ? plan.menu : null;
  if (menu === null) return [];
  const snapsOf = new Map(menu.situations.map(({ id, expectedSnaps }) => [id, expectedSnaps]));
  const calls = rankCalls({ scores: plan.scores, live: forecasts }, menu.calls).flatMap((ranked) => {
    const carried = menu.calls.find(({ call }) => call === ranked.call);
    if (carried === undefined) return [];
    const fit = fitWhereCalled(carried, snapsOf, fits);
    return { ...ranked, used: timesUsed(ours, ranked.call), planned: carried.expectedCalls, mix: carried.mix, fit };
  });
  return byFit(calls);
}

function situationCalls({ menu, library, settings }: WeekPlan, live: Film, fits: FitsThenAndNow) {
  if (menu?.kind !== 'menu' || library === null) return [];
  const marks = firstHalfMarks(live, library, settings.situations);
  return bestCalls({ situations: menu.situations, menu: menu.calls, ...fits, marks });
}

function timesUsed(ours: OurFirstHalf, call: string): number {
  return ours.calls
    .filter((entry) => plainName(entry.call) === plainName(call))
    .reduce((sum, { snaps }) => sum + snaps, 0);
}

function pathWarnings(plan: WeekPlan, ours: OurFirstHalf): PathWarning[] {
  const carried = plan.menu?.kind === 'menu' ? plan.menu.calls : [];
  return ours.paths
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
