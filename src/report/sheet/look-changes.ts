import type { FitAdjustment, FitLook } from '../../pressure/fit/fit-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { countWords, isThin } from '../words/share-words.ts';
import { numberedCalls } from './call-numbers.ts';

/** The looks of the call sheet, as they head its columns. */
export const SHEET_LOOKS: readonly { readonly look: FitLook; readonly label: string }[] = [
  { look: 'trips', label: 'Trips' },
  { look: 'empty', label: 'Empty' },
  { look: 'heavy', label: 'Heavy' },
  { look: 'two_backs', label: 'Two backs' },
  { look: 'fast_motion', label: 'Fast motion' },
  { look: 'fast_tempo', label: 'Fast tempo' },
  { look: 'checked', label: 'Play changed' },
];

/** What becomes of one call against each look of the sheet. */
export interface LookRow {
  readonly call: string;
  readonly cells: readonly string[];
}

/** The sheet's looks against this opponent: a row a call, and the looks their film does not show and no call changes for. */
export interface LookTable {
  readonly columns: readonly { readonly label: string; readonly count: string }[];
  readonly rows: readonly LookRow[];
  /** Looks without a column: those the film does not show, and those not charted. */
  readonly notOnFilm: readonly string[];
  readonly notCharted: readonly string[];
}

/** What the carried pressures do against each look: stay, swap to a call of the same path, or out to the base. */
export function lookTable(plan: WeekPlan): LookTable {
  const calls = numberedCalls(plan).filter(({ call }) => call.family !== 'base');
  const looks = SHEET_LOOKS.map(({ look, label }) => ({
    label,
    count: countOf(plan, look),
    isSeen: isSeen(plan, look),
    cells: calls.map(({ call }) => lookWords(plan, look, call.name)),
  }));
  const said = looks.filter(({ isSeen, cells }) => isSeen || cells.some((cell) => cell !== '' && cell !== 'stay'));
  const silent = looks.filter((look) => !said.includes(look));
  return {
    columns: said.map(({ label, count }) => ({ label, count })),
    rows: calls.map(({ call }, i) => ({ call: call.name, cells: said.map(({ cells }) => cells[i] ?? '') })),
    notOnFilm: silent
      .filter(({ count }) => count !== NOT_CHARTED)
      .map(({ label, count }) => `${label.toLowerCase()} ${count}`),
    notCharted: silent.filter(({ count }) => count === NOT_CHARTED).map(({ label }) => label.toLowerCase()),
  };
}

function isSeen({ fit }: WeekPlan, look: FitLook): boolean {
  return (fit.adjustments.find((entry) => entry.look === look)?.count ?? 0) > 0;
}

const NOT_CHARTED = 'not charted';

/** How often a look comes, as it stands under its heading. */
function countOf({ fit }: WeekPlan, look: FitLook): string {
  const found = fit.adjustments.find((entry) => entry.look === look);
  return found === undefined || found.trials === 0 ? NOT_CHARTED : countWords(found);
}

function lookWords(plan: WeekPlan, look: FitLook, call: string): string {
  const adjustment = plan.fit.adjustments.find((entry) => entry.look === look);
  const found = adjustment?.calls.find((entry) => entry.call === call);
  if (adjustment === undefined || found === undefined) return libraryWords(plan, look, call);
  const mark = isThin({ trials: adjustment.count }) ? '?' : '';
  return `${doesWords(found)}${mark}`;
}

function doesWords({ does, swapTo }: FitAdjustment['calls'][number]): string {
  if (does === 'stays') return 'stay';
  return does === 'swaps' && swapTo !== null ? `→ ${swapTo}` : 'base';
}

/** Where their film shows no such snap the library speaks: a call without a rule for the look is left. */
function libraryWords({ library }: WeekPlan, look: FitLook, name: string): string {
  if (look === 'fast_tempo' || look === 'checked') return '';
  const call = library?.calls.find((entry) => entry.name === name);
  if (call === undefined) return '';
  return call.given.includes(look) || call.adjust[look] === undefined ? 'base' : 'stay';
}
