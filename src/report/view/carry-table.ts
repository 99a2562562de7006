import type { MenuCall, MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { familyLabel } from '../words/label.ts';
import { fixed } from '../words/number-words.ts';
import { percent } from '../words/percent.ts';
import { planSituations, situationLabel } from '../words/situation-label.ts';
import { howSure, overallScore } from './how-sure.ts';
import { numberCell, numbers, type Row, type TableView, textCell, words } from './table-view.ts';

/** What to carry and call, why, and how sure: the calls of the menu, most called first. */
export function carryTable(plan: WeekPlan, menu: Extract<MenuResult, { kind: 'menu' }>): TableView {
  const calls = [...menu.calls].sort((a, b) => b.expectedCalls - a.expectedCalls);
  return {
    id: 'carry',
    caption: 'What to carry and call',
    columns: [
      words('Call'),
      words('Kind'),
      numbers('About how often'),
      words('Call it most on'),
      words('Why'),
      words('How sure'),
    ],
    rows: calls.map((call) => carryRow(plan, call)),
    empty: 'no call is carried',
    phone: 'cards',
  };
}

function carryRow(plan: WeekPlan, call: MenuCall): Row {
  return {
    name: call.call,
    cells: [
      textCell(familyLabel(call.family)),
      numberCell(`${fixed(call.expectedCalls, 1)} a game`, call.expectedCalls),
      textCell(calledMostOn(plan, call)),
      textCell(call.why),
      textCell(sureOf(plan, call)),
    ],
  };
}

/** The three situations in which a call is used most often over a game, with its share there. */
export function calledMostOn(plan: WeekPlan, call: MenuCall): string {
  const snapsOf = new Map(planSituations(plan).map((situation) => [situation.id, situation.expectedSnaps]));
  const uses = call.mix
    .map(({ situation, share }) => ({ situation, share, calls: share * (snapsOf.get(situation) ?? 0) }))
    .filter((use) => use.calls > 0)
    .sort((a, b) => b.calls - a.calls)
    .slice(0, 3);
  if (uses.length === 0) return 'held back';
  return uses
    .filter((use, place) => place === 0 || use.share >= 0.05)
    .map((use) => `${situationLabel(plan, use.situation)} (${percent(use.share)})`)
    .join(', ');
}

function sureOf(plan: WeekPlan, call: MenuCall): string {
  const score = overallScore(plan, call.family);
  return howSure(score);
}
