import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { type Film, numberAt, textAt } from '../../game/film.ts';
import { ANSWERS } from '../../game/vocabulary.ts';
import type { SituationCuts } from '../../game/week-settings.ts';
import { answerCodes } from './answer.ts';
import { FIELD_ZONES, fieldZoneCodes } from './field-zone.ts';
import { GAME_STATES, gameStateCodes } from './game-state.ts';
import { LOOKS, lookCodes } from './look.ts';
import { NOT_KNOWN } from './not-known.ts';
import { offenseGames } from './offense-game.ts';
import { PASS, runOrPassCodes } from './run-or-pass.ts';
import { SITUATIONS, situationCodes } from './situation.ts';
import { toldAnswers } from './told-answers.ts';

/** A property every snap has once: the word it has on a snap, or undefined where it was not charted. */
export type SnapWord = (index: number) => string | undefined;

/** A condition on a snap: true, false, or undefined where what it asks was not charted. */
export type SnapTest = (index: number) => boolean | undefined;

/** A condition as understood, or what is wrong with it in words that complete "<text> ...". */
export type ParsedCondition =
  | { readonly kind: 'test'; readonly test: SnapTest }
  | { readonly kind: 'problem'; readonly rule: string };

/** Properties that are worked out of several columns, with the words each may have. */
const DERIVED = {
  answer: ANSWERS,
  situation: SITUATIONS.map(({ id }) => id),
  zone: FIELD_ZONES.map(({ id }) => id),
  state: GAME_STATES.map(({ id }) => id),
  look: LOOKS.map(({ id }) => id),
} as const satisfies Record<string, readonly string[]>;
type DerivedName = keyof typeof DERIVED;

/** Names a question may split by: the derived properties and every column that holds words or small numbers. */
export const SPLIT_NAMES: readonly string[] = [...Object.keys(DERIVED), ...FILM_COLUMNS.map(({ name }) => name)];

/**
 * Understands one condition: a bare answer or situation (`screen`, `third_long`), `name=word` with a column or a derived
 * name, or `column>=number` (also `<=` and `=`).
 */
export function parseCondition(text: string, chart: Film, cuts: SituationCuts): ParsedCondition {
  const found = /^\s*([a-z_]+)\s*(>=|<=|=)\s*(.+?)\s*$/i.exec(text);
  if (!found) return bareWord(text.trim().toLowerCase(), chart, cuts);
  const [, name = '', sign = '=', value = ''] = found;
  const column = FILM_COLUMNS.find((candidate) => candidate.name === name.toLowerCase());
  if (column?.kind === 'number') return numberTest(chart, column.name, { sign, value });
  const words = snapWords(name.toLowerCase(), chart, cuts);
  if (!words)
    return {
      kind: 'problem',
      rule: `asks for "${name}", which is neither a column nor one of ${Object.keys(DERIVED).join(', ')}`,
    };
  if (sign !== '=') return { kind: 'problem', rule: `compares words by ${sign}; use =` };
  if (name.toLowerCase() === 'answer') return derivedTest('answer', value, { chart, cuts });
  return wordTest(words, value, wordsOf(name.toLowerCase()));
}

/** The word a snap has under a derived name or a column, or undefined when there is no such name. */
export function snapWords(name: string, chart: Film, cuts: SituationCuts): SnapWord | undefined {
  if (Object.hasOwn(DERIVED, name)) return derivedWords(name as DerivedName, chart, cuts);
  const column = FILM_COLUMNS.find((candidate) => candidate.name === name);
  if (!column) return undefined;
  if (column.kind === 'code') return (index) => textAt(chart, column.name, index);
  return (index) => numberAt(chart, column.name, index)?.toString();
}

function derivedWords(name: DerivedName, chart: Film, cuts: SituationCuts): SnapWord {
  const codes = {
    answer: () => answerCodes(chart, cuts),
    situation: () => situationCodes(chart, cuts),
    zone: () => fieldZoneCodes(chart, cuts),
    state: () => gameStateCodes(chart),
    look: () => lookCodes(chart),
  }[name]();
  const words: readonly string[] = DERIVED[name];
  return (index) => (codes[index] === NOT_KNOWN ? undefined : words[codes[index] ?? NOT_KNOWN]);
}

function bareWord(word: string, chart: Film, cuts: SituationCuts): ParsedCondition {
  const name = (Object.keys(DERIVED) as DerivedName[]).find((candidate) =>
    (DERIVED[candidate] as readonly string[]).includes(word),
  );
  if (name) return derivedTest(name, word, { chart, cuts });
  return {
    kind: 'problem',
    rule: `is none of: ${Object.values(DERIVED).flat().join(', ')}; or write column=word, such as slide=left`,
  };
}

/** What a derived property is asked of. */
interface CutFilm {
  readonly chart: Film;
  readonly cuts: SituationCuts;
}

function derivedTest(name: DerivedName, value: string, { chart, cuts }: CutFilm): ParsedCondition {
  const parsed = wordTest(derivedWords(name, chart, cuts), value, DERIVED[name]);
  return name === 'answer' && parsed.kind === 'test'
    ? { kind: 'test', test: answerTest(parsed.test, value, { chart, cuts }) }
    : parsed;
}

/**
 * An answer asked for: a pass is no run, however little else was charted of it; and which pass it was is asked only in
 * games that tell their passes apart, or runs alone would be counted.
 */
function answerTest(test: SnapTest, answer: string, { chart, cuts }: CutFilm): SnapTest {
  const runOrPass = runOrPassCodes(chart);
  if (/run$/i.test(answer)) return (index) => (runOrPass[index] === PASS ? false : test(index));
  const told = toldAnswers(answerCodes(chart, cuts), runOrPass, offenseGames(chart));
  return (index) => (told[index] === NOT_KNOWN ? undefined : test(index));
}

function wordsOf(name: string): readonly string[] | undefined {
  if (Object.hasOwn(DERIVED, name)) return DERIVED[name as DerivedName];
  const cell = FILM_COLUMNS.find((column) => column.name === name)?.cell;
  return cell?.form === 'word' ? cell.words : undefined;
}

function wordTest(words: SnapWord, value: string, allowed: readonly string[] | undefined): ParsedCondition {
  const wanted = allowed ? value.toLowerCase().replaceAll(/[\s-]+/g, '_') : value;
  if (allowed && !allowed.includes(wanted))
    return { kind: 'problem', rule: `asks for "${value}"; the words are ${allowed.join(', ')}` };
  const test: SnapTest = (index) => {
    const word = words(index);
    return word === undefined ? undefined : word === wanted;
  };
  return { kind: 'test', test };
}

function numberTest(
  chart: Film,
  column: ColumnName,
  asked: { readonly sign: string; readonly value: string },
): ParsedCondition {
  const limit = Number(asked.value);
  if (Number.isNaN(limit))
    return { kind: 'problem', rule: `compares ${column} with "${asked.value}", which is not a number` };
  const test: SnapTest = (index) => {
    const number = numberAt(chart, column, index);
    if (number === undefined) return undefined;
    if (asked.sign === '>=') return number >= limit;
    return asked.sign === '<=' ? number <= limit : number === limit;
  };
  return { kind: 'test', test };
}
