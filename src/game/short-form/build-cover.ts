import type { Call } from '../call-library.ts';
import type { CoverJob } from '../cover-jobs.ts';
import { NOBODY } from './lay-cover.ts';
import { readCoverWords } from './man-words.ts';
import type { WrittenCall } from './written-defense.ts';

type FullCover = Pick<Call['cover'][number], 'role' | 'job'> & Partial<Call['cover'][number]>;

/** Men in coverage, and the jobs for which no man named was left. */
export interface CoverResult {
  readonly cover: readonly FullCover[];
  readonly open: readonly { readonly job: CoverJob; readonly men: readonly string[] }[];
}

/**
 * Gives each job its man: of those named the first who does not rush and has no job yet, jobs in the order written. A
 * list in full stays as it is, and a job of nobody is left out.
 *
 * @param busy - role ids of the men who rush
 */
export function buildCover(written: NonNullable<WrittenCall['cover']>, busy: readonly string[]): CoverResult {
  if (Array.isArray(written)) return { cover: written, open: [] };
  const jobs = (Object.entries(written) as [CoverJob, string | string[]][]).filter(([, words]) => words !== NOBODY);
  const taken = new Set(busy);
  const cover: FullCover[] = [];
  const open: { job: CoverJob; men: string[] }[] = [];
  for (const [job, words] of jobs) {
    const men = [words].flat().map(readCoverWords);
    const man = men.find(({ role }) => !taken.has(role));
    if (man) cover.push({ ...man, job });
    else open.push({ job, men: men.map(({ role }) => role) });
    taken.add(man?.role ?? '');
  }
  return { cover, open };
}
