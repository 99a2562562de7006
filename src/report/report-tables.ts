import type { WeekPlan } from '../pressure/plan/week-plan.ts';
import type { Review } from '../pressure/review/review.ts';
import { reportChapters } from './render-report.ts';
import { tablesOf } from './view/block.ts';
import type { Row, TableView } from './view/table-view.ts';

/** A table of the report as rows of cells, headings first. */
export interface TableRows {
  /** Name of the table on the page. */
  readonly id: string;
  readonly rows: readonly (readonly (string | number)[])[];
}

/**
 * Every table of the report as rows; a column of numbers stands twice, as written and as the number it sorts by.
 * Tables without rows are left out.
 */
export function reportTables(plan: WeekPlan, reviews: readonly Review[] = []): readonly TableRows[] {
  return reportChapters(plan, reviews)
    .flatMap(({ blocks }) => tablesOf(blocks))
    .filter(({ rows }) => rows.length > 0)
    .map((table) => ({ id: table.id, rows: [headings(table), ...table.rows.map((row) => cells(table, row))] }));
}

function headings({ columns }: TableView): readonly string[] {
  return columns.flatMap(({ label, kind }) => (kind === 'number' ? [label, `${label} (number)`] : [label]));
}

function cells({ columns }: TableView, row: Row): readonly (string | number)[] {
  const rest = columns.slice(1).flatMap(({ kind }, i) => {
    const cell = row.cells[i];
    return kind === 'number' ? [cell?.text ?? '', cell?.value ?? ''] : [cell?.text ?? ''];
  });
  return [row.name, ...rest];
}
