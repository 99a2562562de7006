import { createInterface } from 'node:readline/promises';
import { answerKey, type Question } from '../ingest/adopt/question.ts';
import type { Terminal } from './terminal.ts';

/** Puts one question and gives the answer; undefined when it is passed over, or when nobody is there any more. */
export type Ask = (question: Question) => Promise<string | undefined>;

/** Somebody to ask, and how to let him go. */
export interface Asker {
  readonly ask: Ask;
  /** Whether he broke off (Ctrl-C) instead of answering. */
  readonly brokeOff: () => boolean;
  /** Gives the terminal back; to be called when the last question was answered. */
  readonly close: () => void;
}

/** Where is typed, and where the prompt goes. */
export interface AskerStreams {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
}

/** How often one question is put before it is passed over; judgment. */
const MOST_TRIES = 3;

/**
 * Asks on a terminal. An empty line takes the guess; without a guess it passes the question over. Once the input has
 * ended (Ctrl-D, Ctrl-C) every further question is passed over.
 */
export function terminalAsker(terminal: Terminal, { input, output }: AskerStreams): Asker {
  const lines = createInterface({ input, output });
  // Lines typed before their question are kept; the end of the input ends them.
  const typed = lines[Symbol.asyncIterator]();
  const state = { over: false, broken: false };
  lines.once('close', () => {
    state.over = true;
  });
  lines.on('SIGINT', () => {
    state.broken = true;
    lines.close();
  });
  const read = async (prompt: string): Promise<string | undefined> => {
    if (!state.over) lines.setPrompt(prompt);
    if (!state.over) lines.prompt();
    const line = await typed.next();
    return line.done === true ? undefined : line.value;
  };
  return {
    ask: (question) => askOne(question, read, terminal),
    brokeOff: () => state.broken,
    close: () => lines.close(),
  };
}

async function askOne(
  question: Question,
  read: (prompt: string) => Promise<string | undefined>,
  terminal: Terminal,
): Promise<string | undefined> {
  terminal.note(`\n${question.text}`);
  if (question.choices.length > 0) terminal.note(`  ${question.choices.join(', ')}`);
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const answer = (await read(promptOf(question)))?.trim();
    if (answer === undefined) return undefined;
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

/** Whoever sits at the process's terminal: both what is typed and what is said must go there. Undefined for nobody. */
export function somebodyThere(terminal: Terminal): Asker | undefined {
  if (process.stdin.isTTY !== true || process.stderr.isTTY !== true) return undefined;
  return terminalAsker(terminal, { input: process.stdin, output: process.stderr });
}
