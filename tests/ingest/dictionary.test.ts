import { describe, expect, it } from 'vitest';
import { FILM_COLUMNS } from '../../src/game/columns.ts';
import { dictionaryRows, dictionaryText } from '../../src/ingest/dictionary.ts';
import { readCell } from '../../src/ingest/read-cell.ts';

describe('the data dictionary', () => {
  it('has one row for every column, with a meaning and an example', () => {
    const rows = dictionaryRows();
    expect(rows.map(({ header }) => header)).toEqual(FILM_COLUMNS.map(({ name }) => name));
    for (const row of rows) expect(`${row.meaning}${row.example}`.length, row.header).toBeGreaterThan(10);
  });

  it.each(FILM_COLUMNS)('gives an example for $name that can be read', (column) => {
    expect(readCell(column, column.example).kind).toBe('value');
  });

  it('says where a column is required', () => {
    const required = dictionaryRows().filter(({ required: kinds }) => kinds.includes('opponent'));
    expect(required.map(({ header }) => header)).toEqual(['game', 'down', 'to_go', 'play_kind']);
  });

  it('names every column and word in the text', () => {
    const page = dictionaryText();
    for (const { header, words } of dictionaryRows()) {
      expect(page).toContain(header);
      for (const word of words) expect(page).toContain(word);
    }
  });
});
