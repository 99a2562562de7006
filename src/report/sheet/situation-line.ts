import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { knownForecasts } from '../view/known-forecasts.ts';
import { mixShare, unnamedBase } from '../view/menu-table.ts';
import { answerInSentence, answerLabel } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { clockDigits, type DigitCall } from './clock-digits.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** One line of the call sheet: a situation, its calls in order, and the one fact behind them. */
export interface SituationLine {
  readonly id: string;
  readonly label: string;
  readonly calls: readonly DigitCall[];
  readonly fact: string;
}

/** Shares below this are arithmetic, not calls. */
const ROUNDING = 1e-6;

/** The lines of the call sheet in the order of the downs. */
export function situationLines(plan: WeekPlan, menu: Menu): readonly SituationLine[] {
  return menu.situations.map(({ id, label }) => {
    const named = menu.calls.map((call) => ({ call: call.call, share: mixShare(call, id) }));
    const mix = [...named, { call: 'Base', share: unnamedBase(menu, id) }].filter(({ share }) => share > ROUNDING);
    const calls = clockDigits(mix).filter((call) => call.tenths > 0);
    return { id, label, calls, fact: answersFact(plan, id) };
  });
}

/** What they do most there, with the snaps of it on film. */
function answersFact(plan: WeekPlan, situation: string): string {
  const cell = knownForecasts(plan, 'answer').find((entry) => entry.situation === situation);
  if (cell === undefined) return '';
  const [first, second] = [...cell.classes].sort((a, b) => b.share - a.share);
  if (first === undefined || second === undefined) return '';
  const basis = cell.ownSnaps === 0 ? 'no film' : `${cell.ownSnaps} on film${cell.thin ? ', thin' : ''}`;
  return `${answerLabel(first.name)} ${percent(first.share)}, ${answerInSentence(second.name)} ${percent(second.share)} (${basis}).`;
}
