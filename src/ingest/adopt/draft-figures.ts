import type { ColumnName } from '../../game/columns.ts';
import { definitionOf, NOT_CHARTED } from '../profile.ts';
import { plainWord, readCell } from '../read-cell.ts';
import { readFigure } from '../read-figure.ts';
import type { Transform } from '../translate-cell.ts';
import { nothingWords } from './draft-words.ts';
import { type Answers, answerOf, NOT_READ, type Question } from './question.ts';

/** How the cells of a column of numbers or of a fixed shape are read, and what had to be asked. */
export interface DraftFigures {
  readonly as: Transform | undefined;
  readonly words: Readonly<Record<string, string>>;
  readonly questions: readonly Question[];
}

/** A column written as ours. */
export const NO_FIGURES: DraftFigures = { as: undefined, words: {}, questions: [] };

/** Names of personnel asked about, the most frequent ones; judgment: as many as a coach answers in a minute. */
const MOST_ASKED = 12;

/**
 * How a column of numbers or of a fixed shape is read that writes them in another way: 3rd, Q2, (3) and 11 personnel as
 * figures, 1 as personnel 01, and a staff's own names for its personnel as it answers.
 */
export function draftFigures(column: ColumnName, counts: ReadonlyMap<string, number>, answers: Answers): DraftFigures {
  const definition = definitionOf(column);
  const nothing = new Set(nothingWords(column, counts));
  const odd = [...counts].filter(([text]) => readCell(definition, text).kind === 'fault' && !nothing.has(text));
  const meant = odd.map(([text, count]) => ({ text, count, figure: figureOf(column, text) }));
  const words = meant.flatMap(({ text, figure }): [string, string][] =>
    figure === undefined || figure.as === 'figure' ? [] : [[text, figure.text]],
  );
  const unknown = column === 'personnel' ? meant.filter(({ figure }) => figure === undefined) : [];
  const named = unknown.sort((left, right) => right.count - left.count || (left.text < right.text ? -1 : 1));
  const drafts = named.map(({ text, count }) => personnelDraft(text, count, answers));
  return {
    as: meant.some(({ figure }) => figure?.as === 'figure') ? 'figure' : undefined,
    words: Object.fromEntries([...words, ...drafts.map(({ text, word }) => [text, word])]),
    questions: drafts.flatMap(({ question }) => question ?? []).slice(0, MOST_ASKED),
  };
}

interface Figure {
  readonly as: 'figure' | 'word';
  readonly text: string;
}

/** What a cell that is not written as ours means: as a figure, or as a word of its own. */
function figureOf(column: ColumnName, text: string): Figure | undefined {
  const definition = definitionOf(column);
  const own = ownWord(column, text);
  if (own !== undefined) return { as: 'word', text: own };
  const value = readFigure(text);
  const figure = String(value);
  return !Number.isNaN(value) && readCell(definition, figure).kind === 'value'
    ? { as: 'figure', text: figure }
    : undefined;
}

function ownWord(column: ColumnName, text: string): string | undefined {
  if (column === 'personnel' && /^[0-5]$/.test(text)) return `0${text}`;
  return column === 'quarter' && /^(?:ot|overtime)$/i.test(text) ? '5' : undefined;
}

interface PersonnelDraft {
  readonly text: string;
  readonly word: string;
  readonly question?: Question;
}

/** A name for a personnel, by its answer; until then it is not charted. */
function personnelDraft(text: string, count: number, answers: Answers): PersonnelDraft {
  const key = `personnel/${text}`;
  const answer = answerOf(answers, key);
  if (answer !== undefined && [NOT_READ, NOT_CHARTED].includes(answer.toLowerCase()))
    return { text, word: NOT_CHARTED };
  if (answer !== undefined && readCell(definitionOf('personnel'), answer).kind === 'value') {
    return { text, word: plainWord(answer) };
  }
  const rows = count === 1 ? '1 row' : `${count} rows`;
  const asked = `In personnel (backs, then tight ends, as in 11), what does "${text}" mean? It stands in ${rows}.`;
  return { text, word: NOT_CHARTED, question: { key, text: asked, choices: [], guess: undefined } };
}
