import type { WeekPlan } from '../../pressure/plan/week-plan.ts';
import type { OpponentTable, TableRow, TableSplit, TopCounts } from '../../pressure/tables/tables-result.ts';
import { answerInSentence, plainWords } from '../words/label.ts';
import { percent } from '../words/percent.ts';
import { isThin, shareWords } from '../words/share-words.ts';
import { sureWord } from '../words/sure-words.ts';
import {
  numberCell,
  numbers,
  type Row,
  type TableView,
  textCell,
  thinMark,
  withoutEmptyColumns,
  words,
} from './table-view.ts';

/** How each table is headed. */
const CAPTIONS: Readonly<Record<TableSplit, string>> = {
  field_zone: 'By field zone',
  formation: 'By formation',
  personnel: 'By personnel',
  receivers: 'By how the receivers line up',
  look: 'By where the quarterback is',
  hash: 'By hash',
  strength_side: 'By the side of the strength',
};

/** Rows of a table; more would not be read, and rarer ones say little. */
const SHOWN = 8;

/** The table of one split; null where nobody charted it. */
export function opponentTable({ tables }: WeekPlan, by: TableSplit): TableView | null {
  const found = tables.tables.find((table) => table.by === by);
  if (found === undefined || found.charted === 0 || found.rows.length === 0) return null;
  const concepts = found.rows.some(({ concepts: { top } }) => top.length > 0);
  return withoutEmptyColumns({
    id: `by-${by.replace('_', '-')}`,
    caption: captionOf(found),
    columns: [
      words('They show'),
      numbers('Snaps'),
      numbers('Runs'),
      words('Others run'),
      words('What they do most'),
      ...(concepts ? [words('Top plays')] : []),
      words('How sure they differ'),
    ],
    rows: found.rows.slice(0, SHOWN).map((row) => tableRow(row, { by, concepts })),
    empty: 'not charted',
    phone: 'cards',
  });
}

function captionOf({ by, charted, snaps }: OpponentTable): string {
  return charted === snaps ? CAPTIONS[by] : `${CAPTIONS[by]} (charted on ${charted} of ${snaps} snaps)`;
}

function tableRow(row: TableRow, { by, concepts }: { readonly by: TableSplit; readonly concepts: boolean }): Row {
  const { used, runs } = row;
  const usual = runs.others === null ? '' : percent(runs.others.usual);
  return {
    name: valueLabel(by, row.value),
    ...thinMark(isThin(used.film)),
    cells: [
      numberCell(String(used.film.count), used.film.count),
      numberCell(shareWords(runs.film), runs.film.estimate ?? -1),
      textCell(usual),
      textCell(topWords(row.answers, answerInSentence)),
      ...(concepts ? [textCell(topWords(row.concepts, (name) => name))] : []),
      textCell(runs.others === null ? '' : sureWord(runs.sure, runs.film)),
    ],
  };
}

/** Things named of a row. */
const NAMED = 3;

function topWords({ top }: TopCounts, label: (name: string) => string): string {
  return top
    .slice(0, NAMED)
    .map(({ name, count }) => `${label(name)} ${count}`)
    .join(', ');
}

/** The value as a coach says it. */
export function valueLabel(by: TableSplit, value: string): string {
  if (by === 'personnel' || by === 'formation') return value;
  if (by === 'strength_side') return SIDES[value] ?? plainWords(value);
  return by === 'hash' ? `${plainWords(value)} hash` : plainWords(value);
}

const SIDES: Readonly<Record<string, string>> = {
  to_field: 'To the field',
  to_boundary: 'Into the boundary',
  ball_in_middle: 'Ball in the middle',
};
