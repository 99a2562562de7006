import { fixed } from '../words/number-words.ts';
import { type Cell, numberCell } from './table-view.ts';

/** A p-value as a cell; "too few" where there is none. */
export function pCell(p: number | null): Cell {
  return p === null ? numberCell('too few', 2) : numberCell(p < 0.001 ? 'under 0.001' : fixed(p, 3), p);
}

/** What a corrected p-value says. The 5% level is common practice, not our own threshold. */
export function chanceWords(p: number | null): string {
  if (p === null) return 'cannot be told';
  return p < 0.05 ? 'more than chance' : 'no more than chance';
}
