import type { ColumnName } from '../../game/columns.ts';
import { plainWord } from '../read-cell.ts';
import { flagOf } from '../yes-or-no.ts';
import { type ColumnFacts, shareWhere } from './column-facts.ts';
import { isFlag } from './flag-meanings.ts';
import type { DraftCondition, DraftRule, DraftSource } from './profile-input.ts';
import { FLAG_WORDS, phraseLikeness } from './trade-words.ts';
import { guessWord } from './value-words.ts';

/** A drafted column of words, and the columns that may tell more of the same snap. */
export interface Refinable {
  readonly header: string;
  readonly facts: ColumnFacts;
  /** Every code of the column, and our word for it. */
  readonly wordOf: ReadonlyMap<string, string>;
  readonly columns: readonly ColumnFacts[];
  /** How a column of his is named in the profile. */
  readonly nameOf: (facts: ColumnFacts) => string;
}

/** The finer kinds, in the order in which a snap of several is counted. */
const FINER = ['scramble', 'screen', 'movement', 'deep_shot', 'quick', 'play_action'] as const;

/** A word that stands on more of the passes than this is what the sheet calls any pass; judgment. */
const CATCH_ALL = 0.5;

/**
 * Rules for the kind of play when a column says only run or pass and others say more: marks such as screen or scramble,
 * and words of the play's own name. Undefined when nothing says more.
 */
export function refinePlayKind(base: Refinable, concept: ColumnFacts | undefined): DraftSource | undefined {
  if (![...base.wordOf.values()].every((word) => word === 'run' || word === 'pass')) return undefined;
  const finer = [...sneakRules(base, concept), ...FINER.flatMap((word) => finerRules(word, base, concept))];
  return finer.length === 0 ? undefined : { rules: [...finer, ...plainRules(base)] };
}

/** Rules for how a snap ended when a mark tells throwaways from other incomplete passes. */
export function refineResult(base: Refinable): DraftSource | undefined {
  const incomplete = codesOf(base, 'incomplete');
  const marks = base.columns.filter((facts) => isMarkOf('throwaway', facts));
  const mark = marks[0];
  if (mark === undefined || incomplete.length === 0) return undefined;
  const when = [{ header: base.header, is: incomplete }, markCondition(mark, base)];
  return { rules: [{ when, use: 'throwaway' }, ...plainRules(base)] };
}

function sneakRules(base: Refinable, concept: ColumnFacts | undefined): DraftRule[] {
  const codes = concept ? finerCodes('quarterback_run', concept) : [];
  if (concept === undefined || codes.length === 0) return [];
  const when = [
    { header: base.header, is: codesOf(base, 'run') },
    { header: base.nameOf(concept), is: codes },
  ];
  return [{ when, use: 'quarterback_run' }];
}

function finerRules(word: string, base: Refinable, concept: ColumnFacts | undefined): DraftRule[] {
  const codes = concept ? finerCodes(word, concept) : [];
  const named = concept && codes.length > 0 ? [{ when: [{ header: base.nameOf(concept), is: codes }], use: word }] : [];
  const marks = base.columns.filter((facts) => facts !== base.facts && isMarkOf(word, facts));
  return [...named, ...marks.map((mark) => ({ when: [markCondition(mark, base)], use: word }))];
}

/** Codes of the play's name that say a finer kind, unless they cover most snaps. */
function finerCodes(word: string, concept: ColumnFacts): string[] {
  const codes = [...concept.counts.keys()].filter((code) => guessWord('play_kind', code)?.word === word).sort();
  const share = shareWhere(concept, (text) => codes.includes(text));
  return share > CATCH_ALL ? [] : codes;
}

function isMarkOf(word: string, facts: ColumnFacts): boolean {
  const marked = isFlag(facts) && [...facts.counts.keys()].some((text) => flagOf(text) === 'yes');
  return marked && (FLAG_WORDS[word] ?? []).some((phrase) => phraseLikeness(facts.header, phrase) >= 0.9);
}

function markCondition(mark: ColumnFacts, base: Refinable): DraftCondition {
  return { header: base.nameOf(mark), is: [...mark.counts.keys()].filter((text) => flagOf(text) === 'yes') };
}

function codesOf({ wordOf }: Refinable, word: string): string[] {
  return [...wordOf].filter(([, one]) => one === word).map(([code]) => code);
}

function plainRules(base: Refinable): DraftRule[] {
  const words = [...new Set(base.wordOf.values())];
  return words.map((use) => ({ when: [{ header: base.header, is: codesOf(base, use) }], use }));
}

/** Every code of a column in our words, those that need no translation too. */
export function wordsOfCodes(
  column: ColumnName,
  counts: ReadonlyMap<string, number>,
  words: Readonly<Record<string, string>>,
): ReadonlyMap<string, string> {
  const known = [...counts.keys()].flatMap((code): [string, string][] => {
    const word = words[code] ?? (guessWord(column, code)?.word === plainWord(code) ? plainWord(code) : undefined);
    return word === undefined ? [] : [[code, word]];
  });
  return new Map(known);
}
