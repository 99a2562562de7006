import type { ColumnName } from '../game/columns.ts';
import type { Film, FilmColumn } from '../game/film.ts';
import { type CodeLane, createLanes, learn, type NumberLane, ODD } from './cell-lane.ts';
import { placeOf, withoutReturn } from './cell-place.ts';
import { cut, finishStore, growStore } from './column-store.ts';
import { lookAtOddCells, type SheetRow } from './odd-cells.ts';
import { RejectedRow } from './rejected-row.ts';
import type { RowProblem } from './row-problem.ts';
import type { SheetPlan } from './sheet-plan.ts';
import { createSnapChecks, type SnapCheck, type SnapColumns, type SnapFinding } from './single-snap-checks.ts';
import { createSnapIdentity, FIRST_MOMENT, NOT_SAID } from './snap-identity.ts';
import { createSnapLedger } from './snap-ledger.ts';

/** Takes the rows of one sheet in, one at a time, and gives the chart at the end. */
export interface RowIntake {
  /** Takes a row with as many cells as the sheet has headers. */
  readonly take: (row: SheetRow) => void;
  /** Keeps a row out for a reason that is not a single cell's. */
  readonly reject: (row: SheetRow, fault: string | RowProblem) => void;
  /** The chart of all rows taken; the intake is used up by it. */
  readonly finish: () => Film;
  readonly problems: readonly RowProblem[];
  readonly rejected: readonly RejectedRow[];
  /** Free words that are written in more than one way, each way that is not shown with the one that is. */
  readonly spellings: () => readonly Spelling[];
}

/** A free word of a column as it is written somewhere, and the spelling it counts as. */
export interface Spelling {
  readonly column: ColumnName;
  readonly found: string;
  readonly shown: string;
}

/** Rows there is room for at first in a sheet of any length. */
const FIRST_CAPACITY = 1024;

/** Bytes of a cell with its delimiter in a sheet that is charted thinly; most have three and more. Judgment. */
const CELL_BYTES = 2;

/** A sheet by its file's name, and how many bytes it has where that is known. */
export interface SheetLength {
  readonly file: string;
  readonly length?: number;
}

/** By how much the room grows at least; below {@link cut}'s measure for what is spare, so that long columns stay in place. */
const GROWTH = 1.25;

interface IntakeState {
  readonly file: string;
  readonly expectedRows: () => number;
  /** All lanes in the order of the sheet's columns. */
  readonly lanes: readonly (CodeLane | NumberLane)[];
  readonly codeLanes: readonly CodeLane[];
  readonly numberLanes: readonly NumberLane[];
  readonly checks: readonly SnapCheck[];
  readonly repeatCheck: SnapCheck;
  readonly problems: RowProblem[];
  readonly rejected: RejectedRow[];
  size: number;
  capacity: number;
  rowOf: Uint32Array;
}

/**
 * An empty intake for a sheet read by `plan`. Its stores hold the row at hand until it is known to be sound; when they
 * are full they grow to `expectedRows`, or by a quarter.
 */
export function createRowIntake(plan: SheetPlan, sheet: SheetLength, expectedRows: () => number): RowIntake {
  const state = createState(plan, sheet, expectedRows);
  const { file } = sheet;
  const { problems, rejected } = state;
  return {
    take: (row) => takeRow(state, row),
    reject: (row, fault) => rejectRow(state, row, [faultOf(fault, file, row.row)]),
    finish: () => finishChart(state),
    problems,
    rejected,
    spellings: () => state.codeLanes.flatMap(spellingsOf),
  };
}

function spellingsOf({ column, store }: CodeLane): Spelling[] {
  return [...store.spellings].map(([found, shown]) => ({ column: column.name, found, shown }));
}

function faultOf(fault: string | RowProblem, file: string, row: number): RowProblem {
  return typeof fault === 'string' ? { severity: 'fault', file, row, found: '', rule: fault } : fault;
}

/** A short sheet gets no more room than its bytes can fill. */
function firstRoom({ columns }: SheetPlan, { length }: SheetLength): number {
  if (length === undefined) return FIRST_CAPACITY;
  return Math.min(FIRST_CAPACITY, Math.ceil((length + 1) / (CELL_BYTES * (columns.length + 1))));
}

function createState(plan: SheetPlan, sheet: SheetLength, expectedRows: () => number): IntakeState {
  const { file } = sheet;
  const capacity = firstRoom(plan, sheet);
  const { codeLanes, numberLanes } = createLanes(plan.columns, capacity);
  const lanes = [...codeLanes, ...numberLanes].sort((left, right) => left.column.index - right.column.index);
  return {
    file,
    expectedRows,
    lanes,
    codeLanes,
    numberLanes,
    checks: createSnapChecks(Object.fromEntries(lanes.map(({ column, store }) => [column.name, store]))),
    repeatCheck: createRepeatCheck(lanes),
    problems: [],
    rejected: [],
    size: 0,
    capacity,
    rowOf: new Uint32Array(capacity),
  };
}

function takeRow(state: IntakeState, row: SheetRow): void {
  if (state.size === state.capacity) grow(state);
  const odd = fillCodes(state, row.cells) + fillNumbers(state, row.cells);
  const found = odd > 0 ? lookAtOddCells(state.lanes, row, { file: state.file, index: state.size }) : [];
  // Cells that could not be read must not be compared with others, and only a sound snap may claim its number.
  if (!hasFault(found)) runChecks(state, state.checks, { row, found });
  if (!hasFault(found)) runChecks(state, [state.repeatCheck], { row, found });
  if (hasFault(found)) {
    rejectRow(state, row, found);
    return;
  }
  if (found.length > 0) state.problems.push(...found);
  state.rowOf[state.size] = row.row;
  state.size++;
}

function grow(state: IntakeState): void {
  state.capacity = Math.ceil(Math.max(state.capacity * GROWTH, state.expectedRows()));
  for (const { store } of state.lanes) growStore(store, state.capacity);
  const rowOf = new Uint32Array(state.capacity);
  rowOf.set(state.rowOf);
  state.rowOf = rowOf;
}

/** Stores the row's words and says how many cells need a closer look. */
function fillCodes({ codeLanes, size }: IntakeState, cells: readonly string[]): number {
  let odd = 0;
  for (const lane of codeLanes) {
    const written = cells[lane.column.index] ?? lane.column.textOf(cells);
    const code = lane.cache.get(written) ?? learn(lane, written);
    if (code === ODD) odd++;
    else lane.store.codes[size] = code;
  }
  return odd;
}

/** Stores the row's numbers and says how many cells need a closer look. */
function fillNumbers({ numberLanes, size }: IntakeState, cells: readonly string[]): number {
  let odd = 0;
  for (const lane of numberLanes) {
    const written = cells[lane.column.index] ?? lane.column.textOf(cells);
    const value = lane.cache.get(written) ?? learn(lane, written);
    if (value === ODD) odd++;
    else lane.store.numbers[size] = value;
  }
  return odd;
}

function hasFault(found: readonly RowProblem[]): boolean {
  return found.length > 0 && found.some(({ severity }) => severity === 'fault');
}

interface RowFindings {
  readonly row: SheetRow;
  readonly found: RowProblem[];
}

function runChecks(state: IntakeState, checks: readonly SnapCheck[], { row, found }: RowFindings): void {
  for (const check of checks) {
    const finding = check(state.size);
    if (finding === undefined) continue;
    const { column, severity, rule } = finding;
    const lane = state.lanes.find((one) => one.column.name === column);
    const place = lane ? placeOf(lane.column, row.cells) : { header: column, found: '' };
    found.push({ file: state.file, row: row.row, severity, rule, ...place });
  }
}

function rejectRow(state: IntakeState, { cells, row }: SheetRow, found: readonly RowProblem[]): void {
  state.problems.push(...found);
  state.rejected.push(new RejectedRow(row, cells.map(withoutReturn), found));
}

/**
 * A snap that its game (and offense) had already, by its number or, without one, by its moment and place; the first one
 * read counts.
 */
function createRepeatCheck(lanes: readonly (CodeLane | NumberLane)[]): SnapCheck {
  const stores = Object.fromEntries(lanes.map(({ column, store }) => [column.name, store])) as SnapColumns;
  const { game, offense } = stores;
  if (game?.kind !== 'code') return () => undefined;
  const identityOf = createSnapIdentity(stores);
  const ledger = createSnapLedger();
  return (i) => {
    const number = identityOf(i);
    const gameCode = game.codes[i] as number;
    if (number === NOT_SAID) return undefined;
    const offenseCode = offense?.kind === 'code' ? (offense.codes[i] as number) : 0;
    if (ledger.enter({ game: gameCode, offense: offenseCode, number }) === 'new') return undefined;
    return repeatFinding(number, game.values[gameCode] ?? '');
  };
}

function repeatFinding(identity: number, game: string): SnapFinding {
  const first = `is a snap that game "${game}" has already; the first one counts`;
  if (identity < FIRST_MOMENT) return { severity: 'fault', column: 'snap', rule: first };
  return { severity: 'fault', column: 'clock', rule: `with its quarter, down, distance and ball position ${first}` };
}

function finishChart({ file, lanes, size, rowOf }: IntakeState): Film {
  const columns: Partial<Record<ColumnName, FilmColumn>> = {};
  for (const { column, store } of lanes) columns[column.name] = finishStore(store, size);
  return { size, sources: [file], sourceOf: new Uint16Array(size), rowOf: cut(rowOf, size), columns };
}
