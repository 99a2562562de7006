import { createInterface } from 'node:readline/promises';
import type { Question } from '../ingest/adopt/question.ts';
import type { Terminal } from './terminal.ts';

/** Puts one question and gives the answer; undefined when it is passed over, or when nobody is there any more. */
export type Ask = (question: Question) => Promise<string | undefined>;

/** Somebody to ask, and how to let him go. */
export interface Asker {
  readonly ask: Ask;
  readonly close: () => void;
}

/** Asks on the terminal. An empty line takes the guess; without a guess it passes the question over. */
export function terminalAsker(terminal: Terminal): Asker {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  let open = true;
  lines.on('close', () => {
    open = false;
  });
  const ask: Ask = async ({ text, choices, guess }) => {
    if (!open) return undefined;
    terminal.note(`\n${text}`);
    if (choices.length > 0) terminal.note(`  ${choices.join(', ')}`);
    const prompt = guess === undefined ? '  (empty: leave it open) > ' : `  (empty: ${guess}) > `;
    const answer = await lines.question(prompt).catch(() => '');
    return answer.trim() === '' ? guess : answer.trim();
  };
  return { ask, close: () => lines.close() };
}

/** Whether somebody sits at the terminal: both what is typed and what is said go there. */
export function somebodyThere(): boolean {
  return process.stdin.isTTY === true && process.stderr.isTTY === true;
}
