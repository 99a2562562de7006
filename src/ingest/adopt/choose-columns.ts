import { type ColumnName, FILM_COLUMNS } from '../../game/columns.ts';
import { columnsOfKind } from '../sheet-kind.ts';
import type { ColumnFacts } from './column-facts.ts';
import { NUMBER_DETECTORS } from './detect-numbers.ts';
import { ORDER_DETECTORS } from './detect-order.ts';
import { TEXT_DETECTORS } from './detect-text.ts';
import { WORD_DETECTORS } from './detect-words.ts';
import type { Detectors, Evidence, SheetContext } from './evidence.ts';
import { headerLikeness } from './trade-words.ts';

/** His column for one of our columns, how sure that is (0 to 1), and whether another column could be meant as well. */
export interface ColumnChoice {
  readonly column: ColumnName;
  readonly facts: ColumnFacts;
  readonly evidence: Evidence;
  readonly confidence: number;
  readonly rivals: readonly string[];
}

/** Everything that may be said of the columns, best first. */
export interface ColumnChoices {
  readonly chosen: readonly ColumnChoice[];
  /** Pairs that were not chosen but could be, best first. */
  readonly open: readonly ColumnChoice[];
}

/** From here on a column is written into the profile; judgment. */
export const LIKELY = 0.5;

/** From here on it is not asked about; judgment. */
export const SURE = 0.8;

/** Two columns so close to one another are asked about; judgment. */
const TOO_CLOSE = 0.1;

/** How much of the doubt a header that says it outright takes away; judgment. */
const HEADER_WEIGHT = 0.8;

/** What is left of the evidence when the header says that the column is another one; judgment. */
const OTHER_HEADER = 0.6;

const DETECTORS: Detectors = { ...ORDER_DETECTORS, ...NUMBER_DETECTORS, ...WORD_DETECTORS, ...TEXT_DETECTORS };

/** Our columns that a sheet of our own film does not ask for: what another defense did. */
const NOT_ON_OWN_FILM: readonly ColumnName[] = ['coverage_faced', 'rushers_faced'];

/** Our columns that may share one cell of his. */
const PAIRED: readonly ColumnName[] = ['down', 'to_go'];

/** What the coach has said already: his header's key to our column, or to nothing. */
export type ColumnAnswers = ReadonlyMap<ColumnFacts, ColumnName | undefined>;

/** Chooses for each of our columns the one of his that fits it best; answers go before everything. */
export function chooseColumns(context: SheetContext, answers: ColumnAnswers): ColumnChoices {
  const pairs = allPairs(context, answers);
  const chosen = new Map<ColumnName, ColumnChoice>();
  const used = new Set<string>();
  for (const pair of pairs) {
    if (pair.confidence < LIKELY || chosen.has(pair.column) || isUsed(pair.facts, used)) continue;
    chosen.set(pair.column, pair);
    for (const place of placesOf(pair.facts)) used.add(place);
    if (pair.facts.part !== undefined) used.add(`${pair.facts.index}`);
  }
  const open = pairs.filter(({ column, facts }) => !chosen.has(column) && !isUsed(facts, used));
  return { chosen: inOrder([...chosen.values()].map((pair) => withRivals(pair, pairs, chosen))), open };
}

function isUsed(facts: ColumnFacts, used: ReadonlySet<string>): boolean {
  return placesOf(facts).some((place) => used.has(place));
}

/** The cells a column stands in; two for columns taken as one. */
function placesOf({ index, part, joined }: ColumnFacts): string[] {
  return [`${index}${part ?? ''}`, ...(joined === undefined ? [] : [`${joined.index}`])];
}

function allPairs(context: SheetContext, answers: ColumnAnswers): ColumnChoice[] {
  const names = columnsOfKind(context.kind).filter((name) => context.kind !== 'own' || !NOT_ON_OWN_FILM.includes(name));
  const pairs = [...context.joined, ...context.columns].flatMap((facts) =>
    names.flatMap((column) => pairOf(column, facts, { context, answers })),
  );
  return pairs.sort(
    (left, right) =>
      right.confidence - left.confidence ||
      compare(left.facts.header, right.facts.header) ||
      compare(left.column, right.column),
  );
}

interface PairContext {
  readonly context: SheetContext;
  readonly answers: ColumnAnswers;
}

function pairOf(column: ColumnName, facts: ColumnFacts, { context, answers }: PairContext): ColumnChoice[] {
  if (!canBe(column, facts)) return [];
  const answered = answers.has(facts);
  if (answered && answers.get(facts) !== column) return [];
  if (!answered && isSplit(facts, { context, answers })) return [];
  const evidence = DETECTORS[column]?.(facts, context);
  if (answered) {
    const said = { ...(evidence ?? { score: 0 }), score: 1, why: 'you said so' };
    return [{ column, facts, evidence: said, confidence: 1, rivals: [] }];
  }
  if (evidence === undefined || evidence.score <= 0) return [];
  const score = evidence.score * (isOtherHeader(column, facts, evidence) ? OTHER_HEADER : 1);
  const confidence = 1 - (1 - score) * (1 - HEADER_WEIGHT * headerLikeness(facts.header, column));
  return [{ column, facts, evidence, confidence, rivals: [] }];
}

/** Whether a column, or a part of one, or two taken together may hold our column at all. */
function canBe(column: ColumnName, { filled, part, joined }: ColumnFacts): boolean {
  if (filled === 0 || (part !== undefined && !PAIRED.includes(column))) return false;
  return joined === undefined || joined.column === column;
}

/** Whether the answers say of one of two columns taken together that it stands alone, or is not read. */
function isSplit({ joined, index }: ColumnFacts, { context, answers }: PairContext): boolean {
  if (joined === undefined) return false;
  const parts = context.columns.filter((one) => one.part === undefined && [index, joined.index].includes(one.index));
  return parts.some((one) => answers.has(one));
}

/** Whether a header says outright that the column is another one; relations between columns outweigh it. */
function isOtherHeader(column: ColumnName, { header }: ColumnFacts, { score }: Evidence): boolean {
  if (score >= 0.95 || headerLikeness(header, column) >= 0.5) return false;
  return FILM_COLUMNS.some(({ name }) => headerLikeness(header, name) >= 0.9);
}

/** A column nearly as likely, with a header that does not set it apart, makes the choice a question. */
function withRivals(
  pair: ColumnChoice,
  pairs: readonly ColumnChoice[],
  chosen: ReadonlyMap<ColumnName, ColumnChoice>,
): ColumnChoice {
  const likeness = headerLikeness(pair.facts.header, pair.column);
  const rivals = pairs.filter(
    (other) =>
      other.column === pair.column &&
      other.facts.index !== pair.facts.index &&
      other.confidence > pair.confidence - TOO_CLOSE &&
      likeness - headerLikeness(other.facts.header, pair.column) < 0.3 &&
      ![...chosen.values()].some(({ facts }) => facts.index === other.facts.index),
  );
  if (rivals.length === 0 || pair.confidence === 1) return pair;
  const names = [...new Set(rivals.map(({ facts }) => facts.header))];
  return { ...pair, confidence: Math.min(pair.confidence, SURE - 0.05), rivals: names };
}

function inOrder(choices: readonly ColumnChoice[]): ColumnChoice[] {
  const place = (name: ColumnName) => FILM_COLUMNS.findIndex((column) => column.name === name);
  return [...choices].sort((left, right) => place(left.column) - place(right.column));
}

function compare(left: string, right: string): number {
  if (left === right) return 0;
  return left < right ? -1 : 1;
}
