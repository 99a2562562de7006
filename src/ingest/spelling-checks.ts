import type { ColumnName } from '../game/columns.ts';
import type { Film } from '../game/film.ts';
import { FREE_WORD_COLUMNS, freeWordKey } from '../game/free-word.ts';
import type { Spelling } from './row-intake.ts';
import type { RowProblem } from './row-problem.ts';

/**
 * Warnings about the free words of one sheet: those that differ only in case or spaces, which count as one word, and
 * those that differ from another only in marks, which count as two.
 *
 * @param spellings - what was written in another way than it is shown
 */
export function checkSpellings(chart: Film, spellings: readonly Spelling[]): readonly RowProblem[] {
  const file = chart.sources[0] ?? '';
  return [
    ...spellings.map((spelling) => sameWord(spelling, file)),
    ...[...FREE_WORD_COLUMNS].flatMap((header) => {
      const column = chart.columns[header];
      return column?.kind === 'code' ? nearlySame(column.values, header, file) : [];
    }),
  ];
}

/** Warnings where a word of a later chart is written in another way than in an earlier one; the two count as one word. */
export function checkSpellingsAcross(charts: readonly Film[]): readonly RowProblem[] {
  const shown = new Map<string, string>();
  return charts.flatMap((chart) =>
    [...FREE_WORD_COLUMNS].flatMap((column) => {
      const values = chart.columns[column];
      if (values?.kind !== 'code') return [];
      return values.values.flatMap((found) => {
        const key = `${column} ${freeWordKey(found)}`;
        const first = shown.get(key);
        if (first === undefined) shown.set(key, found);
        if (first === undefined || first === found) return [];
        return [sameWord({ column, found, shown: first }, chart.sources[0] ?? '')];
      });
    }),
  );
}

function sameWord({ column, found, shown }: Spelling, file: string): RowProblem {
  const rule = `is written "${shown}" elsewhere; both count as "${shown}"`;
  return { severity: 'warning', file, row: 0, header: column, found, rule };
}

function nearlySame(values: readonly string[], header: ColumnName, file: string): RowProblem[] {
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
