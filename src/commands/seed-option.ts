import { UserProblem } from '../season/user-problem.ts';

/** The seed given on the command line. @throws UserProblem unless it is a whole number of at least 0 */
export function requireSeed(text: string): number {
  if (/^\d{1,15}$/.test(text)) return Number(text);
  throw new UserProblem('usage', `--seed takes a whole number, got "${text}"`);
}
