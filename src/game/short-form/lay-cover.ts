import type { WrittenCall } from './written-defense.ts';

type Cover = WrittenCall['cover'];

/** Stands for the man of a job that nobody has. */
export const NOBODY = 'none';

/**
 * One coverage laid over another, job by job: its own jobs come first, so that their men are taken first. A list in full
 * replaces everything, and is replaced by everything.
 */
export function layCover(base: Cover, own: Cover): Cover {
  if (base === undefined || own === undefined || Array.isArray(base) || Array.isArray(own)) return own ?? base;
  const rest = Object.entries(base).filter(([job]) => !(job in own));
  return { ...own, ...Object.fromEntries(rest) };
}
