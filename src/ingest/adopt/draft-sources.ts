import type { ColumnName } from '../../game/columns.ts';
import { definitionOf } from '../profile.ts';
import { plainWord } from '../read-cell.ts';
import type { ColumnChoice } from './choose-columns.ts';
import { headerAnswer } from './column-answers.ts';
import type { ColumnDraft } from './column-draft.ts';
import type { ColumnFacts } from './column-facts.ts';
import { draftFigures, NO_FIGURES } from './draft-figures.ts';
import type { DraftState } from './draft-state.ts';
import { draftWords, nothingWords } from './draft-words.ts';
import { fallbackSources } from './fallback-sources.ts';
import type { DraftSource } from './profile-input.ts';
import { refinePlayKind, refineResult, wordsOfCodes } from './refine-by-marks.ts';

/** Each of our columns that the sheet can feed. */
export function draftSources(state: DraftState): ColumnDraft[] {
  const drafts = state.choices.chosen.map((choice) => draftColumn(state, choice));
  return [...fallbackSources(state, drafts), ...drafts];
}

function draftColumn(state: DraftState, choice: ColumnChoice): ColumnDraft {
  const { column, facts, confidence, evidence } = choice;
  const second = secondOf(state, facts);
  const counts = state.countsOf(facts);
  const base = {
    column,
    header: [facts, second].flatMap((one) => (one === undefined ? [] : [state.nameOf(one)])).join(' with '),
    confidence,
    why: evidence.why,
    reads: second === undefined ? [facts] : [facts, second],
    nothing: nothingWords(column, counts),
  };
  if (definitionOf(column).cell.form === 'word') return { ...base, ...draftWordColumn(state, choice) };
  const as = facts.part ?? headerAnswer(facts.header, state.request.answers)?.as ?? evidence.as;
  const plain = as === undefined && evidence.sides === undefined && second === undefined;
  const figures = plain ? draftFigures(column, counts, state.request.answers) : NO_FIGURES;
  const source = plainSource(state, choice, { as: as ?? figures.as, words: figures.words });
  return { ...base, source: shortest(source), questions: figures.questions, noSnaps: [] };
}

/** How a column that is no closed list of words is read. */
function plainSource(
  state: DraftState,
  choice: ColumnChoice,
  { as, words }: Pick<DraftSource, 'words'> & { as: DraftSource['as'] | undefined },
): DraftSource {
  const second = secondOf(state, choice.facts);
  const { sides } = choice.evidence;
  return {
    header: state.nameOf(choice.facts),
    ...(second === undefined ? {} : { with: state.nameOf(second) }),
    ...(as === undefined ? {} : { as }),
    ...datesOf(choice),
    ...(sides === undefined ? {} : { sides }),
    ...(Object.keys(words ?? {}).length === 0 ? {} : { words: words ?? {} }),
  };
}

/** The column of his that a column taken as two is read with. */
function secondOf({ context }: DraftState, { joined }: ColumnFacts): ColumnFacts | undefined {
  return joined && context.columns.find(({ index, part }) => index === joined.index && part === undefined);
}

/** How dates stand for two numbers, where that is not the usual way. */
function datesOf({ facts, evidence }: ColumnChoice): Pick<DraftSource, 'dates'> {
  const dates = evidence.dates ?? facts.dates;
  return dates === undefined || dates === 'plain' ? {} : { dates };
}

function draftWordColumn(state: DraftState, { column, facts }: ColumnChoice) {
  const { answers } = state.request;
  const header = state.nameOf(facts);
  const counts = state.countsOf(facts);
  const { words, questions, noSnaps } = draftWords(column, facts, { counts, answers });
  const wordOf = wordsOfCodes(column, counts, words);
  const refinable = { header, facts, wordOf, columns: state.context.columns, nameOf: state.nameOf };
  const concept = state.choices.chosen.find((choice) => choice.column === 'concept')?.facts;
  const refined =
    column === 'play_kind'
      ? refinePlayKind(refinable, concept)
      : column === 'result'
        ? refineResult(refinable)
        : undefined;
  const source = refined ?? wordSource(column, { header, words, counts });
  return { source, questions, noSnaps, ...(refined ? { reads: [facts, ...readBy(refined, state)] } : {}) };
}

function wordSource(column: ColumnName, { header, words, counts }: WordSourceParts): DraftSource | string {
  const { cell } = definitionOf(column);
  const yesNo = cell.form === 'word' && cell.words.includes('yes');
  if (yesNo && [...counts.keys()].every((code) => code === '0' || code === '1')) return { header, as: 'zero_one' };
  const needed = Object.entries(words).filter(([code, word]) => plainWord(code) !== word);
  return shortest({ header, ...(needed.length === 0 ? {} : { words: Object.fromEntries(needed) }) });
}

interface WordSourceParts {
  readonly header: string;
  readonly words: Readonly<Record<string, string>>;
  readonly counts: ReadonlyMap<string, number>;
}

function readBy({ rules = [] }: DraftSource, { context, nameOf }: DraftState): ColumnFacts[] {
  const headers = new Set(rules.flatMap(({ when }) => when.map(({ header }) => header)));
  return context.columns.filter((facts) => facts.part === undefined && headers.has(nameOf(facts)));
}

/** A header alone is written as the header. */
function shortest(source: DraftSource): DraftSource | string {
  return Object.keys(source).length === 1 && source.header !== undefined ? source.header : source;
}
