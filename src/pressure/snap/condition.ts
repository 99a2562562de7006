import { countBy, mostFirst } from '../../game/by-word.ts';
import { type ColumnDefinition, type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { type Film, rowsOf } from '../../game/film.ts';
import { freeWordKey } from '../../game/free-word.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { secondsOfClock, yardsOfPosition } from '../../game/written-numbers.ts';
import { answerCodes } from './answer.ts';
import { classifiedAnswers } from './classified-answers.ts';
import { NOT_KNOWN } from './not-known.ts';
import { offenseGames } from './offense-game.ts';
import { PASS, runOrPassCodes } from './run-or-pass.ts';
import {
  chartedColumns,
  DERIVED,
  type DerivedName,
  derivedWords,
  isDerived,
  type SnapWord,
  snapNumbers,
  snapWords,
} from './snap-words.ts';

/** A condition on a snap: true, false, or undefined where what it asks was not charted. */
export type SnapTest = (index: number) => boolean | undefined;

/** Snaps that a narrow word leaves out although a coach may mean them too, and the word that counts both. */
export interface LeftOut {
  readonly word: string;
  readonly test: SnapTest;
  readonly ask: string;
}

/** What is wrong with a part of a question; `words` are those that could stand there. */
export type QuestionFault =
  | { readonly kind: 'bare_word' | 'split'; readonly words: readonly string[] }
  | { readonly kind: 'unknown_name'; readonly name: string; readonly words: readonly string[] }
  | { readonly kind: 'not_charted'; readonly name: string; readonly words: readonly string[] }
  | { readonly kind: 'sign_of_words'; readonly sign: string }
  | { readonly kind: 'unknown_word' | 'word_not_charted'; readonly asked: string; readonly words: readonly string[] }
  | {
      readonly kind: 'no_number';
      readonly name: string;
      readonly asked: string;
      readonly form: ColumnDefinition['cell']['form'];
    };

/** A condition as understood, or what is wrong with it. */
export type ParsedCondition =
  | { readonly kind: 'test'; readonly test: SnapTest; readonly leavesOut?: LeftOut }
  | { readonly kind: 'problem'; readonly fault: QuestionFault };

type FilmColumnDefinition = ColumnDefinition & { readonly name: ColumnName };

/** What a condition is asked of. */
interface CutFilm {
  readonly chart: Film;
  readonly cuts: SituationCuts;
}

/**
 * Understands one condition: a bare answer, situation or `pass` and `any_run` (`screen`, `third_long`), `name=word` with
 * a column or a derived name, or `column>=number` (also `<=` and `=`). Words may be written in any case; a ball position
 * and a clock are written as they are charted (`ball_on<=opp 20`, which is 20 yards to the goal line or fewer).
 */
export function parseCondition(text: string, chart: Film, cuts: SituationCuts): ParsedCondition {
  const found = /^\s*([a-z_]+)\s*(>=|<=|=)\s*(.+?)\s*$/i.exec(text);
  if (!found) return bareWord(text.trim().toLowerCase(), { chart, cuts });
  const [, written = '', sign = '=', value = ''] = found;
  const name = written.toLowerCase();
  if (isDerived(name)) return sign === '=' ? derivedTest(name, value, { chart, cuts }) : comparesWords(sign);
  const column = FILM_COLUMNS.find((candidate) => candidate.name === name);
  const charted = chartedColumns(chart);
  if (column === undefined) return problem({ kind: 'unknown_name', name: written, words: charted });
  if (!charted.includes(column.name)) return problem({ kind: 'not_charted', name, words: charted });
  if (column.kind === 'number') return numberTest(chart, column, { sign, value });
  return sign === '=' ? columnTest(column, value, { chart, cuts }) : comparesWords(sign);
}

function problem(fault: QuestionFault): ParsedCondition {
  return { kind: 'problem', fault };
}

function comparesWords(sign: string): ParsedCondition {
  return problem({ kind: 'sign_of_words', sign });
}

function bareWord(word: string, film: CutFilm): ParsedCondition {
  const name = (Object.keys(DERIVED) as DerivedName[]).find((candidate) =>
    (DERIVED[candidate] as readonly string[]).includes(word),
  );
  if (name) return derivedTest(name, word, film);
  return problem({ kind: 'bare_word', words: Object.values(DERIVED).flat() });
}

function derivedTest(name: DerivedName, value: string, film: CutFilm): ParsedCondition {
  const parsed = wordTest(derivedWords(name, film.chart, film.cuts), value, DERIVED[name]);
  if (name !== 'answer' || parsed.kind === 'problem') return parsed;
  const test = answerTest(parsed.test, value, film);
  return plainWord(value) === 'run' ? { kind: 'test', test, leavesOut: quarterbackRuns(film) } : { kind: 'test', test };
}

function quarterbackRuns({ chart, cuts }: CutFilm): LeftOut {
  const words = derivedWords('answer', chart, cuts);
  return { word: 'quarterback_run', test: (index) => words(index) === 'quarterback_run', ask: 'any_run' };
}

/**
 * An answer asked for: a pass is not a run, however little else was charted of it; and which pass it was is asked only in
 * games that tell their passes apart, or runs alone would be counted.
 */
function answerTest(test: SnapTest, answer: string, { chart, cuts }: CutFilm): SnapTest {
  const runOrPass = runOrPassCodes(chart);
  if (plainWord(answer) === 'quarterback_run' && !tellsQuarterbackRuns(chart)) return () => undefined;
  if (/run$/i.test(answer)) return (index) => (runOrPass[index] === PASS ? false : test(index));
  const charted = classifiedAnswers(answerCodes(chart, cuts), runOrPass, offenseGames(chart));
  return (index) => (charted[index] === NOT_KNOWN ? undefined : test(index));
}

/** A chart that never says quarterback_run does not tell who ran. */
function tellsQuarterbackRuns(chart: Film): boolean {
  const kinds = chart.columns.play_kind;
  return kinds?.kind === 'code' && kinds.values.includes('quarterback_run');
}

function columnTest({ name, cell }: ColumnDefinition, value: string, { chart, cuts }: CutFilm): ParsedCondition {
  const words = snapWords(name, chart, cuts) as SnapWord;
  if (cell.form !== 'word') return freeWordTest(words, value, wordsThere(words, chart));
  // The coarse word stands for every kind of pass, however finely it was charted.
  if (name === 'play_kind' && plainWord(value) === 'pass') return derivedTest('run_or_pass', value, { chart, cuts });
  const parsed = wordTest(words, value, cell.words);
  if (name !== 'play_kind' || parsed.kind === 'problem' || plainWord(value) !== 'run') return parsed;
  return { ...parsed, leavesOut: quarterbackRuns({ chart, cuts }) };
}

/** The words of a free column with their snaps, the most frequent first. */
function wordsThere(words: SnapWord, chart: Film): readonly string[] {
  return mostFirst(countBy(rowsOf(chart), words)).map(([word]) => word);
}

function freeWordTest(words: SnapWord, value: string, there: readonly string[]): ParsedCondition {
  const key = freeWordKey(value);
  if (!there.some((word) => freeWordKey(word) === key))
    return problem({ kind: 'word_not_charted', asked: value, words: there });
  return { kind: 'test', test: (index) => whereCharted(words(index), (word) => freeWordKey(word) === key) };
}

function whereCharted(word: string | undefined, test: (word: string) => boolean): boolean | undefined {
  return word === undefined ? undefined : test(word);
}

function plainWord(value: string): string {
  return value
    .trim()
    .toLowerCase()
    .replaceAll(/[\s-]+/g, '_');
}

function wordTest(words: SnapWord, value: string, allowed: readonly string[]): ParsedCondition {
  const wanted = plainWord(value);
  if (!allowed.includes(wanted)) return problem({ kind: 'unknown_word', asked: value, words: allowed });
  return { kind: 'test', test: (index) => whereCharted(words(index), (word) => word === wanted) };
}

function numberTest(
  chart: Film,
  { name, cell }: FilmColumnDefinition,
  asked: { readonly sign: string; readonly value: string },
): ParsedCondition {
  const limit = writtenNumber(cell.form, asked.value.toLowerCase());
  if (limit === undefined) return problem({ kind: 'no_number', name, asked: asked.value, form: cell.form });
  const numbers = snapNumbers(name, chart);
  const test: SnapTest = (index) => {
    const number = numbers(index);
    if (number === undefined) return undefined;
    if (asked.sign === '>=') return number >= limit;
    return asked.sign === '<=' ? number <= limit : number === limit;
  };
  return { kind: 'test', test };
}

/** A number as it is charted: a ball position, or yards to the goal line; a clock, or seconds. */
function writtenNumber(form: ColumnDefinition['cell']['form'], value: string): number | undefined {
  const written = form === 'field' ? yardsOfPosition(value) : form === 'clock' ? secondsOfClock(value) : undefined;
  const number = written ?? (/\d/.test(value) ? Number(value) : Number.NaN);
  return Number.isNaN(number) ? undefined : number;
}
