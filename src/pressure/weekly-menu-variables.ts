import type { MenuProblem } from './weekly-menu-problem.ts';

/** Name of the 0-1 variable "candidate c is carried". */
export const carry = (c: number): string => `x${c}`;
/** Name of the share of situation s's snaps on which candidate c is called. */
export const mixed = (c: number, s: number): string => `m${c}_${s}`;
/** Name of situation s's worth against the worst answer, above the floor. */
export const worst = (s: number): string => `t${s}`;

/** Indices of the candidates that send five or more. */
export function pressures(problem: MenuProblem): number[] {
  return problem.candidates.flatMap(({ call }, c) => (call.family === 'base' ? [] : [c]));
}
