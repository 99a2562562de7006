import * as z from 'zod';
import { libraryProblems } from './call-library-checks.ts';
import { COVER_JOBS } from './cover-jobs.ts';
import { FAMILIES } from './families.ts';
import { fitRuleProblems } from './fit-rule-checks.ts';
import { fitRulesSchema } from './fit-rules.ts';
import { ROTATIONS } from './vocabulary.ts';

/** Levels of play that change hash marks, running speed and how far open data may be trusted. */
export const LEVELS = ['high_school', 'college', 'pro'] as const;
/** One word of {@link LEVELS}. */
export type Level = (typeof LEVELS)[number];

/** Rush lanes from the ball outward; `near` is the side the call is sent from, `far` the other. */
export const LANES = ['far_D', 'far_C', 'far_B', 'far_A', 'near_A', 'near_B', 'near_C', 'near_D'] as const;
/** One word of {@link LANES}. */
export type Lane = (typeof LANES)[number];

/** How a rusher gets to his lane: straight at the snap, around another rusher, or only when the back stays to block. */
export const RUSH_WAYS = ['straight', 'loop', 'late_if_back_blocks'] as const;

/** What a call may declare as given, so that soundness does not hold it against the call. */
export const GIVEN = [
  'flat_near',
  'flat_far',
  'deep_middle',
  'quarterback_run',
  'back',
  'contain_near',
  'contain_far',
  'inside_near',
  'inside_far',
  'trips',
  'empty',
  'two_backs',
  'fast_motion',
  'heavy',
] as const;
/** One word of {@link GIVEN}. */
export type GivenUp = (typeof GIVEN)[number];

/** Which side a call is sent from; resolved on each snap from hash, strength and back. */
export const SENT_FROM = ['field', 'boundary', 'strength', 'weak', 'back', 'away_from_back', 'either'] as const;

/** The shell shown before the snap, by deep safeties. */
export const SHELLS = ['none_high', 'one_high', 'two_high', 'three_high'] as const;

const lateral = z.number().min(-27).max(27).describe('yards from the ball; plus is toward the field side');
const depth = z.number().min(0).max(30).describe('yards off the ball');
const spot = z.strictObject({ lateral, depth });

const role = z.strictObject({
  id: z
    .string()
    .regex(/^[a-z][a-z0-9_]*$/)
    .describe('short name used in the calls'),
  title: z.string().min(1).describe('the word the staff says'),
  group: z.enum(['line', 'linebacker', 'secondary']).describe('decides default speed and what he can be asked'),
  lateral,
  depth,
  speed: z.enum(['slow', 'average', 'fast']).default('average').describe('against the usual man of his group'),
  cannot: z
    .array(z.enum(['rush', 'drop', 'man', 'deep', 'peel', 'spy']))
    .default([])
    .describe('jobs he is not asked to do'),
});

/** A man who rushes, as he is written in full. */
export const rusher = z.strictObject({
  role: z.string().describe('role id'),
  lane: z.enum(LANES).describe('lane he ends in; near is the side the call is sent from'),
  way: z.enum(RUSH_WAYS).default('straight').describe('straight, loop, or late_if_back_blocks (the add-on)'),
  peels: z.boolean().default(false).describe('takes the back who releases wide on his side'),
  from: spot.optional().describe('where he rushes from, when not his usual spot; plus lateral is the near side'),
});

/** A man in coverage, as he is written in full. */
export const coverMan = z.strictObject({
  role: z.string().describe('role id'),
  job: z.enum(COVER_JOBS).describe('his first responsibility'),
  next: z.enum(COVER_JOBS).optional().describe('his responsibility after a peel or an add in front of him'),
  adds: z.boolean().default(false).describe('joins the rush when his man stays in to block'),
});

/** More calls than any staff teaches; judgment. */
export const MOST_CALLS = 300;

const adjustment = z.string().min(1).describe('what the call does then, in words');

const adjustments = z.strictObject({
  trips: adjustment.optional(),
  empty: adjustment.optional(),
  two_backs: adjustment.optional(),
  fast_motion: adjustment.optional(),
  heavy: adjustment.optional(),
});

/** A call as it is written in full, and as the engine sees it. */
export const fullCall = z.strictObject({
  name: z.string().min(1).describe('the name called on the field'),
  path: z.string().min(1).describe('name of the rush path, shared by calls that look alike'),
  family: z.enum(FAMILIES).describe('kind of pressure'),
  coverage: z.string().min(1).describe('name of the coverage behind it'),
  rotation: z.enum(ROTATIONS).default('none').describe('which way the shell turns relative to the rush'),
  sent_from: z.enum(SENT_FROM).default('either').describe('side it is sent from'),
  shell_shown: z.enum(SHELLS).default('three_high').describe('shell held before the snap'),
  rush: z.array(rusher).min(3).max(8).describe('who rushes which lane'),
  cover: z.array(coverMan).min(3).max(8).describe('who covers what'),
  given: z.array(z.enum(GIVEN)).default([]).describe('what the call gives up on purpose'),
  adjust: adjustments
    .default({})
    .describe('what the call does against each look, in words; a missing one is a soundness fault unless given'),
  reps: z
    .strictObject({
      first: z.number().int().min(0).max(300).describe('repetitions to install it the first time'),
      weekly: z.number().int().min(0).max(100).describe('repetitions each week to keep it'),
    })
    .describe('practice cost'),
  installed: z.boolean().default(true).describe('already taught this season'),
  rules: z.array(z.string()).default([]).describe('coaching points printed with the call'),
});

/** Every call in full. */
export const fullCalls = z.array(fullCall).min(1).max(MOST_CALLS).describe('every call we teach');

/** Our roles and our calls in full, as the engine sees them. Problems name the call, the role and the rule. */
export const callLibrarySchema = z
  .strictObject({
    level: z.enum(LEVELS).default('high_school').describe('level of play'),
    roles: z.array(role).length(11).describe('our eleven'),
    calls: fullCalls,
    rules: fitRulesSchema,
  })
  .superRefine((library, context) => {
    const problems = [...libraryProblems(library), ...fitRuleProblems(library.rules)];
    for (const { path, message } of problems) context.addIssue({ code: 'custom', path, message });
  });

/** Our roles and calls, as read from defense.yaml. */
export type CallLibrary = z.output<typeof callLibrarySchema>;
/** One call: a path with the coverage behind it and a rotation. */
export type Call = CallLibrary['calls'][number];
/** One of our eleven. */
export type Role = CallLibrary['roles'][number];
/** A kind of job a man can be asked to do, or not. */
export type Demand = Role['cannot'][number];
