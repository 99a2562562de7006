import type { Target } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { TARGET_LABELS } from '../words/label.ts';
import { countWords } from '../words/share-words.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import { forecastWords } from './forecast-table.ts';
import { knownForecasts } from './known-forecasts.ts';
import { type Cell, numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';
import { isThinSituation } from './thin-situation.ts';

/** The habits with two classes, and the class that is asked about. */
const HABITS: readonly { readonly target: Target; readonly asked: string }[] = [
  { target: 'run_or_pass', asked: 'pass' },
  { target: 'screen', asked: 'screen' },
  { target: 'quick_release', asked: 'within' },
  { target: 'motion', asked: 'motion' },
];

/** Pass, screen, quick release and motion by situation: the forecast, and the plain count on film beside it. */
export function habitTable(plan: WeekPlan): TableView {
  const situations = [...new Set(plan.forecast.forecasts.map((cell) => cell.situation))];
  return {
    id: 'habit-table',
    caption: 'Pass, screen, quick release and motion by situation: forecast with 95% interval, then the count on film',
    columns: [words('Situation'), ...HABITS.map(({ target }) => numbers(TARGET_LABELS[target]))],
    rows: situations.map((situation) => habitRow(plan, situation)),
    empty: 'nothing was forecast',
  };
}

function habitRow(plan: WeekPlan, situation: string): Row {
  return {
    name: situationLabel(situation),
    ...(situation === ALL_SITUATIONS ? {} : { situation }),
    ...thinMark(isThinSituation(plan, situation)),
    cells: HABITS.map(({ target, asked }) => habitCell(plan, situation, { target, asked })),
  };
}

function habitCell(plan: WeekPlan, situation: string, { target, asked }: (typeof HABITS)[number]): Cell {
  const found = knownForecasts(plan, target)
    .find((cell) => cell.situation === situation)
    ?.classes.find((entry) => entry.name === asked);
  if (found === undefined) return textCell('not forecast');
  return numberCell(`${forecastWords(found)}; film ${countWords(found.film)}`, found.share);
}
