import { groupBy } from '../../game/by-word.ts';
import { type Film, rowsOf } from '../../game/film.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { type Share, share } from '../../stats/share.ts';
import { type ParsedCondition, parseCondition, type QuestionFault, type SnapTest } from './condition.ts';
import { chartedColumns, isDerived, type SnapWord, snapWords, splitNames } from './snap-words.ts';

/** One question to the film: how often `of`, on snaps where all of `when` hold, split by `by`. */
export interface TendencyQuestion {
  readonly of: string;
  readonly when: readonly string[];
  readonly by: string;
}

/** One row of the answer; `notCharted` snaps had the conditions but not what was asked. */
export interface TendencyRow {
  /** The word the rows share; null where it was not charted. */
  readonly value: string | null;
  readonly share: Share;
  readonly notCharted: number;
  /** Indices into the chart of the snaps counted. */
  readonly snaps: readonly number[];
}

/** Snaps of the question that a narrow word of it leaves out, and the word that counts them too. */
export interface LeftOutCount {
  readonly asked: string;
  readonly word: string;
  readonly snaps: number;
  readonly ask: string;
}

/** A part of a question as written, and what is wrong with it. */
export interface QuestionProblem {
  readonly text: string;
  readonly fault: QuestionFault;
}

/** The answer to a question, or what is wrong with the question. */
export type TendencyAnswer =
  | {
      readonly kind: 'rows';
      readonly rows: readonly TendencyRow[];
      readonly total: TendencyRow;
      readonly leftOut: readonly LeftOutCount[];
    }
  | { readonly kind: 'problems'; readonly problems: readonly QuestionProblem[] };

/** Answers one question with counts and Wilson intervals; rows by falling number of snaps. */
export function tendencyOf(chart: Film, question: TendencyQuestion, cuts: SituationCuts): TendencyAnswer {
  const parsed = [question.of, ...question.when].map((text) => ({
    text,
    condition: parseCondition(text, chart, cuts),
  }));
  const problems: QuestionProblem[] = parsed.flatMap(({ text, condition }) =>
    condition.kind === 'problem' ? [{ text, fault: condition.fault }] : [],
  );
  const words = splitWords(chart, question.by, cuts);
  if (!words) problems.push({ text: question.by, fault: { kind: 'split', words: splitNames(chart) } });
  if (problems.length > 0 || !words) return { kind: 'problems', problems };
  const [of, ...when] = parsed.flatMap(({ condition }) => (condition.kind === 'test' ? [condition.test] : []));
  const chosen = rowsOf(chart).filter((row) => when.every((test) => test(row) === true));
  const rows = [...groupBy(chosen, (row) => words(row) ?? null)].map(([value, snaps]) =>
    rowOf(value, snaps, of as SnapTest),
  );
  rows.sort((a, b) => b.share.trials - a.share.trials || inOrderOfName(a.value, b.value));
  const leftOut = parsed.flatMap(({ text, condition }) => leftOutOf(text, condition, chosen));
  return { kind: 'rows', rows, total: rowOf('all', chosen, of as SnapTest), leftOut };
}

/** What was not charted comes last. */
function inOrderOfName(a: string | null, b: string | null): number {
  if (a === null || b === null) return a === null ? 1 : -1;
  return a < b ? -1 : 1;
}

/** A column nobody charted splits nothing. */
function splitWords(chart: Film, by: string, cuts: SituationCuts): SnapWord | undefined {
  const name = by.toLowerCase();
  return isDerived(name) || chartedColumns(chart).some((column) => column === name)
    ? snapWords(name, chart, cuts)
    : undefined;
}

function leftOutOf(asked: string, condition: ParsedCondition, chosen: readonly number[]): LeftOutCount[] {
  if (condition.kind === 'problem' || condition.leavesOut === undefined) return [];
  const { word, test, ask } = condition.leavesOut;
  const snaps = chosen.filter((index) => test(index) === true).length;
  return snaps === 0 ? [] : [{ asked, word, snaps, ask }];
}

function rowOf(value: string | null, snaps: readonly number[], of: SnapTest): TendencyRow {
  const charted = snaps.filter((index) => of(index) !== undefined);
  const count = charted.filter((index) => of(index) === true).length;
  return { value, share: share(count, charted.length), notCharted: snaps.length - charted.length, snaps: charted };
}
