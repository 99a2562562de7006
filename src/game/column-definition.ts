import { type ColumnDefinition, type ColumnName, FILM_COLUMNS } from './columns.ts';

/** The definition of a column by its name. */
export function definitionOf(name: ColumnName): ColumnDefinition {
  const found: ColumnDefinition | undefined = FILM_COLUMNS.find((column) => column.name === name);
  if (found === undefined) throw new RangeError(`no column is named ${name}`);
  return found;
}
