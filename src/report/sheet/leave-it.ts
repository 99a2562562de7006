import type { Call } from '../../game/call-library.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { matrixCells } from '../view/answer-matrix.ts';
import { isCarried } from '../view/carried-calls.ts';
import { listed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { shareWords } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';

/** What one or several calls do against the looks that may break them. */
export interface LeaveRow {
  readonly calls: string;
  readonly trips: string;
  readonly empty: string;
  readonly motion: string;
}

/** What the carried pressures do against trips, empty and fast motion; calls with the same rules share a row. */
export function leaveRows(plan: WeekPlan): readonly LeaveRow[] {
  const calls = plan.library?.calls.filter((call) => call.family !== 'base' && isCarried(plan)(call.name)) ?? [];
  const rows = new Map<string, LeaveRow>();
  for (const call of calls) {
    const rules = {
      trips: adjustOf(call, 'trips'),
      empty: adjustOf(call, 'empty'),
      motion: adjustOf(call, 'fast_motion'),
    };
    const key = Object.values(rules).join('|');
    const before = rows.get(key)?.calls;
    rows.set(key, { ...rules, calls: before === undefined ? call.name : `${before}, ${call.name}` });
  }
  return [...rows.values()];
}

/** When a screen is most likely, and what to do when they look to the sideline. */
export function alertLines(plan: WeekPlan): readonly string[] {
  return [screenAlert(plan), ...screenTells(plan), freezeLine(plan)].filter((line) => line !== '');
}

function adjustOf(call: Call, look: 'trips' | 'empty' | 'fast_motion'): string {
  if (call.given.includes(look)) return 'given: leave it';
  return call.adjust[look] ?? 'no rule: leave it';
}

/** A situation is a screen alert from this forecast share on; judgement. */
const SCREEN_ALERT = 0.2;

function screenAlert(plan: WeekPlan): string {
  const alerts = matrixCells(plan)
    .map((cell) => ({ id: cell.situation, share: cell.classes.find((entry) => entry.name === 'screen')?.share ?? 0 }))
    .filter((cell) => cell.share >= SCREEN_ALERT)
    .sort((a, b) => b.share - a.share)
    .slice(0, 3);
  if (alerts.length === 0) return 'Screen: no situation stands out.';
  const where = alerts.map((cell) => `${situationLabel(plan, cell.id)} (${percent(cell.share)})`);
  return `Screen alert on ${listed(where)}: leave zero and the add-on, peel or stay home.`;
}

function screenTells(plan: WeekPlan): readonly string[] {
  return plan.forecast.tells.tells
    .filter((tell) => tell.follows === 'screen')
    .map((tell) => `${tell.description}: think screen, plan with ${percent(tell.planWith)}.`);
}

function freezeLine(plan: WeekPlan): string {
  const changed = plan.ownFilm?.changedAfterLook;
  const film =
    changed === undefined || changed.trials === 0
      ? ''
      : ` On our film they changed the play after an early look on ${shareWords(changed)}.`;
  return `Look to the sideline: hold the shell, move late, and be ready to leave the call when they set again.${film}`;
}
