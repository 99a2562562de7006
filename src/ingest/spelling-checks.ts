import type { ColumnName } from '../game/columns.ts';
import type { Film } from '../game/film.ts';
import type { RowProblem } from './row-problem.ts';

/** Columns of free text whose values are counted, so that two spellings of one thing would be two things. */
const COUNTED_TEXTS: readonly ColumnName[] = [
  ...(['offense', 'defense', 'game', 'formation', 'concept', 'call', 'path', 'coverage'] as const),
];

/** Warnings where a text differs from another one in the same column only in case, spaces or marks. */
export function checkSpellings(chart: Film): readonly RowProblem[] {
  return COUNTED_TEXTS.flatMap((header) => {
    const column = chart.columns[header];
    return column?.kind === 'code' ? spellingProblems(column.values, header, chart.sources[0] ?? '') : [];
  });
}

function spellingProblems(values: readonly string[], header: ColumnName, file: string): RowProblem[] {
  const first = new Map<string, string>();
  const problems: RowProblem[] = [];
  for (const found of [...values].sort()) {
    const key = bareText(found);
    const other = first.get(key);
    if (key === '') continue;
    if (other === undefined) first.set(key, found);
    else {
      const rule = `is written "${other}" on other snaps; the two count as different`;
      problems.push({ severity: 'warning', file, row: 0, header, found, rule });
    }
  }
  return problems;
}

/** Letters and digits only, in lower case. */
function bareText(text: string): string {
  return text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}
