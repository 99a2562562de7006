import type { MenuResult } from '../../pressure/menu/result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { knownForecasts } from '../view/known-forecasts.ts';
import { answerInSentence, answerLabel } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { shareWords } from '../words/share-words.ts';
import { situationLabel } from '../words/situation-label.ts';
import { BASE, type ClockCall, type ClockRow, clockRule } from './clock-rule.ts';

type Menu = Extract<MenuResult, { kind: 'menu' }>;

/** A call of a row: how often, and on which seconds of the clock where the rule holds. */
export interface SheetCall {
  readonly call: string;
  readonly when: string;
}

/** One row of the call sheet. */
export interface SheetRow {
  readonly id: string;
  readonly label: string;
  readonly base: string;
  readonly calls: readonly SheetCall[];
  /** What they do there, on film. */
  readonly fact: string;
}

/** The rows by down and distance, in the coach's own order where week.yaml gives one; seconds where the rule holds. */
export function sheetRows(plan: WeekPlan, menu: Menu): { readonly rows: readonly SheetRow[]; readonly clock: boolean } {
  const rule = clockRule(menu);
  const order: readonly string[] = plan.settings.sheet.order;
  const place = (id: string) => (order.includes(id) ? order.indexOf(id) : order.length);
  const ids = menu.situations.map(({ id }) => id).sort((a, b) => place(a) - place(b));
  const rows = ids.map((id) => {
    const calls = rule?.find(({ situation }) => situation === id)?.calls ?? plainRow(menu, id).calls;
    const base = calls.find(({ call }) => call === BASE);
    const sent = calls.filter(({ call, share }) => call !== BASE && share >= WORTH_PRINTING);
    return {
      id,
      label: situationLabel(id),
      base: base === undefined ? '' : whenWords(base, rule !== null),
      calls: sent
        .map((call) => ({ call: call.call, when: whenWords(call, rule !== null) }))
        .filter(({ when }) => when !== ''),
      fact: answersFact(plan, id),
    };
  });
  return { rows, clock: rule !== null };
}

/** Without seconds a share under one in two hundred is not printed. */
const WORTH_PRINTING = 0.005;

function plainRow(menu: Menu, situation: string): ClockRow {
  const calls = menu.calls
    .filter(({ family }) => family !== 'base')
    .map(({ call, mix }) => ({ call, share: mix.find((part) => part.situation === situation)?.share ?? 0 }));
  const base = { call: BASE, share: 1 - calls.reduce((sum, { share }) => sum + share, 0) };
  return {
    situation,
    calls: [base, ...calls.sort((a, b) => b.share - a.share)].map((call) => ({
      ...call,
      seconds: 0,
      first: 0,
      last: -1,
    })),
  };
}

function whenWords({ share, seconds, first, last }: ClockCall, clock: boolean): string {
  if (!clock) return percent(share);
  if (seconds === 0) return '';
  return seconds === 1 ? two(first) : `${two(first)}-${two(last)}`;
}

function two(second: number): string {
  return String(second).padStart(2, '0');
}

/** What they do most there, counted on film; nothing where there is none. */
function answersFact(plan: WeekPlan, situation: string): string {
  const cell = knownForecasts(plan, 'answer').find((entry) => entry.situation === situation);
  if (cell === undefined || cell.ownSnaps === 0) return '';
  const [first, second] = [...cell.classes].sort((a, b) => b.film.count - a.film.count);
  if (first === undefined || first.film.count === 0) return '';
  const then =
    second === undefined || second.film.count === 0 ? '' : `, ${answerInSentence(second.name)} ${second.film.count}`;
  return `${answerLabel(first.name)} ${shareWords(first.film)}${then}`;
}
