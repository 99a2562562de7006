import type { Answer } from '../../../game/vocabulary.ts';

/** What the offense does, as the subject of a sentence: "their screens". */
export const ANSWER_SUBJECTS: Readonly<Record<Answer, string>> = {
  run: 'their runs',
  quarterback_run: 'their quarterback runs',
  screen: 'their screens',
  quick: 'their quick game',
  dropback: 'their dropbacks',
  deep_shot: 'their deep shots',
  movement: 'their movement passes',
};

/** A sentence from its middle: first letter large, full stop at the end. */
export function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
