import { benjaminiHochberg } from '../../stats/adjust.ts';
import type { ComparedCell } from './asked-of-both.ts';
import { type Sure, sureOf } from './sure.ts';

/** A share against the archive's offenses, and how sure it is that this opponent is unlike them. */
export interface Compared extends ComparedCell {
  /** `others.p` after correcting over everything looked at beside it (Benjamini-Hochberg); null without others. */
  readonly adjusted: number | null;
  /** `none` without others as well. */
  readonly sure: Sure;
}

/** Adds to a comparison what the correction over all of them makes of it. */
export type Correct = (cell: ComparedCell) => Compared;

/** The correction over some comparisons; those without others to compare with are not counted. */
export function correctedOver(cells: readonly ComparedCell[]): { readonly looked: number; readonly correct: Correct } {
  const looked = cells.flatMap((cell) => (cell.others === null ? [] : [{ cell, p: cell.others.p }]));
  const adjusted = benjaminiHochberg(looked.map(({ p }) => p));
  const known = new Map(looked.map(({ cell }, i) => [cell, adjusted[i] as number]));
  return {
    looked: looked.length,
    correct: (cell) => {
      const value = known.get(cell) ?? null;
      return { ...cell, adjusted: value, sure: value === null ? 'none' : sureOf(value) };
    },
  };
}
