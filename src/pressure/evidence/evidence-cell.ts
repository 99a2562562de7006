import { ANSWERS, FAMILIES } from '../../game/vocabulary.ts';

/** Families times answers: how many cells the evidence has. */
export const CELL_COUNT = FAMILIES.length * ANSWERS.length;

/** Place of a family's cell against an answer in every array by cell; both are indices into the vocabulary. */
export function cellIndex(family: number, answer: number): number {
  return family * ANSWERS.length + answer;
}
