import type { ColumnName } from '../../game/columns.ts';
import { definitionOf } from '../profile.ts';
import type { ColumnDraft } from './column-draft.ts';
import type { ColumnFacts } from './column-facts.ts';
import type { DraftState } from './draft-state.ts';
import { isInRuns, runsOf } from './game-runs.ts';
import { answerOf, type Question } from './question.ts';
import { guessWord } from './value-words.ts';

/** Columns every snap needs that no column of his holds by itself, from what others say. */
export function fallbackSources(state: DraftState, drafts: readonly ColumnDraft[]): ColumnDraft[] {
  const has = (column: ColumnName) => drafts.some((draft) => draft.column === column);
  return [
    ...(has('game') || state.request.kind === 'live' ? [] : [gameDraft(state)]),
    ...(has('play_kind') ? [] : kindFromResult(state, drafts)),
  ];
}

/** A column that stays for a game and is read as something else (the week, the other team), else one name for all. */
function gameDraft(state: DraftState): ColumnDraft {
  const { request, nameOf } = state;
  const key = 'all/game';
  const answer = answerOf(request.answers, key);
  const shared = answer === undefined ? gameLike(state) : undefined;
  const base = { column: 'game' as const, questions: [], nothing: [], noSnaps: [] };
  if (shared) {
    const header = nameOf(shared);
    return { ...base, header, source: header, confidence: 0.7, why: 'stays the same for a game', reads: [shared] };
  }
  const value = answer ?? request.gameName;
  const text = `No column names the game (${definitionOf('game').meaning}). Which game is this sheet?`;
  const question: Question = { key, text, choices: [], guess: value };
  const why = 'no column names a game';
  return { ...base, header: '', source: { value }, confidence: 0.5, why, reads: [], questions: [question] };
}

/** Names or dates that stay for a game, else the week; nothing that is read as another column. */
function gameLike({ context, choices }: DraftState): ColumnFacts | undefined {
  const { gameStarts } = context;
  const fitting = context.columns.filter((facts) => {
    if (facts.part !== undefined || facts.counts.size < 2 || !isInRuns(facts, 8)) return false;
    const read = choices.chosen.find((choice) => choice.facts === facts)?.column;
    const named = facts.numberShare <= 0.5 && (read === undefined || read === 'defense');
    const { starts } = runsOf(facts);
    return (named || read === 'week') && [...gameStarts].every((start) => starts.has(start));
  });
  const rank = (facts: ColumnFacts) => (facts.numberShare > 0.5 ? 1 : 0);
  return fitting.sort((left, right) => rank(left) - rank(right) || (left.header < right.header ? -1 : 1))[0];
}

/** How a snap ended tells run from pass. */
function kindFromResult({ countsOf }: DraftState, drafts: readonly ColumnDraft[]): ColumnDraft[] {
  const result = drafts.find((draft) => draft.column === 'result');
  const facts = result?.reads[0];
  if (result === undefined || facts === undefined) return [];
  const words: Record<string, string> = {};
  for (const code of countsOf(facts).keys()) {
    const kind = kindAfter(guessWord('result', code)?.word);
    words[code] = kind ?? 'not charted';
  }
  if (!Object.values(words).includes('run') || !Object.values(words).includes('pass')) return [];
  const { header } = result;
  const why = 'no column says run or pass, and the result does';
  return [
    {
      column: 'play_kind',
      header,
      source: { header, words },
      confidence: 0.7,
      why,
      reads: [facts],
      questions: [],
      nothing: [],
      noSnaps: [],
    },
  ];
}

function kindAfter(result: string | undefined): string | undefined {
  switch (result) {
    case 'rush':
      return 'run';
    case 'scramble':
      return 'scramble';
    case 'complete':
    case 'incomplete':
    case 'sack':
    case 'interception':
    case 'throwaway':
      return 'pass';
    default:
      return undefined;
  }
}
