import { definitionOf } from '../game/column-definition.ts';
import type { ColumnName } from '../game/columns.ts';
import { type CellReading, faultReading } from './cell-reading.ts';
import { columnIndex } from './column-letter.ts';
import { isJoinable, joinCells } from './join-cells.ts';
import { nearestWord } from './nearest-word.ts';
import { NOT_CHARTED } from './not-charted.ts';
import type { ColumnSource, Profile } from './profile.ts';
import { compileCondition, type RowTest } from './profile-condition.ts';
import { headersOf, profileHeaders } from './profile-headers.ts';
import { plainWord, readCell } from './read-cell.ts';
import { readFigure } from './read-figure.ts';
import type { RowProblem } from './row-problem.ts';
import { headerKey } from './sheet-dialect.ts';
import type { ColumnMatch, HeaderRow, PlannedColumn } from './sheet-plan.ts';
import { type CellTranslation, secondsAsClock, translateCell } from './translate-cell.ts';

/** Matches the headers of a foreign sheet with our columns through a profile. */
export function planFromProfile(header: HeaderRow, profile: Profile): ColumnMatch {
  const keys = header.headers.map(headerKey);
  const byLetter = new Set<number>();
  const indexOf = (text: string) => {
    const byName = keys.indexOf(headerKey(text));
    const index = byName === -1 ? letterIndex(text, keys.length) : byName;
    if (byName === -1 && index !== -1) byLetter.add(index);
    return index;
  };
  const columns: PlannedColumn[] = [];
  for (const [name, source] of Object.entries(profile.columns) as [ColumnName, ColumnSource][]) {
    const planned = planColumn(name, source, { profile, indexOf });
    if (planned !== undefined) columns.push(planned);
  }
  const used = new Set(profileHeaders(profile).map(indexOf));
  const keeps = keepTest(profile, indexOf);
  return { columns, used, byLetter, keeps, problems: absentHeaders(header, profile, indexOf) };
}

/** The index of a column named by its letter ("column F"), for headers that are blank or stand twice; -1 otherwise. */
function letterIndex(text: string, width: number): number {
  const letter = text.match(/^\s*column ([A-Z]{1,3})\s*$/)?.[1];
  const index = letter === undefined ? -1 : columnIndex(letter);
  return index < width ? index : -1;
}

interface PlanContext {
  readonly profile: Profile;
  readonly indexOf: (header: string) => number;
}

/** Undefined when the sheet lacks the column's header. */
function planColumn(name: ColumnName, source: ColumnSource, context: PlanContext): PlannedColumn | undefined {
  const definition = definitionOf(name);
  const base = { name, kind: definition.kind };
  if (source.header !== undefined) {
    const index = context.indexOf(source.header);
    if (index === -1) return undefined;
    const read = translatedReader(name, source, context.profile);
    if (source.with !== undefined) return joinedColumn(name, source, { context, index, read });
    const textOf = (cells: readonly string[]) => cells[index] ?? '';
    return { ...base, index, header: source.header, textOf, read };
  }
  const read = (written: string) => readCell(definition, written);
  if (source.value !== undefined) {
    const { value } = source;
    return { ...base, index: -1, header: name, textOf: () => value, read };
  }
  const textOf = source.restarts ? gameCounter(source.restarts, context) : ruleReader(source, context.indexOf);
  return { ...base, index: -1, header: name, textOf, read };
}

/** The game of each row in the order of the sheet: the next one begins where the number is lower than before. */
function gameCounter(
  { header, names }: NonNullable<ColumnSource['restarts']>,
  { indexOf }: PlanContext,
): (cells: readonly string[]) => string {
  const index = indexOf(header);
  let game = 0;
  let before = Number.NEGATIVE_INFINITY;
  return (cells) => {
    const number = readFigure(cells[index] ?? '');
    if (number < before) game++;
    if (!Number.isNaN(number)) before = number;
    return names[game] ?? `game ${game + 1}`;
  };
}

interface JoinParts {
  readonly context: PlanContext;
  readonly index: number;
  readonly read: (written: string) => CellReading;
}

/** A column read from two cells that belong together; undefined when the sheet lacks the second. */
function joinedColumn(name: ColumnName, source: ColumnSource, parts: JoinParts): PlannedColumn | undefined {
  const second = parts.context.indexOf(source.with ?? '');
  if (second === -1 || !isJoinable(name)) return undefined;
  const textOf = (cells: readonly string[]) => joinCells(name, cells[parts.index] ?? '', cells[second] ?? '');
  const header = `${source.header} with ${source.with}`;
  return { name, kind: definitionOf(name).kind, index: -1, header, textOf, read: parts.read };
}

function translatedReader(name: ColumnName, source: ColumnSource, profile: Profile): (written: string) => CellReading {
  const definition = definitionOf(name);
  const translation = translationOf(source, profile);
  const asClock = source.as === 'seconds' && definition.cell.form === 'clock';
  const asCode = source.as === 'figure' && definition.cell.form === 'code';
  return (written) => {
    const translated = translateCell(translation, written);
    if (translated.kind === 'fault') return faultReading(translated.rule);
    const text = asCode && translated.text !== '' ? translated.text.padStart(2, '0') : translated.text;
    return readCell(definition, asClock ? secondsAsClock(text) : text);
  };
}

function translationOf(source: ColumnSource, profile: Profile): CellTranslation {
  const words = Object.entries(source.words).map(([code, word]) => [plainWord(code), withoutNotCharted(word)] as const);
  return {
    notCharted: new Set([...profile.not_charted, ...source.not_charted].map(plainWord)),
    words: new Map(words),
    as: source.as,
    dates: source.dates,
    sides: sidesOf(source),
    otherWordsAreBlank: source.others === undefined ? 'kept' : 'blank',
  };
}

function sidesOf({ sides }: ColumnSource): CellTranslation['sides'] {
  if (sides === undefined) return undefined;
  return new Map(Object.entries(sides).map(([word, side]) => [plainWord(word), side]));
}

function withoutNotCharted(word: string): string {
  return plainWord(word) === plainWord(NOT_CHARTED) ? '' : word;
}

/** The word of the first rule with all its conditions met; blank when none does. */
function ruleReader(source: ColumnSource, indexOf: (header: string) => number): (cells: readonly string[]) => string {
  const rules = (source.rules ?? []).map(({ when, use }) => ({
    tests: when.map((condition) => compileCondition(condition, indexOf)),
    word: withoutNotCharted(use),
  }));
  return (cells) => rules.find(({ tests }) => tests.every((test) => test(cells)))?.word ?? '';
}

function keepTest(profile: Profile, indexOf: (header: string) => number): RowTest {
  const keep = profile.keep_when.map((condition) => compileCondition(condition, indexOf));
  const drop = profile.drop_when.map((condition) => compileCondition(condition, indexOf));
  return (cells) => keep.every((test) => test(cells)) && !drop.some((test) => test(cells));
}

/** A header asked for in a condition must be there; one that only feeds a column leaves the column not charted. */
function absentHeaders({ file, row, headers }: HeaderRow, profile: Profile, indexOf: (header: string) => number) {
  const feeding = new Set(Object.values(profile.columns).flatMap(headersOf));
  const absent = profileHeaders(profile).filter((header) => indexOf(header) === -1);
  return absent.map((header): RowProblem => {
    const near = nearestWord(header, headers);
    return {
      severity: feeding.has(header) ? 'warning' : 'fault',
      file,
      row,
      found: header,
      rule: 'is a header the profile names, and the sheet does not have it',
      ...(near === undefined ? {} : { suggestion: `Did you mean "${near}"?` }),
    };
  });
}
