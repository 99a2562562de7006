import type { Film } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import type { MenuResult } from '../../../src/pressure/menu/result.ts';
import { filmChapter } from '../../../src/pressure/plan/film-chapter.ts';
import { planWeek } from '../../../src/pressure/plan/plan-week.ts';
import type { WeekPlan } from '../../../src/pressure/plan/week-plan.ts';
import { loadExactSolver } from '../../../src/stats/exact-solver.ts';
import { demoDefense } from '../demo-defense.ts';

const exact = await loadExactSolver();

/** The whole plan of a week against an invented offense, with the demo's calls and no film of our own. */
export function planAgainst(chart: Film): WeekPlan {
  const has = { archive: false, ownFilm: false, library: true, weekFile: true };
  return planWeek({
    chart,
    archive: null,
    ownFilm: null,
    library: demoDefense,
    settings: weekSettingsSchema.parse({ opponent: 'Invented', invented: true, snaps: 58, menu: { reps: 150 } }),
    film: filmChapter(chart, { faults: 0, warnings: 0, problems: [], invented: true, has }),
    date: '2026-10-09',
    version: 'test',
    exact,
  });
}

/** A plan's menu, or an error that names the clash. */
export function menuAgainst({ menu }: Pick<WeekPlan, 'menu'>): Extract<MenuResult, { kind: 'menu' }> {
  if (menu?.kind !== 'menu') throw new Error(`no menu: ${JSON.stringify(menu)}`);
  return menu;
}

/** Share of a menu's pressures by family. */
export function familyShares({ calls }: Pick<Extract<MenuResult, { kind: 'menu' }>, 'calls'>): Map<string, number> {
  const total = calls.reduce((sum, { expectedCalls }) => sum + expectedCalls, 0);
  const shares = new Map<string, number>();
  for (const { family, expectedCalls } of calls) {
    shares.set(family, (shares.get(family) ?? 0) + expectedCalls / total);
  }
  return shares;
}
