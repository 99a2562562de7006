import { type ColumnDefinition, type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import type { Film } from '../../game/film.ts';
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

/** A condition as understood, or what is wrong with it in words that complete "<text> ...". */
export type ParsedCondition =
  | { readonly kind: 'test'; readonly test: SnapTest; readonly leavesOut?: LeftOut }
  | { readonly kind: 'problem'; readonly rule: string };

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
  if (column === undefined)
    return { kind: 'problem', rule: `asks for "${written}", which is neither ${namesOf(chart)}` };
  if (!chartedColumns(chart).includes(column.name))
    return {
      kind: 'problem',
      rule: `asks for ${name}, which is not charted; charted are ${chartedColumns(chart).join(', ')}`,
    };
  if (column.kind === 'number') return numberTest(chart, column, { sign, value });
  return sign === '=' ? columnTest(column, value, { chart, cuts }) : comparesWords(sign);
}

function namesOf(chart: Film): string {
  return `a charted column (${chartedColumns(chart).join(', ')}) nor one of ${Object.keys(DERIVED).join(', ')}`;
}

function comparesWords(sign: string): ParsedCondition {
  return { kind: 'problem', rule: `compares words by ${sign}; use =` };
}

function bareWord(word: string, film: CutFilm): ParsedCondition {
  const name = (Object.keys(DERIVED) as DerivedName[]).find((candidate) =>
    (DERIVED[candidate] as readonly string[]).includes(word),
  );
  if (name) return derivedTest(name, word, film);
  return {
    kind: 'problem',
    rule: `is none of: ${Object.values(DERIVED).flat().join(', ')}; or write column=word, such as slide=left`,
  };
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

/** A chart that never says quarterback_run does not tell whose run it was. */
function tellsQuarterbackRuns(chart: Film): boolean {
  const kinds = chart.columns.play_kind;
  return kinds?.kind === 'code' && kinds.values.includes('quarterback_run');
}

function columnTest({ name, cell }: ColumnDefinition, value: string, { chart, cuts }: CutFilm): ParsedCondition {
  const words = snapWords(name, chart, cuts) as SnapWord;
  if (cell.form !== 'word') return freeWordTest(words, value, wordsThere(words, chart.size));
  // The coarse word stands for every kind of pass, however finely it was charted.
  if (name === 'play_kind' && plainWord(value) === 'pass') return derivedTest('run_or_pass', value, { chart, cuts });
  const parsed = wordTest(words, value, cell.words);
  if (name !== 'play_kind' || parsed.kind === 'problem' || plainWord(value) !== 'run') return parsed;
  return { ...parsed, leavesOut: quarterbackRuns({ chart, cuts }) };
}

/** Words of a free column that are listed when another one was asked for; judgment: what fits on a few lines. */
const MOST_LISTED = 25;

/** The words of a free column with their snaps, the most frequent first. */
function wordsThere(words: SnapWord, size: number): readonly string[] {
  const counts = new Map<string, number>();
  for (let i = 0; i < size; i++) {
    const word = words(i);
    if (word !== undefined) counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  return [...counts].sort((one, other) => other[1] - one[1] || (one[0] < other[0] ? -1 : 1)).map(([word]) => word);
}

function freeWordTest(words: SnapWord, value: string, there: readonly string[]): ParsedCondition {
  const key = freeWordKey(value);
  if (!there.some((word) => freeWordKey(word) === key)) {
    const rest = there.length > MOST_LISTED ? ` and ${there.length - MOST_LISTED} more` : '';
    return {
      kind: 'problem',
      rule: `asks for "${value}"; charted are ${there.slice(0, MOST_LISTED).join(', ')}${rest}`,
    };
  }
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
  if (!allowed.includes(wanted))
    return { kind: 'problem', rule: `asks for "${value}"; the words are ${allowed.join(', ')}` };
  return { kind: 'test', test: (index) => whereCharted(words(index), (word) => word === wanted) };
}

function numberTest(
  chart: Film,
  { name, cell }: FilmColumnDefinition,
  asked: { readonly sign: string; readonly value: string },
): ParsedCondition {
  const limit = writtenNumber(cell.form, asked.value.toLowerCase());
  if (limit === undefined) return { kind: 'problem', rule: notANumber(name, cell.form, asked.value) };
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

function notANumber(name: string, form: ColumnDefinition['cell']['form'], value: string): string {
  const rule = `compares ${name} with "${value}", which is not a number`;
  if (form === 'field') return `${rule} or a ball position such as own 35 or opp 20`;
  return form === 'clock' ? `${rule} or a clock such as 2:00` : rule;
}
