import { type CodeColumn, type Film, textAt } from '../../game/film.ts';
import type { RowProblem } from '../row-problem.ts';
import { type FormationStructure, formationReader } from './formation-reader.ts';
import type { FormationBook } from './formation-schema.ts';

/** Columns a formation book fills. */
export const BOOK_COLUMNS = ['receivers', 'strength', 'back_spot'] as const;

/** One of {@link BOOK_COLUMNS}. */
export type BookColumn = (typeof BOOK_COLUMNS)[number];

/** A chart with its blank structure filled from the book, and warnings where the book and a charted cell differ. */
export interface BookedChart {
  readonly chart: Film;
  readonly problems: readonly RowProblem[];
}

/**
 * Fills receivers, strength and back_spot from the formation's name where they were not charted. A charted cell always
 * stands; where the book says otherwise, that is a warning.
 */
export function applyFormationBook(chart: Film, book: FormationBook): BookedChart {
  const structureOf = formationReader(book);
  const structures = Array.from({ length: chart.size }, (_, i) => {
    const name = textAt(chart, 'formation', i);
    return name === undefined ? undefined : structureOf(name);
  });
  if (structures.every((structure) => structure === undefined)) return { chart, problems: [] };
  const filled = BOOK_COLUMNS.map((column) => [column, fillColumn(chart, column, structures)] as const);
  return {
    chart: { ...chart, columns: { ...chart.columns, ...Object.fromEntries(filled) } },
    problems: structures.flatMap((structure, i) => (structure ? contradictions(chart, i, structure) : [])),
  };
}

type Structures = readonly (FormationStructure | undefined)[];

function fillColumn(chart: Film, column: BookColumn, structures: Structures): CodeColumn {
  const before = chart.columns[column];
  const charted = before?.kind === 'code' ? before : { codes: new Uint16Array(chart.size), values: [''] };
  const values = [...charted.values];
  const codes = charted.codes.map((code, i) => {
    const word = structures[i]?.[column];
    if (code !== 0 || word === undefined) return code;
    if (!values.includes(word)) values.push(word);
    return values.indexOf(word);
  });
  return { kind: 'code', codes, values };
}

function contradictions(chart: Film, index: number, structure: FormationStructure): RowProblem[] {
  const place = { file: chart.sources[chart.sourceOf[index] as number] ?? '', row: chart.rowOf[index] as number };
  const name = textAt(chart, 'formation', index) ?? '';
  return BOOK_COLUMNS.flatMap((column): RowProblem[] => {
    const found = textAt(chart, column, index);
    const said = found === undefined ? undefined : saysOtherwise(column, found, structure);
    if (found === undefined || said === undefined) return [];
    const rule = `is not what the formation book says of "${name}", which is ${said}; the charted cell counts`;
    return [{ ...place, severity: 'warning', header: column, found, rule }];
  });
}

/** What the book says, when it is not what was charted. */
function saysOtherwise(column: BookColumn, found: string, structure: FormationStructure): string | undefined {
  const said = structure[column];
  if (said !== undefined) return said === found ? undefined : said;
  if (column !== 'back_spot' || structure.backs === undefined) return undefined;
  const impossible = found === 'none' || (found === 'both' && structure.backs < 2);
  return impossible ? `${structure.backs} in the backfield` : undefined;
}
