import { countBy, groupBy, mostFirst } from '../../game/by-word.ts';
import { type Film, rowsOf, textAt } from '../../game/film.ts';
import { BOOK_COLUMNS, type BookColumn } from './apply-formation-book.ts';
import { formationReader } from './formation-reader.ts';
import type { FormationBook } from './formation-schema.ts';

/** The word charted most often with a formation's name, on how many of the snaps where anything was charted. */
export interface StructureGuess {
  readonly column: BookColumn;
  readonly word: string;
  readonly count: number;
  readonly charted: number;
}

/** A formation name the book does not have: on how many snaps it stands, and what was charted with it. */
export interface UnknownFormation {
  readonly name: string;
  readonly snaps: number;
  /** Snaps on which receivers, strength or back_spot were not charted, which the book would fill. */
  readonly open: number;
  readonly guesses: readonly StructureGuess[];
}

/** Formation names the book does not have, the most frequent first, each with a guess from the charted columns. */
export function unknownFormations(chart: Film, book: FormationBook | null): UnknownFormation[] {
  const structureOf = book ? formationReader(book) : () => undefined;
  const unknown = [...groupBy(rowsOf(chart), (row) => textAt(chart, 'formation', row))]
    .filter(([name]) => structureOf(name) === undefined)
    .map(([name, rows]) => describe(chart, name, rows));
  return unknown.sort((left, right) => right.snaps - left.snaps || (left.name < right.name ? -1 : 1));
}

function describe(chart: Film, name: string, rows: readonly number[]): UnknownFormation {
  const open = rows.filter((i) => BOOK_COLUMNS.some((column) => textAt(chart, column, i) === undefined)).length;
  const guesses = BOOK_COLUMNS.flatMap((column) => guessOf(chart, column, rows) ?? []);
  return { name, snaps: rows.length, open, guesses };
}

function guessOf(chart: Film, column: BookColumn, rows: readonly number[]): StructureGuess | undefined {
  const counts = countBy(rows, (row) => textAt(chart, column, row));
  const charted = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const [best] = mostFirst(counts);
  return best === undefined ? undefined : { column, word: best[0], count: best[1], charted };
}
