import type { ColumnName } from '../../game/columns.ts';
import { columnLetter } from '../column-letter.ts';
import { NOT_CHARTED } from '../not-charted.ts';
import { definitionOf } from '../profile.ts';
import { PAIR_DATES } from '../read-pair.ts';
import { REQUIRED_COLUMNS, WANTED_COLUMNS } from '../sheet-kind.ts';
import { TRANSFORM_MEANINGS, type Transform } from '../translate-cell.ts';
import { type ColumnChoice, SURE } from './choose-columns.ts';
import type { ColumnDraft } from './column-draft.ts';
import { type ColumnFacts, isInside } from './column-facts.ts';
import { isFolded } from './detect-ball.ts';
import type { DraftState } from './draft-state.ts';
import { isInRuns } from './game-runs.ts';
import { datesKey, pairOrder } from './pair-order.ts';
import { NOT_READ, type Question } from './question.ts';

/** A column that was not chosen is asked about when one of our columns fits it this well; judgment. */
const WORTH_ASKING = 0.3;

/** Columns of his that nothing fits are asked about at most so often; judgment. */
const MOST_ASKED = 8;

/** What the sheet's columns leave open: choices that are not sure, columns every snap needs, columns nobody knows. */
export function openQuestions(state: DraftState, drafts: readonly ColumnDraft[]): Question[] {
  return [
    ...missingQuestions(state, drafts),
    ...state.choices.chosen.flatMap((choice) => choiceQuestion(state, choice)),
    ...dateQuestions(state),
    ...leftOverQuestions(state, drafts),
  ];
}

function missingQuestions({ request, context, nameOf }: DraftState, drafts: readonly ColumnDraft[]): Question[] {
  const present = new Set(drafts.map(({ column }) => column));
  const missing = REQUIRED_COLUMNS[request.kind].filter((column) => !present.has(column));
  const choices = context.columns.filter(({ part }) => part === undefined).map(nameOf);
  const folded = context.columns.find((facts) => isFolded(facts, context));
  const sideless =
    folded === undefined
      ? ''
      : ` "${nameOf(folded)}" counts from 1 to 50, and nothing says on which side of the 50. A column beside it with own or opp would, and so does the team of the side when all snaps are of one offense.`;
  const needed = missing.map((column) => ({
    key: `find/${column}`,
    text: `Every snap needs ${column} (${definitionOf(column).meaning}), and no column was found for it. Which one holds it?`,
    choices,
    guess: undefined,
  }));
  const wanted = WANTED_COLUMNS[request.kind].filter(({ column }) => !present.has(column));
  const asked = wanted.map(({ column, without }) => ({
    key: `find/${column}`,
    text: `No column was found for ${column} (${definitionOf(column).meaning}).${column === 'ball_on' ? sideless : ''} Which one holds it? If you do not chart it, answer "${NOT_CHARTED}"; then ${without}.`,
    choices: [...choices, NOT_CHARTED],
    guess: undefined,
  }));
  return [...needed, ...asked];
}

function choiceQuestion(state: DraftState, choice: ColumnChoice): Question[] {
  const { column, facts, evidence, confidence } = choice;
  // What a code under a yes-or-no header means is asked code by code.
  const open = definitionOf(column).cell.form === 'word' ? undefined : evidence.open;
  if (confidence >= SURE && open === undefined) return [];
  const name = nameWith(state, facts, column);
  const readings = open === undefined ? [] : readingsOf(choice);
  const guess = evidence.as === undefined || readings.length === 0 ? name : `${name} as ${evidence.as}`;
  const text = `${showColumn(state, facts)} looks like ${column} (${definitionOf(column).meaning}).${doubtText(choice, open)} Is it?`;
  const answers = readings.length > 0 ? readings.map((as) => `${name} as ${as}`) : [name];
  const joins = open === undefined || facts.joined !== undefined ? [] : joinsOf(state, choice);
  return [{ key: state.nameOf(facts), text, choices: choicesFor(state, facts, [...answers, ...joins]), guess }];
}

/** Our column, and the column of his that belongs to it when it is two. */
function nameWith({ context, nameOf }: DraftState, { joined }: ColumnFacts, column: ColumnName): string {
  const other = context.columns.find(({ index, part }) => index === joined?.index && part === undefined);
  return other === undefined ? column : `${column} with ${nameOf(other)}`;
}

/** The same column read together with another one of his. */
function joinsOf(state: DraftState, { column, facts }: ColumnChoice): string[] {
  const joins = state.context.joined.filter(({ index, joined }) => index === facts.index && joined?.column === column);
  return joins.map((join) => nameWith(state, join, column));
}

function doubtText(choice: ColumnChoice, open: string | undefined): string {
  const readings = open === undefined ? '' : readingsOf(choice).map(meaningOf).join('; ');
  const doubt = open === undefined ? '' : ` It does not say ${open}${readings === '' ? '' : `: ${readings}`}.`;
  const { rivals } = choice;
  const others = rivals.length === 0 ? '' : ` It could also be ${rivals.map((name) => `"${name}"`).join(', ')}.`;
  return `${doubt}${others}`;
}

function readingsOf({ column, evidence }: ColumnChoice): readonly Transform[] {
  if (column === 'score_margin') return ['plus', 'minus'];
  if (column !== 'ball_on') return [];
  const marked = evidence.as === 'bare_is_opp' || evidence.as === 'bare_is_own';
  return marked ? ['bare_is_opp', 'bare_is_own'] : ['yards_to_goal', 'yards_from_own_goal', 'minus_is_own'];
}

function meaningOf(as: Transform): string {
  return `${as} is ${TRANSFORM_MEANINGS[as]}`;
}

function choicesFor({ choices }: DraftState, facts: ColumnFacts, first: readonly string[]): string[] {
  const others = choices.open.filter((pair) => pair.facts.index === facts.index).map((pair) => pair.column);
  return [...new Set([...first, ...others.slice(0, 5), NOT_READ])];
}

/** A spreadsheet's dates when the values do not tell the order of day and month. */
function dateQuestions(state: DraftState): Question[] {
  const { answers } = state.request;
  const columns = state.context.columns.filter(({ part }) => part === undefined);
  const open = columns.filter((facts) => isRead(state, facts) && pairOrder(facts, answers).open);
  return open.map((facts) => ({
    key: datesKey(facts.header),
    text: `${showColumn(state, facts)} holds dates that a spreadsheet made of two numbers. Which was typed first? plain is month, then day; turned is day, then month.`,
    choices: [...PAIR_DATES],
    guess: 'plain',
  }));
}

/** Whether a column is read as two numbers. */
function isRead({ choices }: DraftState, { index }: ColumnFacts): boolean {
  return choices.chosen.some(({ facts }) => facts.index === index && facts.part !== undefined);
}

/** Columns that one of our columns may fit, and columns of names that come again: the coach knows what they are. */
function leftOverQuestions(state: DraftState, drafts: readonly ColumnDraft[]): Question[] {
  const read = new Set(drafts.flatMap(({ reads }) => reads.map(({ index }) => index)));
  const left = state.context.columns.filter(
    (facts) => facts.part === undefined && facts.filled > 0 && !read.has(facts.index),
  );
  const asked = left
    .map((facts) => ({ facts, best: state.choices.open.find((pair) => pair.facts === facts) }))
    .filter(({ facts, best }) => (best?.confidence ?? 0) >= WORTH_ASKING || isNames(facts) || isCodes(facts));
  asked.sort(
    (one, other) => (other.best?.confidence ?? 0) - (one.best?.confidence ?? 0) || one.facts.index - other.facts.index,
  );
  return asked.slice(0, MOST_ASKED).map(({ facts }) => ({
    key: state.nameOf(facts),
    text: `${showColumn(state, facts)} fits none of our columns for sure. What does it hold?`,
    choices: choicesFor(state, facts, []),
    guess: undefined,
  }));
}

function isNames(facts: ColumnFacts): boolean {
  const { counts, filled, numberShare } = facts;
  return numberShare < 0.3 && counts.size >= 2 && counts.size <= Math.min(60, 0.4 * filled) && !isInRuns(facts, 8);
}

/** Three or four numbers in a row from 0 or 1 that come again and again, as codes for a hash do. */
function isCodes(facts: ColumnFacts): boolean {
  const { counts, filled, wholeShare } = facts;
  if (counts.size < 3 || counts.size > 4 || wholeShare < 1 || filled < 10 * counts.size) return false;
  const least = counts.has('0') ? 0 : 1;
  return isInside(facts, least, least + counts.size - 1) && !isInRuns(facts, 8);
}

/** The column as the coach sees it: letter, header, and its most frequent values. */
function showColumn({ nameOf, countsOf, request }: DraftState, facts: ColumnFacts): string {
  const values = [...countsOf(facts)].sort((one, other) => other[1] - one[1] || (one[0] < other[0] ? -1 : 1));
  const shown = values.slice(0, 5).map(([text]) => text.slice(0, 30));
  const letter = request.table.sideBySide ? '' : ` (${columnLetter(facts.index)})`;
  return `Column "${nameOf(facts)}"${letter}, with ${shown.join(', ')}${values.length > 5 ? ' ...' : ''},`;
}
