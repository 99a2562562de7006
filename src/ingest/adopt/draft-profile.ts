import { countBy } from '../../game/by-word.ts';
import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { columnLetter } from '../column-letter.ts';
import { headerKey } from '../sheet-dialect.ts';
import { chooseColumns } from './choose-columns.ts';
import { answeredJoins, columnAnswers, headerAnswer } from './column-answers.ts';
import type { ColumnDraft } from './column-draft.ts';
import { columnFacts } from './column-facts.ts';
import { draftSources } from './draft-sources.ts';
import type { DraftRequest, DraftState } from './draft-state.ts';
import type { FoundTable } from './found-table.ts';
import { openQuestions } from './open-questions.ts';
import { datesKey } from './pair-order.ts';
import type { ProfileInput } from './profile-input.ts';
import { type Answers, answerKey, type Question } from './question.ts';
import { type RowsKept, rowsKept, rowsKey } from './rows-kept.ts';
import { sheetContext } from './sheet-context.ts';

/** One of our columns in the draft: where it comes from, how sure that is (0 to 1), and why. */
export interface DraftedColumn {
  readonly column: ColumnName;
  readonly header: string;
  readonly confidence: number;
  readonly why: string;
}

/** A profile drafted from the values of a sheet, and what remains to be asked. */
export interface ProfileDraft {
  readonly profile: ProfileInput;
  readonly columns: readonly DraftedColumn[];
  /** Headers of his that feed nothing. */
  readonly unread: readonly string[];
  readonly questions: readonly Question[];
  /** Keys of answers that answer nothing. */
  readonly strayAnswers: readonly string[];
}

/** Drafts a profile for a foreign sheet from its values; answers go before every guess. */
export function draftProfile(request: DraftRequest): ProfileDraft {
  const columns = columnFacts(request.table, request.answers);
  const joins = answeredJoins(columns, request.answers);
  const found = sheetContext(columns, request.kind);
  const context = { ...found, joined: [...found.joined, ...joins.map(([facts]) => facts)] };
  const choices = chooseColumns(context, new Map([...columnAnswers(columns, request.answers), ...joins]));
  const state: DraftState = {
    request,
    context,
    choices,
    nameOf: ({ index }) => headerName(request.table, index),
    countsOf: counter(request.table),
  };
  const drafts = draftSources(state);
  const kept = rowsKept(state, drafts);
  const asked = openQuestions(state, drafts).filter(
    ({ key }) => kept === undefined || key !== state.nameOf(kept.facts),
  );
  const questions = [...(kept ? [kept.question] : []), ...asked, ...drafts.flatMap((draft) => draft.questions)];
  return {
    profile: { ...keepOf(kept), ...profileOf(request.table, drafts) },
    columns: drafts.map(({ column, header, confidence, why }) => ({ column, header, confidence, why })),
    unread: unreadHeaders(request.table, drafts).filter((header) => header !== kept?.facts.header),
    questions: unanswered(questions, request.answers),
    strayAnswers: strayAnswers(state),
  };
}

function keepOf(kept: RowsKept | undefined): Pick<ProfileInput, 'keep_when'> {
  return kept === undefined || kept.keep.length === 0 ? {} : { keep_when: [...kept.keep] };
}

/** A header that is blank or stands twice is named by its letter. */
function headerName({ headers }: FoundTable, index: number): string {
  const keys = headers.map(headerKey);
  const key = keys[index] ?? '';
  const single = key !== '' && keys.indexOf(key) === keys.lastIndexOf(key);
  return single ? (headers[index] ?? '') : `column ${columnLetter(index)}`;
}

function counter({ rows }: FoundTable): DraftState['countsOf'] {
  return ({ index, part, joined, counts }) => {
    if (part !== undefined || joined !== undefined) return counts;
    return countBy(rows, ({ cells }) => cells[index] || undefined);
  };
}

function profileOf(table: FoundTable, drafts: readonly ColumnDraft[]): ProfileInput {
  const { headerRow, sideBySide } = table;
  const nothing = [...new Set(drafts.flatMap((draft) => draft.nothing))].sort();
  const drops = [
    ...drafts.flatMap(({ header, noSnaps }) => (noSnaps.length > 0 ? [{ header, is: [...noSnaps] }] : [])),
    ...totalConditions(table),
  ];
  const columns = Object.fromEntries(drafts.map(({ column, source }) => [column, source]));
  const layout = sideBySide && { ...sideBySide, width: String(sideBySide.width), snaps: String(sideBySide.snaps) };
  return {
    ...(headerRow === 0 ? { headers: 'none' as const } : {}),
    ...(layout ? { side_by_side: layout } : {}),
    ...(nothing.length > 0 ? { not_charted: nothing } : {}),
    ...(drops.length > 0 ? { drop_when: drops } : {}),
    columns: columns as ProfileInput['columns'],
  };
}

/** Rows of sums are known by the word they begin with. */
function totalConditions(table: FoundTable): { readonly header: string; readonly is: string[] }[] {
  const labels = new Map<number, Set<string>>();
  for (const { cells, why } of table.aside) {
    const index = cells.findIndex((cell) => cell.trim() !== '');
    if (why !== 'total' || index >= table.headers.length) continue;
    labels.set(index, (labels.get(index) ?? new Set()).add(cells[index]?.trim() ?? ''));
  }
  return [...labels].map(([index, texts]) => ({ header: headerName(table, index), is: [...texts].sort() }));
}

function unreadHeaders({ headers }: FoundTable, drafts: readonly ColumnDraft[]): string[] {
  const read = new Set(drafts.flatMap(({ reads }) => reads.map(({ index }) => index)));
  return headers.filter((header, i) => header !== '' && !read.has(i));
}

function unanswered(questions: readonly Question[], answers: Answers): Question[] {
  return questions.filter(({ key }) => isAboutCode(key) || !answers.has(answerKey(key)));
}

/** A code is asked about until its answer is one of our words. */
function isAboutCode(key: string): boolean {
  return FILM_COLUMNS.some(({ name }) => key.startsWith(`${name}/`));
}

/** Answers under a key that no column, code or question of this sheet has, or that name none of our columns or words. */
function strayAnswers({ context, choices, countsOf, request }: DraftState): string[] {
  const { answers } = request;
  const headers = context.columns.filter(({ header }) => headerAnswer(header, answers) !== undefined);
  const codes = choices.chosen.flatMap(({ column, facts }) =>
    [...countsOf(facts).keys()].map((code) => `${column}/${code}`),
  );
  const finds = FILM_COLUMNS.map(({ name }) => `find/${name}`);
  const dates = context.columns.filter(({ part }) => part !== undefined).map(({ header }) => datesKey(header));
  const named = headers.map(({ header }) => header);
  const rows = context.columns.map(({ header }) => rowsKey(header));
  const known = new Set([...named, ...rows, ...codes, ...finds, ...dates, 'all/game'].map(answerKey));
  return [...answers.keys()].filter((key) => !known.has(key));
}
