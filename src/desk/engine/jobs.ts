import { WHO_DECIDES } from '../../report/practice/contact-caution.ts';
import { shortageWords } from '../../report/practice/shortage-words.ts';
import { type AdoptedSheet, adoptSheet, type SheetToAdopt } from '../../season/adopt-sheet.ts';
import { halftimePages } from '../../season/halftime-pages.ts';
import { type FileSet, memoryFiles } from '../../season/memory-files.ts';
import { mondayPages } from '../../season/monday-pages.ts';
import { practicePages } from '../../season/practice-pages.ts';
import type { Listener, OutputFile, Platform, SeasonWeek } from '../../season/store.ts';
import { sundayPages } from '../../season/sunday-pages.ts';
import { lookIntoWeek, type WeekLook, type WeekRequest } from '../../season/week-look.ts';
import { callsJob } from './calls-job.ts';
import { lookJob } from './look-job.ts';

/** One week of a season, with its files handed over. */
export interface WeekFiles {
  readonly files: FileSet;
  /** The season folder's name. */
  readonly season: string;
  readonly week: string;
}

/** Pages made, named as they are written into the week's out folder, and what the coach should read first. */
export interface PagesMade {
  readonly pages: readonly OutputFile[];
  readonly lines: readonly string[];
}

/** What a job is given beside its request. */
export interface Workplace {
  readonly platform: Platform;
  readonly listener: Listener;
  readonly pageScript: string;
}

/** Sunday's report, call sheet and tip sheet. */
export async function sundayJob(request: WeekFiles, place: Workplace): Promise<PagesMade> {
  const { week, plan, pages, problems } = await sundayPages(weekOf(request, place), place);
  const kept = week.faults === 0 ? [] : [`${week.faults} rows kept out of the numbers; rejected.csv says why`];
  return { pages, lines: [...kept, ...plan.film.problems, ...problems] };
}

/** The practice script and scout cards. */
export async function practiceJob(request: WeekFiles, place: Workplace): Promise<PagesMade> {
  const { script, pages } = await practicePages(weekOf(request, place), place.listener);
  return { pages, lines: [...shortageWords(script), WHO_DECIDES] };
}

/** The plan brought up to date with tonight's snaps. */
export async function halftimeJob(request: WeekFiles, place: Workplace): Promise<PagesMade> {
  const { update, faults, pages } = await halftimePages(weekOf(request, place), place.listener);
  const kept = faults === 0 ? [] : [`${faults} rows kept out of the numbers`];
  return { pages, lines: [`${update.liveSnaps} snaps tonight`, ...kept] };
}

/** Monday's review and the season page. */
export async function mondayJob(request: WeekFiles, place: Workplace): Promise<PagesMade> {
  const { faults, pages } = await mondayPages(weekOf(request, place), place.listener);
  return { pages, lines: faults === 0 ? [] : [`${faults} rows kept out of the numbers`] };
}

function weekOf({ files, season, week }: WeekFiles, { platform }: Workplace): SeasonWeek {
  return { files: memoryFiles(files, season), platform, week };
}

/** Every job by its name. */
export const JOBS = {
  /** {@link sundayJob} */
  sunday: sundayJob,
  /** {@link practiceJob} */
  practice: practiceJob,
  /** {@link halftimeJob} */
  halftime: halftimeJob,
  /** {@link adoptSheet} */
  adopt: (request: SheetToAdopt): Promise<AdoptedSheet> => adoptSheet(request),
  /** {@link callsJob} */
  calls: callsJob,
  /** {@link lookIntoWeek} */
  week: async (request: WeekRequest): Promise<WeekLook> => lookIntoWeek(request),
  /** {@link lookJob} */
  look: lookJob,
  /** {@link mondayJob} */
  monday: mondayJob,
} as const;

/** The name of a job. */
export type JobName = keyof typeof JOBS;
/** What a job is asked. */
export type JobRequest<Name extends JobName> = Parameters<(typeof JOBS)[Name]>[0];
/** What a job gives. */
export type JobResult<Name extends JobName> = Awaited<ReturnType<(typeof JOBS)[Name]>>;
