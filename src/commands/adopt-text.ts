import type { ProfileDraft } from '../ingest/adopt/draft-profile.ts';
import type { FoundTable } from '../ingest/adopt/found-table.ts';
import { previewSnaps } from '../ingest/adopt/preview.ts';
import { questionText } from '../ingest/adopt/profile-text.ts';
import type { SheetReading } from '../ingest/read-sheet.ts';
import { describeProblems } from '../ingest/row-problem.ts';
import { tableText } from './table-text.ts';

/** A sheet for which a profile was drafted, and how it reads through it. */
export interface AdoptedSheet {
  readonly sheet: string;
  readonly table: FoundTable;
  readonly draft: ProfileDraft;
  readonly reading: SheetReading;
}

/** Snaps of the preview. */
const PREVIEWED = 10;

/** Kinds of problems named; "check" lists all. */
const NAMED = 8;

/** What was found and how it reads, for the coach. */
export function adoptText(adopted: AdoptedSheet): string {
  const parts = [
    headText(adopted),
    columnText(adopted.draft),
    previewText(adopted),
    problemText(adopted),
    questionPart(adopted.draft),
  ];
  return parts.filter(Boolean).join('\n');
}

/** The same as JSON. */
export function adoptJson({ sheet, draft, reading, table }: AdoptedSheet): string {
  const { columns, unread, questions, profile } = draft;
  const counts = { snaps: reading.chart.size, rejected: reading.rejected.length, leftOut: reading.leftOut };
  const result = { sheet, headerRow: table.headerRow, ...counts, columns, unread, questions, profile };
  return `${JSON.stringify(result, null, 2)}\n`;
}

function headText({ sheet, table, reading }: AdoptedSheet): string {
  const header = table.headerRow === 0 ? 'no header row' : `its header is row ${table.headerRow}`;
  const beside = table.sideBySide ? `; ${table.sideBySide.snaps} snaps stand in a row` : '';
  const kinds = [...new Set(table.aside.map(({ why }) => why))];
  const aside = kinds.map((kind) => `${kind} ${table.aside.filter(({ why }) => why === kind).length}`).join(', ');
  const { chart, rejected } = reading;
  return [
    `${sheet}: ${header}${beside}. Rows set aside: ${aside === '' ? 'none' : aside}.`,
    `Read through the drafted profile: ${chart.size} snaps, ${rejected.length} rows with faults.`,
    '',
  ].join('\n');
}

function columnText({ columns, unread }: ProfileDraft): string {
  const rows = columns.map(({ column, header, confidence, why }) => [
    column,
    header === '' ? '(no column)' : header,
    `${Math.round(100 * confidence)}%`,
    why,
  ]);
  const rest = unread.length === 0 ? '' : `Not read: ${unread.join(', ')}\n`;
  return `${tableText(['our column', 'his header', 'sure', 'because it'], rows)}${rest}`;
}

function previewText({ reading }: AdoptedSheet): string {
  const { header, rows } = previewSnaps(reading.chart, PREVIEWED);
  return rows.length === 0 ? '' : `The first snaps as they were understood:\n${tableText(header, rows)}`;
}

function problemText({ reading }: AdoptedSheet): string {
  const lines = describeProblems(reading.problems, NAMED);
  return lines.length === 0 ? '' : `${['What does not fit:', ...lines.map((line) => `  ${line}`)].join('\n')}\n`;
}

function questionPart({ questions }: ProfileDraft): string {
  if (questions.length === 0) return 'No questions are left.\n';
  const lines = questions.flatMap((question) => ['', ...questionText(question)]);
  const left =
    questions.length === 1
      ? '1 question is left; it stands in the profile too:'
      : `${questions.length} questions are left; they stand in the profile too:`;
  return `${[left, ...lines].join('\n')}\n`;
}
