import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { type ColumnFacts, shareWhere } from './column-facts.ts';
import type { Detectors, Evidence, SheetContext } from './evidence.ts';
import { type FlagMeaning, flagMeaning, isFlag } from './flag-meanings.ts';
import { isPassOnly } from './sheet-context.ts';
import { headerLikeness } from './trade-words.ts';
import { guessWord, isNoSnapWord } from './value-words.ts';

/** A header this like one of our columns vouches for codes that say nothing by themselves; judgment. */
const VOUCHED = 0.75;

/** Columns with a closed list of words. */
export const WORD_DETECTORS: Detectors = Object.fromEntries(
  FILM_COLUMNS.filter(({ cell }) => cell.form === 'word').map(({ name }) => [
    name,
    (facts: ColumnFacts, context: SheetContext) => detectWords(name, facts, context),
  ]),
);

/** Charted on passes only; a column of these that runs have too is another. */
const ON_PASSES: readonly ColumnName[] = ['slide', 'back_action', 'target_zone'];

function detectWords(column: ColumnName, facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  if (facts.part !== undefined || facts.filled === 0) return undefined;
  const meaning = flagMeaning(facts, column);
  if (meaning) return flagEvidence(facts, meaning);
  return codeEvidence(column, facts, context);
}

function codeEvidence(column: ColumnName, facts: ColumnFacts, context: SheetContext): Evidence | undefined {
  const vouched = headerLikeness(facts.header, column) >= VOUCHED;
  const numeric = facts.numberShare > 0.5 || isFlag(facts);
  const known = shareWhere(facts, (text) => isKnown(column, text));
  if (!vouched && (numeric || known < 0.8)) return undefined;
  if (known < 0.3) return known > 0 ? { score: 0.1, why: 'has some words we know' } : undefined;
  const score = known * surenessOf(column, facts) * (numeric ? 0.3 : 1) * placeFactor(column, facts, context);
  return { score, why: 'holds words of this column' };
}

function flagEvidence({ header }: ColumnFacts, { yes }: FlagMeaning): Evidence {
  const why = `is a yes or no under "${header}"`;
  return yes === undefined ? { score: 0.6, why, open: `what a yes under "${header}" means` } : { score: 0.6, why };
}

function isKnown(column: ColumnName, text: string): boolean {
  return guessWord(column, text) !== undefined || (column === 'play_kind' && isNoSnapWord(text));
}

/** More of our words, and longer codes, leave less room for chance. */
function surenessOf(column: ColumnName, facts: ColumnFacts): number {
  const guesses = [...facts.counts.keys()].flatMap((text) => guessWord(column, text) ?? []);
  const words = new Set(guesses.map(({ word }) => word)).size;
  const long = shareWhere(facts, (text) => text.length > 1);
  // Left and right alone may be the hash, the strength or a slide: only the coach knows.
  if (SIDED.includes(column) && words <= 2) return headerLikeness(facts.header, column) >= VOUCHED ? 0.8 : UNSIDED;
  const variety = words >= 3 ? 0.95 : words === 2 ? 0.8 : 0.35;
  return variety * (long >= 0.5 || isTelling(column, words) ? 1 : 0.6);
}

/** A column of left and right under a header that says no more is asked about, and not read until then; judgment. */
const UNSIDED = 0.45;

/** Columns of sides. */
const SIDED: readonly ColumnName[] = ['hash', 'strength', 'slide'];

/** L, M and R together are a hash, R and P a kind of play, C, X and SK a result. */
function isTelling(column: ColumnName, words: number): boolean {
  return (
    (column === 'hash' && words === 3) || (column === 'play_kind' && words >= 2) || (column === 'result' && words >= 3)
  );
}

function placeFactor(column: ColumnName, facts: ColumnFacts, context: SheetContext): number {
  if (ON_PASSES.includes(column) && context.passes !== undefined && !isPassOnly(facts, context)) return 0.4;
  return 1;
}
