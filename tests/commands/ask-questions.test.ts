import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { answeredDraft } from '../../src/commands/answered-draft.ts';
import { type Asker, terminalAsker } from '../../src/commands/ask-questions.ts';
import type { Terminal } from '../../src/commands/terminal.ts';
import type { DraftRequest } from '../../src/ingest/adopt/draft-state.ts';
import { findTable } from '../../src/ingest/adopt/found-table.ts';
import type { Question } from '../../src/ingest/adopt/question.ts';
import { INVENTED_COLUMNS, type InventedColumn, inventSnaps, sheetOf } from '../ingest/adopt/invented-sheet.ts';

/** A terminal at which somebody typed these lines; what was said to him is kept. */
function typing(lines: string) {
  const [input, output, notes] = [new PassThrough(), new PassThrough(), [] as string[]];
  const note = (line: string) => void notes.push(line);
  const terminal: Terminal = { out: () => undefined, note, progress: () => undefined, today: '2026-11-25' };
  output.resume();
  input.end(lines);
  return { terminal, notes, asker: terminalAsker(terminal, { input, output }) };
}

const HASH: Question = { key: 'H', text: 'What is H?', choices: ['hash', 'not read'], guess: undefined };
const GAME: Question = { key: 'all/game', text: 'Which game?', choices: [], guess: 'opponent' };

describe('asking at a terminal', () => {
  it('takes a choice whatever its case, any text where nothing is offered, and the guess for an empty line', async () => {
    const { asker } = typing('HASH\nweek 3\n\n');
    expect([await asker.ask(HASH), await asker.ask(GAME), await asker.ask(GAME)]).toEqual([
      ...['HASH', 'week 3', 'opponent'],
    ]);
  });

  it('puts a question three times at most, and says each time that the answer is none of the choices', async () => {
    const { asker, notes } = typing('a\nb\nc\nhash\n');
    expect(await asker.ask(HASH)).toBeUndefined();
    expect(notes.filter((line) => line.includes('is none of them'))).toHaveLength(3);
    expect(await asker.ask(HASH)).toBe('hash');
  });

  it('passes every question over once the input has ended', async () => {
    const { asker } = typing('week 3\n');
    expect([await asker.ask(GAME), await asker.ask(GAME), await asker.ask(HASH)]).toEqual([
      'week 3',
      undefined,
      undefined,
    ]);
    expect(asker.brokeOff()).toBe(false);
  });
});

describe('a draft finished by answers', () => {
  const SNAPS = inventSnaps({ games: 1 });
  const columns = INVENTED_COLUMNS.slice(1).map(
    ([header, cell]): InventedColumn =>
      header === 'R/P' ? ['zz', ({ kind }) => (kind === 'R' ? 'hob' : 'nix')] : [header, cell],
  );
  const request: DraftRequest = {
    table: findTable(
      sheetOf(
        SNAPS,
        columns.filter(([header]) => header !== 'Outcome'),
      ),
    ),
    kind: 'opponent',
    gameName: 'opponent',
    answers: new Map(),
  };

  it('asks what an answer brings up, and ends when nothing is open', async () => {
    const asked: string[] = [];
    const replies: Readonly<Record<string, string>> = {
      'find/play_kind': 'zz',
      'play_kind/hob': 'run',
      'play_kind/nix': 'pass',
    };
    const asker: Asker = {
      ask: async ({ key, guess }) => {
        asked.push(key);
        return replies[key] ?? guess;
      },
      brokeOff: () => false,
      close: () => undefined,
    };
    const draft = await answeredDraft(request, typing('').terminal, () => asker);
    expect(asked).toEqual(expect.arrayContaining(['find/play_kind', 'play_kind/hob', 'play_kind/nix', 'all/game']));
    expect(asked).toHaveLength(new Set(asked).size);
    expect(draft.profile.columns?.play_kind).toMatchObject({ header: 'zz', words: { hob: 'run', nix: 'pass' } });
    expect(draft.questions).toEqual([]);
  });

  it('keeps questions open that nobody answered, and asks nobody where nobody sits', async () => {
    const { terminal, asker } = typing('');
    const open = await answeredDraft(request, terminal, () => asker);
    const alone = await answeredDraft(request, terminal, () => undefined);
    expect(open.questions.map(({ key }) => key)).toEqual(alone.questions.map(({ key }) => key));
    expect(open.questions.length).toBeGreaterThan(0);
  });

  it('is not made when he breaks off, and the terminal is given back', async () => {
    let closed = false;
    const close = () => {
      closed = true;
    };
    const asker: Asker = { ask: async () => undefined, brokeOff: () => true, close };
    await expect(answeredDraft(request, typing('').terminal, () => asker)).rejects.toThrow('nothing was written');
    expect(closed).toBe(true);
  });
});
