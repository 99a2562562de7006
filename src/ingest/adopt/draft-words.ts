import type { ColumnName } from '../../game/columns.ts';
import { definitionOf, NOT_CHARTED } from '../profile.ts';
import { plainWord, readCell } from '../read-cell.ts';
import { flagOf } from '../yes-or-no.ts';
import type { ColumnFacts } from './column-facts.ts';
import { type FlagMeaning, flagMeaning } from './flag-meanings.ts';
import { type Answers, answerOf, NOT_READ, type Question } from './question.ts';
import { guessWord, isNoSnapWord } from './value-words.ts';

/** His codes in our words, what had to be asked, and codes of rows that are not snaps. */
export interface DraftWords {
  readonly words: Readonly<Record<string, string>>;
  readonly questions: readonly Question[];
  readonly noSnaps: readonly string[];
}

/** Codes asked about in one column, the most frequent ones; judgment: as many as a coach answers in a minute. */
const MOST_ASKED = 12;

/** A guess less sure than this is asked about; judgment. */
const SURE_CODE = 0.8;

/** What people write for "not charted"; see read-cell.ts. `x` is left out, for it may be a yes. */
const NOTHING = ['-', '--', '?', 'n/a', 'na', '#n/a', 'nan', 'null', 'unknown', '.'];

/** The codes of one column in our words. `counts` has every code of the sheet and how often it stands there. */
export function draftWords(column: ColumnName, facts: ColumnFacts, { counts, answers }: CodeContext): DraftWords {
  const byCount = [...counts].sort((left, right) => right[1] - left[1] || (left[0] < right[0] ? -1 : 1));
  const drafts = byCount.map(([code, count]) => ({ code, count, draft: draftCode(column, code, { facts, answers }) }));
  const words = drafts.flatMap(({ code, draft }): [string, string][] => {
    const word = wordOf(column, draft);
    return word === undefined || word === plainWord(code) ? [] : [[code, word]];
  });
  const questions = drafts.flatMap(({ code, count, draft }) =>
    draft.kind === 'asked' ? [codeQuestion(column, code, { count, ...draft })] : [],
  );
  const noSnaps = drafts.filter(({ draft }) => draft.kind === 'no-snap').map(({ code }) => code);
  return { words: Object.fromEntries(words), questions: questions.slice(0, MOST_ASKED), noSnaps };
}

/** What is written until somebody answers: the guess, else not charted. Every snap needs its kind, so it stays open. */
function wordOf(column: ColumnName, draft: CodeDraft): string | undefined {
  if (draft.kind === 'word') return draft.word;
  if (draft.kind !== 'asked') return undefined;
  return draft.guess ?? (column === 'play_kind' ? undefined : NOT_CHARTED);
}

/** All codes of a column of the sheet with their counts, and what was answered. */
export interface CodeContext {
  readonly counts: ReadonlyMap<string, number>;
  readonly answers: Answers;
}

/** Texts of a column that say nothing. */
export function nothingWords(column: ColumnName, counts: ReadonlyMap<string, number>): string[] {
  const definition = definitionOf(column);
  return [...counts.keys()].filter(
    (text) =>
      NOTHING.includes(text.toLowerCase()) &&
      (readCell(definition, text).kind === 'fault' || definition.cell.form === 'text'),
  );
}

type CodeDraft =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'asked'; readonly guess: string | undefined; readonly till?: string }
  | { readonly kind: 'no-snap' | 'nothing' };

function draftCode(column: ColumnName, code: string, context: FlagContext): CodeDraft {
  const answer = answerOf(context.answers, codeKey(column, code));
  if (answer !== undefined) return answeredCode(column, answer);
  if (NOTHING.includes(code.toLowerCase())) return { kind: 'nothing' };
  if (column === 'play_kind' && isNoSnapWord(code)) return { kind: 'no-snap' };
  const meaning = flagMeaning(context.facts, column);
  return meaning ? flagDraft(meaning, code, context) : guessedCode(column, code);
}

function flagDraft({ column, yes, no }: FlagMeaning, code: string, context: FlagContext): CodeDraft {
  if (flagOf(code) === 'yes') {
    if (yes !== undefined) return { kind: 'word', word: yes };
    return { kind: 'asked', guess: undefined, till: `${column} is left out: no share of it could be right` };
  }
  return { kind: 'word', word: yes !== undefined || isYesCharted(column, context) ? no : NOT_CHARTED };
}

interface FlagContext {
  readonly facts: ColumnFacts;
  readonly answers: Answers;
}

/** Whether the coach said what the sheet's yes means, or it has none; else a no would be all that is left to count. */
function isYesCharted(column: ColumnName, { facts, answers }: FlagContext): boolean {
  const yesses = [...facts.counts.keys()].filter((text) => flagOf(text) === 'yes');
  return yesses.every((text) => {
    const answer = answerOf(answers, codeKey(column, text));
    const draft = answer === undefined ? undefined : answeredCode(column, answer);
    return draft?.kind === 'word' && draft.word !== NOT_CHARTED;
  });
}

function guessedCode(column: ColumnName, code: string): CodeDraft {
  const guess = guessWord(column, code);
  // A number of backs says where they stand only when there is none.
  if (column === 'back_spot' && guess === undefined && /^\d+$/.test(code)) return { kind: 'word', word: NOT_CHARTED };
  if (guess === undefined || guess.sure < SURE_CODE) return { kind: 'asked', guess: guess?.word };
  return { kind: 'word', word: guess.word };
}

function answeredCode(column: ColumnName, answer: string): CodeDraft {
  const word = plainWord(answer);
  if (word === 'no_snap') return { kind: 'no-snap' };
  if (word === plainWord(NOT_READ) || word === plainWord(NOT_CHARTED)) return { kind: 'word', word: NOT_CHARTED };
  const known = guessWord(column, answer)?.word;
  return known === undefined ? { kind: 'asked', guess: undefined } : { kind: 'word', word: known };
}

function codeKey(column: ColumnName, code: string): string {
  return `${column}/${code}`;
}

function codeQuestion(
  column: ColumnName,
  code: string,
  { count, guess, till }: { readonly count: number; readonly guess: string | undefined; readonly till?: string },
): Question {
  const { cell, meaning } = definitionOf(column);
  const words = cell.form === 'word' ? cell.words : [];
  const rows = count === 1 ? '1 row' : `${count} rows`;
  return {
    key: codeKey(column, code),
    text: `In ${column} (${meaning}), what does "${code}" mean? It stands in ${rows}.${till === undefined ? '' : ` Until you say, ${till}.`}`,
    choices: [...words, NOT_CHARTED, ...(column === 'play_kind' ? ['no snap'] : [])],
    guess,
  };
}
