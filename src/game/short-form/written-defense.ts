import * as z from 'zod';
import { callLibrarySchema, coverMan, fullCall, MOST_CALLS, rusher } from '../call-library.ts';
import { COVER_JOBS } from '../cover-jobs.ts';
import { FAMILIES } from '../families.ts';

const manWords = z.string().min(1);

/** One name, or several of which the later ones are laid over the earlier. */
const names = z.union([z.string(), z.array(z.string()).min(1)]);

/** Parts of a path; a call may say them itself. */
const pathParts = {
  sent_from: fullCall.shape.sent_from.unwrap().optional(),
  send: z.array(manWords).optional().describe('who rushes besides our linemen: a role, with a lane where it differs'),
  drop: z.array(manWords).optional().describe('linemen who do not rush here'),
  rush: z
    .array(z.union([rusher, manWords]))
    .max(8)
    .optional()
    .describe('everyone who rushes, instead of send; in full, or in words such as "mike near_A loop"'),
};

/** Parts of a coverage; a call may say them itself. */
const coverageParts = {
  family: z
    .enum(FAMILIES)
    .optional()
    .describe(fullCall.shape.family.description ?? ''),
  shell_shown: fullCall.shape.shell_shown.unwrap().optional(),
  cover: z
    .union([
      z.array(coverMan).max(8),
      z.partialRecord(z.enum(COVER_JOBS), z.union([manWords, z.array(manWords).min(1)])),
    ])
    .optional()
    .describe('each job and who has it; of several men the first who does not rush and has no job yet'),
  late: manWords.optional().describe('who joins when the back stays in, through the first lane left open near'),
  given: fullCall.shape.given.unwrap().optional(),
  adjust: fullCall.shape.adjust.unwrap().optional(),
  reps: fullCall.shape.reps.optional(),
};

/** Parts of either; the call decides, then the coverage, then the path. */
const eitherParts = {
  rotation: fullCall.shape.rotation.unwrap().optional(),
  edges_peel: z.boolean().optional().describe('the widest rusher of each side takes a back who releases wide there'),
};

const path = z.strictObject({
  like: names.optional().describe('another path, or several; only what differs is written here'),
  ...pathParts,
  ...eitherParts,
});

const coverage = z.strictObject({
  like: names.optional().describe('another coverage, or several; only what differs is written here'),
  ...coverageParts,
  ...eitherParts,
});

const writtenCall = z.strictObject({
  name: fullCall.shape.name,
  like: names.optional().describe('another call, or several; only what differs is written here'),
  path: fullCall.shape.path.optional(),
  coverage: fullCall.shape.coverage.optional(),
  ...pathParts,
  ...coverageParts,
  ...eitherParts,
  installed: fullCall.shape.installed.unwrap().optional(),
  rules: fullCall.shape.rules.unwrap().optional(),
});

/** What may stand in defense.yaml, before paths and coverages are put together. */
export const writtenDefense = z.strictObject({
  ...callLibrarySchema.shape,
  trade: z
    .array(z.array(z.string()).length(2))
    .default([])
    .describe('pairs of men who trade places when a call is sent from the boundary'),
  paths: z.record(z.string(), path).default({}).describe('rush paths by name'),
  coverages: z.record(z.string(), coverage).default({}).describe('coverages by name'),
  calls: z.array(writtenCall).min(1).max(MOST_CALLS).describe('every call we teach: a path with a coverage'),
});

/** A path as written. */
export type WrittenPath = z.output<typeof path>;
/** A coverage as written. */
export type WrittenCoverage = z.output<typeof coverage>;
/** A call as written: in full, or a path with a coverage and what differs. */
export type WrittenCall = z.output<typeof writtenCall>;
/** A defense.yaml as written. */
export type WrittenDefense = z.output<typeof writtenDefense>;
