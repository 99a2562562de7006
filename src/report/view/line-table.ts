import type { LineForecast, Target } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { capital, TARGET_LABELS } from '../words/label.ts';
import { countWords, THIN_SNAPS } from '../words/share-words.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import { expectedWords, forecastWords } from './forecast-table.ts';
import { type Cell, numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';

/** What is asked at the line, and the class that is asked about. */
const QUESTIONS: readonly { readonly target: Target; readonly asked: string }[] = [
  { target: 'run_or_pass', asked: 'pass' },
  { target: 'screen', asked: 'screen' },
  { target: 'quick_release', asked: 'within' },
];

/** What follows when they line up in a certain way: forecast, count on film, and how many to expect on Friday. */
export function lineTable(plan: WeekPlan): TableView {
  return {
    id: 'line-table',
    caption: 'When they line up like this: forecast with 95% interval, count on film, and what Friday should bring',
    columns: [words('They show'), numbers('On film'), ...QUESTIONS.map(({ target }) => numbers(TARGET_LABELS[target]))],
    rows: (plan.forecast.line ?? []).map((line) => lineRow(plan, line)),
    empty: 'no look was charted on their film',
    phone: 'cards',
  };
}

function lineRow(plan: WeekPlan, line: LineForecast): Row {
  const inner = line.situation !== ALL_SITUATIONS;
  const thin = line.snaps < THIN_SNAPS;
  const snaps = `${line.snaps} snap${line.snaps === 1 ? '' : 's'}${thin ? ', thin' : ''}`;
  return {
    name: inner ? `${capital(line.label)}, ${situationLabel(plan, line.situation)}` : capital(line.label),
    ...(inner ? { situation: line.situation } : {}),
    ...thinMark(thin),
    cells: [numberCell(snaps, line.snaps), ...QUESTIONS.map(({ target, asked }) => lineCell(line, target, asked))],
  };
}

function lineCell({ forecasts }: LineForecast, target: Target, asked: string): Cell {
  const found = forecasts.find((forecast) => forecast.target === target);
  const entry = found?.classes.find(({ name }) => name === asked);
  if (!(found && entry)) return textCell('not forecast');
  const friday = found.expected.length === 0 ? '' : `; Friday ${expectedWords(found, asked)}`;
  return numberCell(`${forecastWords(entry)}; film ${countWords(entry.film)}${friday}`, entry.share);
}
