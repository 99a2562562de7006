import { CommandProblem } from './exit-code.ts';

/** The seed given on the command line. @throws CommandProblem unless it is a whole number of at least 0 */
export function requireSeed(text: string): number {
  if (/^\d{1,15}$/.test(text)) return Number(text);
  throw new CommandProblem('usage', `--seed takes a whole number, got "${text}"`);
}
