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
  const restart = restartsOf(state);
  if (restart !== undefined) return { ...base, ...restartDraft(state, restart, answer) };
  const value = answer ?? request.gameName;
  const text = `No column names the game (${definitionOf('game').meaning}). Which game is this sheet?`;
  const question: Question = { key, text, choices: [], guess: value };
  const why = 'no column names a game';
  return { ...base, header: '', source: { value }, confidence: 0.5, why, reads: [], questions: [question] };
}

/** A number that climbs through a game and starts again, and how many games that makes. */
interface Restart {
  readonly facts: ColumnFacts;
  readonly games: number;
  /** The first rows of the games after the first, among the snaps. */
  readonly starts: readonly number[];
}

/** A game has at least so many snaps of an offense, on average; judgment. */
const SNAPS_IN_GAME = 8;

/** The snap number or, where none starts again, the quarter; undefined when nothing does. */
function restartsOf({ choices }: DraftState): Restart | undefined {
  for (const wanted of ['snap', 'quarter'] as const) {
    const facts = choices.chosen.find(({ column }) => column === wanted)?.facts;
    if (facts === undefined) continue;
    const starts = [...facts.numbers.keys()].filter(
      (i) => (facts.numbers[i] ?? 0) < (facts.numbers[i - 1] ?? Number.NaN),
    );
    if (starts.length > 0 && facts.cells.length / (starts.length + 1) >= SNAPS_IN_GAME)
      return { facts, games: starts.length + 1, starts };
  }
  return undefined;
}

/** One name for every start, as answered; a single name is the name of all. */
function restartDraft({ nameOf }: DraftState, { facts, games, starts }: Restart, answer: string | undefined) {
  const header = nameOf(facts);
  const names = (answer ?? '')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  const isOne = names.length === 1;
  const named = Array.from({ length: games }, (_, i) => names[i] ?? `game ${i + 1}`);
  const rows = starts
    .slice(0, 5)
    .map((start) => start + 1)
    .join(', ');
  const text = `"${header}" starts again at snap ${rows} of the sheet, so it holds ${games} games. What are they called? Give the names in order with commas between them; one name alone makes it one game.`;
  const question: Question = { key: 'all/game', text, choices: [], guess: named.join(', ') };
  const source = isOne ? { value: names[0] ?? '' } : { restarts: { header, names: named } };
  const why = isOne ? 'you said so' : `"${header}" starts again ${games === 2 ? 'once' : `${games - 1} times`}`;
  return { header: isOne ? '' : header, source, confidence: isOne ? 1 : 0.7, why, reads: [], questions: [question] };
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
