import type { Family } from '../../game/vocabulary.ts';

/** A theory of coverage: its words and the families that teach it. */
export interface Theory {
  readonly words: string;
  readonly families: readonly Family[];
}

/**
 * The theories of which at least one call each is carried (common practice, no source). Hot keeps three deep but is
 * counted with zero: both send six and both are the answer to a protection that five cannot beat.
 */
export const THEORIES: readonly Theory[] = [
  { words: 'three-deep zone', families: ['three_under'] },
  { words: 'two-deep zone', families: ['four_under'] },
  { words: 'man-free', families: ['man_free', 'peel', 'peel_spy'] },
  { words: 'hot or zero', families: ['hot', 'zero', 'add_on'] },
];

/** Index into {@link THEORIES} of the theory a family teaches; -1 for the four-man base. */
export function theoryOf(family: Family): number {
  return THEORIES.findIndex(({ families }) => families.includes(family));
}
