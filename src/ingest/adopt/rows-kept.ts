import type { ColumnDraft } from './column-draft.ts';
import type { ColumnFacts } from './column-facts.ts';
import type { DraftState } from './draft-state.ts';
import type { DraftCondition } from './profile-input.ts';
import { answerOf, type Question } from './question.ts';

/** Which rows of a sheet are read, when a column says who has the ball, and what is asked about it. */
export interface RowsKept {
  readonly facts: ColumnFacts;
  readonly keep: readonly DraftCondition[];
  readonly question: Question;
}

/** How coaches write which unit is on the field; trade words. */
const UNITS: readonly (readonly [unit: 'offense' | 'defense' | 'kicking', pattern: RegExp])[] = [
  ['offense', /^(?:o|off|offense|offence)\.?$/i],
  ['defense', /^(?:d|def|defense|defence)\.?$/i],
  ['kicking', /^(?:k|kick|kicking|s|st|special teams?)\.?$/i],
];

/** The answer that reads every row. */
const ALL = 'all';

/**
 * A column that says on every row which unit is on the field (O, D, K). Rows of the other units would count as this
 * offense's snaps, so only one unit's are read: the offense's, or on our own film the defense's.
 */
export function rowsKept(state: DraftState, drafts: readonly ColumnDraft[]): RowsKept | undefined {
  const read = new Set(drafts.flatMap(({ reads }) => reads.map(({ index }) => index)));
  const facts = state.context.columns.find((one) => one.part === undefined && !read.has(one.index) && saysUnits(one));
  if (facts === undefined) return undefined;
  const header = state.nameOf(facts);
  const codes = [...state.countsOf(facts).keys()].sort();
  const wanted = state.request.kind === 'own' ? 'defense' : 'offense';
  const guess = codes.filter((code) => unitOf(code) === wanted);
  const key = rowsKey(header);
  const answer = answerOf(state.request.answers, key)?.toLowerCase();
  const named = codes.filter((code) => code.toLowerCase() === answer);
  const kept = named.length > 0 ? named : guess;
  const text = `Column "${header}" says which unit is on the field (${codes.join(', ')}). The rows of which one are to be read?`;
  const question: Question = { key, text, choices: [...codes, ALL], guess: guess[0] };
  return { facts, keep: answer === ALL ? [] : [{ header, is: kept }], question };
}

/** What the answer about the rows to read is filed under. */
export function rowsKey(header: string): string {
  return `rows/${header}`;
}

function saysUnits({ counts, filled, cells }: ColumnFacts): boolean {
  if (counts.size < 2 || counts.size > 6 || filled < 0.9 * cells.length) return false;
  const units = new Set([...counts.keys()].map(unitOf));
  return units.has('offense') && units.has('defense') && !units.has(undefined);
}

function unitOf(code: string): 'offense' | 'defense' | 'kicking' | undefined {
  return UNITS.find(([, pattern]) => pattern.test(code.trim()))?.[0];
}
