import { definitionOf } from '../game/column-definition.ts';
import { type ColumnName, FILM_COLUMNS } from '../game/columns.ts';
import { type CellReading, faultReading } from './cell-reading.ts';
import { columnLetter } from './column-letter.ts';
import { nearestWord } from './nearest-word.ts';
import { planFromProfile } from './profile-plan.ts';
import { readCell } from './read-cell.ts';
import type { RowProblem } from './row-problem.ts';
import { headerKey } from './sheet-dialect.ts';
import { columnsOfKind, OWN_CALL_COLUMNS, REQUIRED_COLUMNS, type SheetKind, WANTED_COLUMNS } from './sheet-kind.ts';
import type { ColumnMatch, HeaderRow, PlannedColumn, SheetPlan } from './sheet-plan.ts';
import type { SheetOptions } from './sheet-reading.ts';

/** Columns of the widest sheet that spreadsheet programs write (XFD, from memory); a wider one is no sheet. */
const MOST_COLUMNS = 16_384;

/** Matches the headers of a sheet with our columns, by name or through the profile, and says what does not fit. */
export function planSheet(header: HeaderRow, options: SheetOptions): SheetPlan {
  if (header.headers.length > MOST_COLUMNS) return planOfNothing(header);
  const match = options.profile ? planFromProfile(header, options.profile) : planByName(header, options.kind);
  const problems = [
    ...match.problems,
    ...repeatedHeaders(header, match),
    ...missingColumns(header, match, options.kind),
    ...unwantedGaps(header, match, options.kind),
    ...(options.profile ? [] : unknownHeaders(header, match.used, options.kind)),
  ];
  const unmapped = header.headers.filter((text, i) => text.trim() !== '' && !match.used.has(i));
  const required = new Set(REQUIRED_COLUMNS[options.kind]);
  return {
    columns: match.columns.map((column) =>
      required.has(column.name) ? withBlankRefused(column) : withFaultBlanked(column),
    ),
    needed: options.profile ? match.columns.filter(({ name, index }) => index >= 0 && required.has(name)) : [],
    keeps: match.keeps,
    unmapped,
    problems,
    refused: problems.some(({ severity }) => severity === 'fault'),
  };
}

/** A sheet that is refused for its width before its headers are compared with one another. */
function planOfNothing({ file, row, headers }: HeaderRow): SheetPlan {
  const rule = `has ${headers.length} columns, more than any spreadsheet holds (${MOST_COLUMNS})`;
  const problems: RowProblem[] = [{ severity: 'fault', file, row, found: '', rule }];
  return { columns: [], needed: [], keeps: () => true, unmapped: [], problems, refused: true };
}

function planByName({ headers }: HeaderRow, kind: SheetKind): ColumnMatch {
  const allowed = new Set<string>(columnsOfKind(kind));
  const columns: PlannedColumn[] = [];
  const used = new Set<number>();
  headers.forEach((header, index) => {
    const key = headerKey(header);
    const definition = FILM_COLUMNS.find(({ name }) => name === key && allowed.has(name));
    if (definition === undefined) return;
    used.add(index);
    columns.push(directColumn(definition.name, header, index));
  });
  return { columns, used, byLetter: new Set(), keeps: () => true, problems: [] };
}

function directColumn(name: ColumnName, header: string, index: number): PlannedColumn {
  const definition = definitionOf(name);
  const textOf = (cells: readonly string[]) => cells[index] ?? '';
  return { name, kind: definition.kind, index, header, textOf, read: (written) => readCell(definition, written) };
}

function withBlankRefused(column: PlannedColumn): PlannedColumn {
  const refused = faultReading(`is blank, and every snap needs ${column.name}`);
  const read = (written: string) => {
    const reading = column.read(written);
    return reading.kind === 'blank' ? refused : reading;
  };
  return { ...column, read };
}

/**
 * A word that is not known in a column no snap needs says nothing, and the snap is read without it. Numbers that cannot be
 * read stay faults: a figure that was mistyped is seldom the only one of its row.
 */
function withFaultBlanked(column: PlannedColumn): PlannedColumn {
  const { form } = definitionOf(column.name).cell;
  if (form !== 'word' && form !== 'code') return column;
  const read = (written: string): CellReading => {
    const reading = column.read(written);
    if (reading.kind !== 'fault') return reading;
    const { rule, suggestion } = reading;
    const remark = `${rule}; the cell counts as not charted`;
    return { kind: 'blank', remark, ...(suggestion === undefined ? {} : { suggestion }) };
  };
  return { ...column, read };
}

/** A repeated header that is read is a fault, since only the coach knows which one counts; others are only named. */
function repeatedHeaders({ file, row, headers }: HeaderRow, { used, byLetter }: ColumnMatch): RowProblem[] {
  const readByName = (index: number) => used.has(index) && !byLetter.has(index);
  const keys = headers.map(headerKey);
  return keys.flatMap((key, index): RowProblem[] => {
    const first = keys.indexOf(key);
    if (key === '' || first === index) return [];
    const severity = readByName(first) || readByName(index) ? 'fault' : 'warning';
    const rule = `stands over column ${columnLetter(first)} as well; a header may stand only once`;
    return [{ severity, file, row, columnLetter: columnLetter(index), found: headers[index] ?? '', rule }];
  });
}

function missingColumns({ file, row, headers }: HeaderRow, match: ColumnMatch, kind: SheetKind): RowProblem[] {
  const present = new Set(match.columns.map(({ name }) => name));
  const free = headers.filter((_, i) => !match.used.has(i));
  const base = { severity: 'fault', file, row, found: '' } as const;
  const missing = REQUIRED_COLUMNS[kind].filter((name) => !present.has(name));
  const problems = missing.map((name): RowProblem => {
    const near = nearestWord(name, free.map(headerKey));
    const index = headers.findIndex((header) => headerKey(header) === near);
    const suggestion = near && `Did you mean the column "${headers[index]}" (${columnLetter(index)})?`;
    return {
      ...base,
      rule: `no column is headed ${name}, which every snap needs`,
      ...(suggestion ? { suggestion } : {}),
    };
  });
  if (kind === 'own' && !OWN_CALL_COLUMNS.some((name) => present.has(name))) {
    problems.push({ ...base, rule: `our own film needs at least one of the columns ${OWN_CALL_COLUMNS.join(', ')}` });
  }
  return problems;
}

/** A column that should be there, and what is not known without it. */
function unwantedGaps({ file, row }: HeaderRow, { columns }: ColumnMatch, kind: SheetKind): RowProblem[] {
  const absent = WANTED_COLUMNS[kind].filter(({ column }) => !columns.some(({ name }) => name === column));
  return absent.map(({ column, without }) => ({
    ...{ severity: 'warning', file, row, found: '' },
    rule: `no column holds ${column}; without it ${without}`,
  }));
}

function unknownHeaders({ file, row, headers }: HeaderRow, used: ReadonlySet<number>, kind: SheetKind): RowProblem[] {
  const read = new Set(headers.filter((_, i) => used.has(i)).map(headerKey));
  const free = columnsOfKind(kind).filter((name) => !read.has(name));
  return headers.flatMap((found, index): RowProblem[] => {
    const key = headerKey(found);
    if (key === '' || used.has(index)) return [];
    const near = nearestWord(key, free);
    const ours = FILM_COLUMNS.some(({ name }) => name === key);
    const rule = ours
      ? 'belongs to our own film and is not read here'
      : 'is not a header we know; the column is not read';
    const suggestion = near === undefined ? {} : { suggestion: `Did you mean "${near}"?` };
    return [{ severity: 'warning', file, row, columnLetter: columnLetter(index), found, rule, ...suggestion }];
  });
}
