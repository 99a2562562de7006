import { FILM_COLUMNS } from '../game/columns.ts';
import { filmFromRecords } from '../game/film.ts';
import { asWritten } from './cell-place.ts';
import { columnLetter } from './column-letter.ts';
import { noSnapProblem } from './no-snap.ts';
import type { SheetRow } from './odd-cells.ts';
import { planSheet } from './plan-sheet.ts';
import { profileHeaders } from './profile-headers.ts';
import { createRowIntake, type RowIntake } from './row-intake.ts';
import type { RowProblem } from './row-problem.ts';
import { detectDialect, hasHead, headerKey, isRemark, knownCount, type SheetHead } from './sheet-dialect.ts';
import type { SheetPlan } from './sheet-plan.ts';
import type { SheetOptions, SheetReading } from './sheet-reading.ts';
import { unfoldHeaders, unfoldRow } from './side-by-side.ts';
import { createRowSplitter, type Dialect, type RowAnswer, type RowNote, type RowSplitter } from './split-rows.ts';
import { wholeSheetProblems } from './whole-sheet-problems.ts';

/** Reads a sheet that comes in pieces. */
export interface SheetReader {
  /** Takes the next piece of text. */
  readonly push: (text: string) => void;
  /** Reads what is left and gives the sheet. */
  readonly finish: () => SheetReading;
}

/** The file being read: its name for messages, the encoding its text came in, and its length in bytes where known. */
export interface SheetFile {
  readonly file: string;
  readonly encoding: string;
  readonly length?: number;
}

interface ReaderState {
  readonly sheet: SheetFile;
  readonly options: SheetOptions;
  waiting: string;
  pushed: number;
  /** What had been read before the piece at hand, of which some rows are still to come. */
  before: { readonly rows: number; readonly characters: number };
  splitter: RowSplitter | undefined;
  head: SheetHead;
  known: ReadonlySet<string>;
  row: number;
  blankRows: number;
  rowsRead: number;
  leftOut: number;
  headers: readonly string[];
  headerWidth: number;
  headerless: readonly number[];
  plan: SheetPlan | undefined;
  intake: RowIntake | undefined;
  problems: RowProblem[];
}

/** An empty reader. Text may be pushed in pieces of any size; nothing of it is kept once its rows were read. */
export function createSheetReader(sheet: SheetFile, options: SheetOptions): SheetReader {
  const state: ReaderState = {
    sheet,
    options,
    waiting: '',
    pushed: 0,
    before: { rows: 0, characters: 0 },
    splitter: undefined,
    head: { delimiter: ',', newline: '\n', known: 0 },
    known: new Set(),
    row: 0,
    blankRows: 0,
    rowsRead: 0,
    leftOut: 0,
    headers: [],
    headerWidth: 0,
    headerless: [],
    plan: undefined,
    intake: undefined,
    problems: [],
  };
  return { push: (text) => pushText(state, text), finish: () => finishReading(state) };
}

/** Waits until the lines are complete among which the header stands, for it shows how the sheet is written. */
function pushText(state: ReaderState, text: string): void {
  state.before = { rows: state.rowsRead, characters: state.pushed };
  state.pushed += text.length;
  if (state.splitter) {
    state.splitter.push(text);
    return;
  }
  state.waiting += text;
  if (hasHead(state.waiting)) startSplitting(state);
}

function startSplitting(state: ReaderState): RowSplitter {
  const { profile } = state.options;
  const known = [...FILM_COLUMNS.map(({ name }) => name), ...(profile ? profileHeaders(profile) : [])];
  state.known = new Set(known.map(headerKey));
  state.head = detectDialect(state.waiting, state.known);
  state.splitter = createRowSplitter(state.head, (cells, note) => takeRow(state, cells, note));
  state.splitter.push(state.waiting);
  state.waiting = '';
  return state.splitter;
}

function takeRow(state: ReaderState, cells: readonly string[], note: RowNote): RowAnswer {
  const { intake } = state;
  if (note === 'several-lines' && isSwallowed(state, cells)) return 'swallowed';
  state.row++;
  if (isBlank(cells)) state.blankRows++;
  else if (intake === undefined && state.options.profile?.headers === 'none') takeUnheaded(state, cells, note);
  else if (intake !== undefined) takeSnaps(state, intake, { cells, row: state.row, note });
  else if (!isRemark(cells) && isHeader(state, cells)) takeHeader(state, cells);
  return 'taken';
}

/** Rows above the one with most headers we know are titles. */
function isHeader({ head, known }: ReaderState, cells: readonly string[]): boolean {
  return knownCount(cells, known) >= head.known;
}

/** The first row of a sheet without a header row is a snap already. */
function takeUnheaded(state: ReaderState, cells: readonly string[], note: RowNote): void {
  takeHeader(
    state,
    cells.map((_, i) => `column ${columnLetter(i)}`),
  );
  if (state.intake !== undefined) takeSnaps(state, state.intake, { cells, row: state.row, note });
}

/** One snap, or as many as the profile says stand beside one another. */
function takeSnaps(state: ReaderState, intake: RowIntake, data: DataRow): void {
  const layout = state.options.profile?.side_by_side;
  if (layout === undefined) takeData(state, intake, data);
  else for (const cells of unfoldRow(layout, data.cells)) takeData(state, intake, { ...data, cells });
}

/**
 * A cell that runs over several lines, in a row that does not fit or with a row's worth of delimiters inside: a
 * quotation mark that was never closed swallowed what follows it.
 */
function isSwallowed({ intake, headerWidth, head }: ReaderState, cells: readonly string[]): boolean {
  if (intake === undefined) return false;
  const width = headerWidth;
  return cells.length !== width || cells.some((cell) => holdsRow(cell, head, width));
}

function holdsRow(cell: string, { delimiter, newline }: Dialect, width: number): boolean {
  return cell.includes(newline) && cell.split(delimiter).length >= width;
}

function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

function takeHeader(state: ReaderState, cells: readonly string[]): void {
  const { sheet, options, row } = state;
  const layout = options.profile?.side_by_side;
  state.headerWidth = cells.length;
  state.headers = (layout ? unfoldHeaders(layout, cells) : cells).map(asWritten);
  state.headerless = state.headers.flatMap((header, i) => (header.trim() === '' ? [i] : []));
  state.plan = planSheet({ file: sheet.file, row, headers: state.headers }, options);
  state.intake = createRowIntake(state.plan, sheet, () => expectedRows(state));
  state.problems.push(...state.plan.problems);
}

/**
 * Rows of the whole file judged from its pieces so far, with a tenth on top; 0 when its length is not known or its first
 * piece is at hand. Room that is never used costs next to nothing: it is memory that no one has touched.
 */
function expectedRows({ sheet, before }: ReaderState): number {
  if (before.characters === 0) return 0;
  return 1.1 * before.rows * ((sheet.length ?? 0) / before.characters);
}

interface DataRow extends SheetRow {
  readonly note: RowNote;
}

function takeData(state: ReaderState, intake: RowIntake, data: DataRow): void {
  state.rowsRead++;
  if (state.plan?.refused) return;
  const { cells, row } = data;
  if (isNoSnap(state, data)) return;
  const fault = faultOfRow(state, data);
  if (fault !== undefined) intake.reject({ cells, row }, fault);
  else if (state.plan?.keeps(cells)) {
    if (state.headerless.length > 0) nameHeaderless(state, cells);
    intake.take({ cells, row });
  } else state.leftOut++;
}

/** A header repeated further down, or a row that charts nothing every snap needs, is left out; the latter is named. */
function isNoSnap(state: ReaderState, { cells, row, note }: DataRow): boolean {
  if (note !== 'plain') return false;
  const repeated = state.headers.every((header, i) => header.trim() === asWritten(cells[i] ?? '').trim());
  const problem = repeated ? undefined : noSnapProblem(state.plan, cells, { file: state.sheet.file, row });
  if (problem !== undefined) state.problems.push(problem);
  if (repeated || problem !== undefined) state.leftOut++;
  return repeated || problem !== undefined;
}

/** What is wrong with a row as a whole, before its cells are looked at. */
function faultOfRow({ headers, options }: ReaderState, { cells, row, note }: DataRow): string | RowProblem | undefined {
  if (note === 'too-long') return 'the row is one line of over a million characters, far longer than any snap';
  if (note === 'quote-fault') return 'a quotation mark is not closed, or stands inside a cell without being doubled';
  const width = headers.length;
  if (cells.length !== width && !hasOnlyBlanksBeyond(cells, width)) {
    return `the row has ${cells.length} cells, and the header has ${width}`;
  }
  return options.leaveOut?.get(row);
}

/** Spreadsheets write empty cells beyond the last header when a cell out there was once in use. */
function hasOnlyBlanksBeyond(cells: readonly string[], width: number): boolean {
  return cells.length > width && isBlank(cells.slice(width));
}

/** Says once for each column without a header that it holds something. */
function nameHeaderless(state: ReaderState, cells: readonly string[]): void {
  const holding = state.headerless.filter((i) => cells[i]?.trim() !== '');
  if (holding.length === 0) return;
  state.headerless = state.headerless.filter((i) => !holding.includes(i));
  const { file } = state.sheet;
  for (const i of holding) {
    const found = asWritten(cells[i] ?? '');
    const rule = 'stands in a column that has no header; the column is not read';
    state.problems.push({ severity: 'warning', file, row: state.row, columnLetter: columnLetter(i), found, rule });
  }
}

function finishReading(state: ReaderState): SheetReading {
  const splitter = state.splitter ?? startSplitting(state);
  splitter.end();
  const { intake, plan, sheet, options, headers } = state;
  const chart = intake && !plan?.refused ? intake.finish() : filmFromRecords([], sheet.file);
  const { file } = sheet;
  const { rowsRead } = state;
  const spellings = intake?.spellings() ?? [];
  const whole = wholeSheetProblems({ file, kind: options.kind, chart, plan, rowsRead, spellings });
  const problems = [...state.problems, ...(intake?.problems ?? []), ...whole];
  return {
    chart,
    problems: problems.sort((left, right) => left.row - right.row),
    rejected: intake?.rejected ?? [],
    headers,
    unmapped: plan?.unmapped ?? [],
    delimiter: state.head.delimiter,
    encoding: sheet.encoding,
    rowsRead: state.rowsRead,
    blankRows: state.blankRows,
    leftOut: state.leftOut,
  };
}
