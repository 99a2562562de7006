import type { LineForecast, Target } from '../../pressure/forecast/forecast-result.ts';
import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import { capital } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { seenValueWords } from '../words/seen-words.ts';
import { expectWords, isThin, shareWords } from '../words/share-words.ts';
import { ALL_SITUATIONS, situationLabel } from '../words/situation-label.ts';
import { type Cell, numberCell, numbers, type Row, type TableView, textCell, thinMark, words } from './table-view.ts';

/** What is asked at the line, and the class that is asked about. */
const QUESTIONS: readonly { readonly target: Target; readonly asked: string; readonly label: string }[] = [
  { target: 'run_or_pass', asked: 'run', label: 'Run' },
  { target: 'screen', asked: 'screen', label: 'Screen, of passes' },
  { target: 'quick_release', asked: 'within', label: 'Ball out in 2.5 s, of timed passes' },
];

/** What follows when they line up in a certain way, over all situations: the count on film. */
export function lineTable(plan: WeekPlan): TableView {
  return table(plan, { id: 'line-table', caption: 'By how they line up: counts on film', inner: false });
}

/** The same within each down and distance. */
export function lineSituationTable(plan: WeekPlan): TableView {
  return table(plan, { id: 'line-situation-table', caption: 'By how they line up, within a situation', inner: true });
}

interface LineTable {
  readonly id: string;
  readonly caption: string;
  readonly inner: boolean;
}

function table(plan: WeekPlan, { id, caption, inner }: LineTable): TableView {
  const lines = plan.forecast.line.filter(({ situation }) => (situation !== ALL_SITUATIONS) === inner);
  return {
    id,
    caption,
    columns: [
      words('They show'),
      numbers('Snaps'),
      ...QUESTIONS.map(({ label }) => numbers(label)),
      words('Runs we expect'),
    ],
    rows: lines.map(lineRow),
    empty: 'no look is charted on their film',
    phone: 'cards',
  };
}

function lineRow(line: LineForecast): Row {
  const inner = line.situation !== ALL_SITUATIONS;
  const look = capital(seenValueWords(line.kind, line.look));
  return {
    name: inner ? `${look}, ${situationLabel(line.situation)}` : look,
    ...thinMark(isThin({ trials: line.snaps })),
    cells: [
      numberCell(String(line.snaps), line.snaps),
      ...QUESTIONS.map(({ target, asked }) => filmCell(line, target, asked)),
      textCell(runsExpected(line)),
    ],
  };
}

function filmCell({ forecasts }: LineForecast, target: Target, asked: string): Cell {
  const film = forecasts
    .find((forecast) => forecast.target === target)
    ?.classes.find(({ name }) => name === asked)?.film;
  if (film === undefined || film.trials === 0) return textCell('not charted');
  return numberCell(shareWords(film), film.estimate ?? -1);
}

/** The forecast share, and the count to expect where enough such snaps are. */
function runsExpected({ forecasts }: LineForecast): string {
  const found = forecasts.find(({ target }) => target === 'run_or_pass');
  const share = found?.classes.find(({ name }) => name === 'run')?.share;
  if (found === undefined || share === undefined) return '';
  const range = found.expected.find(({ name }) => name === 'run');
  return range === undefined ? percent(share) : `${percent(share)}: ${expectWords(range, found.nextSnaps)}`;
}
