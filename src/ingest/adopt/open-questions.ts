import { columnLetter } from '../column-letter.ts';
import type { ColumnName } from '../columns.ts';
import { definitionOf } from '../profile.ts';
import { REQUIRED_COLUMNS } from '../sheet-kind.ts';
import { TRANSFORM_MEANINGS, type Transform } from '../translate-cell.ts';
import { type ColumnChoice, SURE } from './choose-columns.ts';
import type { ColumnDraft } from './column-draft.ts';
import type { ColumnFacts } from './column-facts.ts';
import type { DraftState } from './draft-state.ts';
import { isInRuns } from './game-runs.ts';
import { NOT_READ, type Question } from './question.ts';

/** A column that was not chosen is asked about when something of ours fits it this well; judgement. */
const WORTH_ASKING = 0.3;

/** Columns of his that nothing fits are asked about at most so often; judgement. */
const MOST_ASKED = 8;

/** What the sheet's columns leave open: choices that are not sure, columns every snap needs, columns nobody knows. */
export function openQuestions(state: DraftState, drafts: readonly ColumnDraft[]): Question[] {
  return [
    ...missingQuestions(state, drafts),
    ...state.choices.chosen.flatMap((choice) => choiceQuestion(state, choice)),
    ...leftOverQuestions(state, drafts),
  ];
}

function missingQuestions({ request, context, nameOf }: DraftState, drafts: readonly ColumnDraft[]): Question[] {
  const present = new Set(drafts.map(({ column }) => column));
  const missing = REQUIRED_COLUMNS[request.kind].filter((column) => !present.has(column));
  const choices = context.columns.filter(({ part }) => part === undefined).map(nameOf);
  return missing.map((column) => ({
    key: `find/${column}`,
    text: `Every snap needs ${column} (${definitionOf(column).meaning}), and no column was found for it. Which one holds it?`,
    choices,
    guess: undefined,
  }));
}

function choiceQuestion(state: DraftState, choice: ColumnChoice): Question[] {
  const { column, facts, evidence, confidence } = choice;
  // What a code under a yes-or-no header means is asked code by code.
  const open = definitionOf(column).cell.form === 'word' ? undefined : evidence.open;
  if (confidence >= SURE && open === undefined) return [];
  const readings = open === undefined ? [] : readingsOf(column);
  const guess = evidence.as === undefined || readings.length === 0 ? column : `${column} as ${evidence.as}`;
  const text = `${showColumn(state, facts)} looks like ${column} (${definitionOf(column).meaning}).${doubtText(choice, open)} Is it?`;
  return [{ key: state.nameOf(facts), text, choices: choicesFor(state, facts, { column, readings }), guess }];
}

function doubtText({ column, rivals }: ColumnChoice, open: string | undefined): string {
  const readings = open === undefined ? '' : readingsOf(column).map(meaningOf).join('; ');
  const doubt = open === undefined ? '' : ` It does not say ${open}${readings === '' ? '' : `: ${readings}`}.`;
  const others = rivals.length === 0 ? '' : ` It could also be ${rivals.map((name) => `"${name}"`).join(', ')}.`;
  return `${doubt}${others}`;
}

function readingsOf(column: ColumnName): readonly Transform[] {
  if (column === 'ball_on') return ['yards_to_goal', 'yards_from_own_goal', 'signed_yard_line'];
  return column === 'score_margin' ? ['plus', 'minus'] : [];
}

function meaningOf(as: Transform): string {
  return `${as} is ${TRANSFORM_MEANINGS[as]}`;
}

interface AskedColumn {
  readonly column: ColumnName | undefined;
  readonly readings: readonly Transform[];
}

function choicesFor({ choices }: DraftState, facts: ColumnFacts, { column, readings }: AskedColumn): string[] {
  const first = column === undefined ? [] : readings.length > 0 ? readings.map((as) => `${column} as ${as}`) : [column];
  const others = choices.open.filter((pair) => pair.facts.index === facts.index).map((pair) => pair.column);
  return [...new Set([...first, ...others.slice(0, 5), NOT_READ])];
}

/** Columns that something of ours may fit, and columns of names that come again: the coach knows what they are. */
function leftOverQuestions(state: DraftState, drafts: readonly ColumnDraft[]): Question[] {
  const read = new Set(drafts.flatMap(({ reads }) => reads.map(({ index }) => index)));
  const left = state.context.columns.filter(
    (facts) => facts.part === undefined && facts.filled > 0 && !read.has(facts.index),
  );
  const asked = left
    .map((facts) => ({ facts, best: state.choices.open.find((pair) => pair.facts === facts) }))
    .filter(({ facts, best }) => (best?.confidence ?? 0) >= WORTH_ASKING || isNames(facts));
  asked.sort(
    (one, other) => (other.best?.confidence ?? 0) - (one.best?.confidence ?? 0) || one.facts.index - other.facts.index,
  );
  return asked.slice(0, MOST_ASKED).map(({ facts }) => ({
    key: state.nameOf(facts),
    text: `${showColumn(state, facts)} fits none of our columns for sure. What does it hold?`,
    choices: choicesFor(state, facts, { column: undefined, readings: [] }),
    guess: undefined,
  }));
}

function isNames(facts: ColumnFacts): boolean {
  const { counts, filled, numberShare } = facts;
  return numberShare < 0.3 && counts.size >= 2 && counts.size <= Math.min(60, 0.4 * filled) && !isInRuns(facts, 8);
}

/** The column as the coach sees it: letter, header, and its most frequent values. */
function showColumn({ nameOf, countsOf, request }: DraftState, facts: ColumnFacts): string {
  const values = [...countsOf(facts)].sort((one, other) => other[1] - one[1] || (one[0] < other[0] ? -1 : 1));
  const shown = values.slice(0, 5).map(([text]) => text.slice(0, 30));
  const letter = request.table.sideBySide ? '' : ` (${columnLetter(facts.index)})`;
  return `Column "${nameOf(facts)}"${letter}, with ${shown.join(', ')}${values.length > 5 ? ' ...' : ''},`;
}
