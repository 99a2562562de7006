import { FILM_COLUMNS } from '../../game/columns.ts';
import { filmFromRecords } from '../../game/film.ts';
import { readCell } from '../../ingest/read-cell.ts';
import { REQUIRED_COLUMNS, type SheetKind } from '../../ingest/sheet-kind.ts';
import { createSnapChecks } from '../../ingest/single-snap-checks.ts';
import type { SnapCells } from '../../season/chart-sheet.ts';

/** Something to look at in a snap. */
export interface SnapProblem {
  readonly column: string;
  readonly words: string;
  /** The row stays out of the numbers until it is mended. */
  readonly isFault: boolean;
}

/** What is wrong with one snap by itself: a cell that cannot be read, and cells that cannot stand beside one another. */
export function snapProblems(snap: SnapCells, kind: SheetKind): readonly SnapProblem[] {
  const record: Record<string, string | number> = {};
  const problems: SnapProblem[] = [];
  for (const definition of FILM_COLUMNS) {
    const text = snap[definition.name];
    if (text === undefined) continue;
    const reading = readCell(definition, text);
    if (reading.kind === 'value') record[definition.name] = reading.value;
    if (reading.kind === 'fault')
      problems.push({ column: definition.name, words: `"${text}" ${reading.rule}`, isFault: true });
  }
  return [...problems, ...missing(snap, kind), ...betweenCells(record)];
}

function missing(snap: SnapCells, kind: SheetKind): SnapProblem[] {
  return REQUIRED_COLUMNS[kind]
    .filter((column) => snap[column] === undefined)
    .map((column) => ({ column, words: 'is needed on every snap', isFault: true }));
}

function betweenCells(record: Readonly<Record<string, string | number>>): SnapProblem[] {
  const { columns } = filmFromRecords([record]);
  return createSnapChecks(columns).flatMap((check) => {
    const found = check(0);
    return found === undefined
      ? []
      : [{ column: found.column, words: found.rule, isFault: found.severity === 'fault' }];
  });
}
