/**
 * Something the sheet does not say by itself. `key` is what an answer is filed under, `choices` what may be answered
 * (empty: any text), `guess` what holds until somebody answers (undefined: nothing does).
 */
export interface Question {
  readonly key: string;
  readonly text: string;
  readonly choices: readonly string[];
  readonly guess: string | undefined;
}

/** The answer that leaves a column of his, or a code, unread. */
export const NOT_READ = 'not read';

/** The coach's answers by the key of their question. */
export type Answers = ReadonlyMap<string, string>;

/** How a key is compared: white space and case do not matter. */
export function answerKey(text: string): string {
  return text.trim().replace(/\s+/g, ' ').toLowerCase();
}

/** The answer filed under a key, if there is one. */
export function answerOf(answers: Answers, key: string): string | undefined {
  return answers.get(answerKey(key))?.trim();
}
