import { CHART_COLUMNS, type ColumnName } from '../columns.ts';
import { TRANSFORMS, type Transform } from '../translate-cell.ts';
import type { ColumnAnswers } from './choose-columns.ts';
import type { ColumnFacts } from './column-facts.ts';
import { type Answers, answerKey, answerOf, NOT_READ } from './question.ts';

/** An answer to what a column holds: one of ours, and how it is read. */
export interface ColumnAnswer {
  readonly column: ColumnName | undefined;
  readonly as: Transform | undefined;
}

/** What the answers say of the columns of a sheet, by the column of his. */
export function columnAnswers(columns: readonly ColumnFacts[], answers: Answers): ColumnAnswers {
  const byHeader = columns.flatMap((facts): [ColumnFacts, ColumnName | undefined][] => {
    const answer = headerAnswer(facts.header, answers);
    const about = answer !== undefined && (facts.part === undefined || answer.column === undefined);
    return about ? [[facts, answer.column]] : [];
  });
  const found = CHART_COLUMNS.flatMap(({ name }): [ColumnFacts, ColumnName][] => {
    const facts = foundColumn(columns, answerOf(answers, `find/${name}`));
    return facts === undefined ? [] : [[facts, name]];
  });
  return new Map([...byHeader, ...found]);
}

function foundColumn(columns: readonly ColumnFacts[], header: string | undefined): ColumnFacts | undefined {
  if (header === undefined) return undefined;
  return columns.find((one) => one.part === undefined && answerKey(one.header) === answerKey(header));
}

/** The answer filed under a header; undefined when there is none, or when it names nothing of ours. */
export function headerAnswer(header: string, answers: Answers): ColumnAnswer | undefined {
  const text = answerOf(answers, header);
  if (text === undefined) return undefined;
  const [name = '', as] = text.toLowerCase().split(/\s+as\s+/);
  const column = CHART_COLUMNS.find((one) => one.name === name.trim().replaceAll(' ', '_'))?.name;
  if (column === undefined && name.trim() !== NOT_READ) return undefined;
  return { column, as: TRANSFORMS.find((transform) => transform === as?.trim()) };
}
