import type * as z from 'zod';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';
import { type Outcome, UNREADABLE } from './trial.ts';

/** Reads one settings file and holds the reader to a value or problems in words, each with a line of the file. */
export function tryYaml(text: string, schema: z.ZodType, file: string): Outcome {
  try {
    const reading = readYaml(text, schema, file);
    if (Object.hasOwn(Object.prototype, 'level') || Object.hasOwn(Object.prototype, 'x'))
      return { kind: 'bug', words: 'the prototype of all objects was changed' };
    if (reading.kind === 'value') return { kind: 'correct' };
    const words = reading.problems.map(describeProblem);
    const lines = text.split('\n').length;
    const outside = reading.problems.find(({ row }) => !(row >= 0 && row <= lines + 1));
    if (words.length === 0 || outside)
      return { kind: 'bug', words: `refused without words or at line ${outside?.row} of ${lines}` };
    const unreadable = words.find((line) => line.length > 3000 || UNREADABLE.test(line));
    if (unreadable !== undefined)
      return { kind: 'bug', words: `a line nobody can read: ${JSON.stringify(unreadable.slice(0, 300))}` };
    return { kind: 'refused', words: words.join('\n') };
  } catch (error) {
    return {
      kind: 'bug',
      words: error instanceof Error ? (error.stack ?? error.message).split('\n').slice(0, 6).join('\n') : String(error),
    };
  }
}
