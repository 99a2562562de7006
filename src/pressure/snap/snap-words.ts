import { ANSWERS } from '../../game/answers.ts';
import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { PASS_COLUMNS, wasRun } from '../../game/run-or-pass.ts';
import { SITUATIONS } from '../../game/situations.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { writeClock, writeFieldPosition } from '../../game/written-numbers.ts';
import { answerCodes } from './answer.ts';
import { FIELD_ZONES, fieldZoneCodes } from './field-zone.ts';
import { GAME_STATES, gameStateCodes } from './game-state.ts';
import { LOOKS, lookCodes } from './look.ts';
import { NOT_KNOWN } from './not-known.ts';
import { runOrPassCodes } from './run-or-pass.ts';
import { RUSH_GROUPS, rushGroupCodes } from './rush-group.ts';
import { situationCodes } from './situation.ts';

/** A property every snap has once: the word it has on a snap, or undefined where it was not charted. */
export type SnapWord = (index: number) => string | undefined;

/** Properties that are worked out of several columns, with the words each may have. */
export const DERIVED = {
  answer: ANSWERS,
  run_or_pass: ['any_run', 'pass'],
  situation: SITUATIONS.map(({ id }) => id),
  zone: FIELD_ZONES.map(({ id }) => id),
  state: GAME_STATES.map(({ id }) => id),
  look: LOOKS.map(({ id }) => id),
  rush: RUSH_GROUPS,
} as const satisfies Record<string, readonly string[]>;

/** The name of one of {@link DERIVED}. */
export type DerivedName = keyof typeof DERIVED;

/** Whether a name is that of a derived property; every object has a `constructor`, which is none. */
export function isDerived(name: string): name is DerivedName {
  return Object.hasOwn(DERIVED, name);
}

/** Names a question about a chart may split by: the derived properties and every column that was charted. */
export function splitNames(chart: Film): readonly string[] {
  return [...Object.keys(DERIVED), ...chartedColumns(chart)];
}

/** The columns that were charted on any snap, in our order. */
export function chartedColumns(chart: Film): readonly ColumnName[] {
  return FILM_COLUMNS.filter(({ name }) => isCharted(chart, name)).map(({ name }) => name);
}

function isCharted(chart: Film, name: ColumnName): boolean {
  const column = chart.columns[name];
  if (column === undefined) return false;
  return column.kind === 'code' ? column.codes.some((code) => code > 0) : !column.numbers.every(Number.isNaN);
}

/**
 * The word a snap has under a derived name or a column, written as the coach charts it (`own 35`, `7:42`), or undefined
 * when there is no such name.
 */
export function snapWords(name: string, chart: Film, cuts: SituationCuts): SnapWord | undefined {
  if (isDerived(name)) return derivedWords(name, chart, cuts);
  const column = FILM_COLUMNS.find((candidate) => candidate.name === name);
  if (!column) return undefined;
  if (column.kind === 'code') return whereItCounts(chart, column.name, (index) => textAt(chart, column.name, index));
  const write = WRITERS[column.cell.form] ?? String;
  const numbers = snapNumbers(column.name, chart);
  return (index) => {
    const number = numbers(index);
    return number === undefined ? undefined : write(number);
  };
}

/** The number a snap has in a column; undefined where it was not charted, or says nothing of a run. */
export function snapNumbers(name: ColumnName, chart: Film): (index: number) => number | undefined {
  return whereItCounts(chart, name, (index) => numberAt(chart, name, index));
}

/** What is charted of a pass, on passes only. */
function whereItCounts<T>(chart: Film, name: ColumnName, at: (index: number) => T | undefined) {
  if (!PASS_COLUMNS.includes(name)) return at;
  return (index: number) =>
    wasRun(textAt(chart, 'play_kind', index), textAt(chart, 'result', index)) ? undefined : at(index);
}

const WRITERS: Readonly<Record<string, (value: number) => string>> = { field: writeFieldPosition, clock: writeClock };

/** The word a snap has under a derived name. */
export function derivedWords(name: DerivedName, chart: Film, cuts: SituationCuts): SnapWord {
  const codes = {
    answer: () => answerCodes(chart, cuts),
    run_or_pass: () => runOrPassCodes(chart),
    situation: () => situationCodes(chart, cuts),
    zone: () => fieldZoneCodes(chart, cuts),
    state: () => gameStateCodes(chart),
    look: () => lookCodes(chart),
    rush: () => rushGroupCodes(chart),
  }[name]();
  const words: readonly string[] = DERIVED[name];
  return (index) => (codes[index] === NOT_KNOWN ? undefined : words[codes[index] ?? NOT_KNOWN]);
}
