import { createInterface } from 'node:readline/promises';
import { answerKey, type Question } from '../ingest/adopt/question.ts';
import type { Terminal } from './terminal.ts';

/** Puts one question and gives the answer; undefined when it is passed over, or when nobody is there any more. */
export type Ask = (question: Question) => Promise<string | undefined>;

/** Somebody to ask, and how to let him go. */
export interface Asker {
  readonly ask: Ask;
  /** Gives the terminal back; to be called when the last question was answered. */
  readonly close: () => void;
}

/** How often one question is put before it is passed over; judgement. */
const MOST_TRIES = 3;

/** Asks on the terminal. An empty line takes the guess; without a guess it passes the question over. */
export function terminalAsker(terminal: Terminal): Asker {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  let open = true;
  lines.on('close', () => {
    open = false;
  });
  const read = (prompt: string) => (open ? lines.question(prompt).catch(() => '') : Promise.resolve(''));
  return { ask: (question) => askOne(question, read, terminal), close: () => lines.close() };
}

async function askOne(
  question: Question,
  read: (prompt: string) => Promise<string>,
  terminal: Terminal,
): Promise<string | undefined> {
  terminal.note(`\n${question.text}`);
  if (question.choices.length > 0) terminal.note(`  ${question.choices.join(', ')}`);
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const answer = (await read(promptOf(question))).trim();
    if (answer === '') return question.guess;
    if (isChoice(answer, question.choices)) return answer;
    terminal.note(`  "${answer}" is none of them.`);
  }
  return undefined;
}

function promptOf({ guess }: Question): string {
  return guess === undefined ? '  (empty: leave it open) > ' : `  (empty: ${guess}) > `;
}

/** Any text where nothing is offered; otherwise one of what is. */
function isChoice(answer: string, choices: readonly string[]): boolean {
  return choices.length === 0 || choices.some((choice) => answerKey(choice) === answerKey(answer));
}

/** Whether somebody sits at the terminal: both what is typed and what is said go there. */
export function somebodyThere(): boolean {
  return process.stdin.isTTY === true && process.stderr.isTTY === true;
}
