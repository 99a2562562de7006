import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { isJoinable } from '../join-cells.ts';
import { TRANSFORMS, type Transform } from '../translate-cell.ts';
import type { ColumnAnswers } from './choose-columns.ts';
import type { ColumnFacts } from './column-facts.ts';
import { joinTwo } from './joined-columns.ts';
import { type Answers, answerKey, answerOf, NOT_READ } from './question.ts';

/** An answer to what a column holds: one of our columns, and how it is read. */
export interface ColumnAnswer {
  readonly column: ColumnName | undefined;
  readonly as: Transform | undefined;
  /** The header of a second column that belongs to it. */
  readonly with: string | undefined;
}

/** What the answers say of the columns of a sheet, by the column of his. */
export function columnAnswers(columns: readonly ColumnFacts[], answers: Answers): ColumnAnswers {
  const byHeader = columns.flatMap((facts): [ColumnFacts, ColumnName | undefined][] => {
    const answer = facts.part === undefined ? headerAnswer(facts.header, answers) : undefined;
    if (answer === undefined) return [];
    return answeredAs(columns, facts, answer.with === undefined ? answer.column : undefined);
  });
  const found = FILM_COLUMNS.flatMap(({ name }): [ColumnFacts, ColumnName | undefined][] => {
    const facts = foundColumn(columns, answerOf(answers, `find/${name}`));
    return facts === undefined ? [] : answeredAs(columns, facts, name);
  });
  return new Map([...byHeader, ...found]);
}

/** A column said to be one of our columns; of two numbers in a cell the first is the down, the second the distance. */
function answeredAs(
  columns: readonly ColumnFacts[],
  facts: ColumnFacts,
  column: ColumnName | undefined,
): [ColumnFacts, ColumnName | undefined][] {
  const parts = columns.filter(({ index, part }) => index === facts.index && part !== undefined);
  if (column !== 'down' && column !== 'to_go') {
    const unread = column === undefined ? [] : parts.map((part): [ColumnFacts, undefined] => [part, undefined]);
    return [[facts, column], ...unread];
  }
  if (parts.length === 0) return [[facts, column]];
  const halves = parts.map((part): [ColumnFacts, ColumnName] => [
    part,
    part.part === 'first_of_pair' ? 'down' : 'to_go',
  ]);
  return [[facts, undefined], ...halves];
}

/** The two columns that the answers say belong together, as one each. */
export function answeredJoins(columns: readonly ColumnFacts[], answers: Answers): [ColumnFacts, ColumnName][] {
  return columns.flatMap((facts): [ColumnFacts, ColumnName][] => {
    const { column, with: other } = headerAnswer(facts.header, answers) ?? {};
    const second = foundColumn(columns, other);
    if (facts.part !== undefined || column === undefined || second === undefined || !isJoinable(column)) return [];
    return [[joinTwo(column, facts, second), column]];
  });
}

function foundColumn(columns: readonly ColumnFacts[], header: string | undefined): ColumnFacts | undefined {
  if (header === undefined) return undefined;
  return columns.find((one) => one.part === undefined && answerKey(one.header) === answerKey(header));
}

/** The answer filed under a header; undefined when there is none, or when it names none of our columns. */
export function headerAnswer(header: string, answers: Answers): ColumnAnswer | undefined {
  const text = answerOf(answers, header);
  if (text === undefined) return undefined;
  const [before = '', as] = text.split(/\s+as\s+(?=\w+\s*$)/i);
  const [written = '', other] = before.split(/\s+with\s+/i);
  const name = written.toLowerCase();
  const column = FILM_COLUMNS.find((one) => one.name === name.trim().replaceAll(' ', '_'))?.name;
  if (column === undefined && name.trim() !== NOT_READ) return undefined;
  const transform = TRANSFORMS.find((one) => one === as?.trim().toLowerCase());
  return { column, as: transform, with: other?.trim().replace(/^"|"$/g, '') };
}
