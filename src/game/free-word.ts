import { type ColumnName, FILM_COLUMNS } from './columns.ts';

/** Columns of free words that are counted, so that two spellings of one thing would be two things; notes are not. */
export const FREE_WORD_COLUMNS: ReadonlySet<ColumnName> = new Set(
  FILM_COLUMNS.flatMap(({ name, cell }) => (cell.form === 'text' && name !== 'note' ? [name] : [])),
);

/** What free words are compared by: words that differ only in case or spaces are one word. */
export function freeWordKey(word: string): string {
  return word.toLowerCase().replace(/\s+/g, '');
}
