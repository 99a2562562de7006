import * as z from 'zod';
import { ANSWERS } from '../game/answers.ts';
import { FAMILIES } from '../game/families.ts';
import type { Review } from '../pressure/review/review.ts';
import { foundWords } from './saved-json.ts';

/**
 * Where a changed review.json is no review any more, in words such as `grades.calls[0].snaps: "12" is no number`; null
 * when every key is there and of its kind.
 */
export function reviewFault(found: unknown): string | null {
  const issue = reviewShape.safeParse(found).error?.issues[0];
  if (!issue) return null;
  return `${pathWords(issue.path)}: ${valueAt(found, issue.path)} cannot stand there`;
}

const count = z.number().int().min(0);
const share = z.object({
  count: z.number().min(0),
  trials: z.number().min(0),
  estimate: z.number().min(0).max(1).nullable(),
  low: z.number(),
  high: z.number(),
});
const target = z.custom<Review['counts'][number]['target']>((value) => typeof value === 'string');

const countRange = z.object({ low: z.number(), high: z.number(), hit: z.boolean(), chance: z.number().min(0) });
const countCheck = z.object({
  target,
  situation: z.string(),
  name: z.string(),
  snaps: count,
  came: count,
  expected: z.number(),
  outer: countRange,
  inner: countRange,
});
const rangeHits = z.object({
  level: z.number(),
  hits: share,
  expected: z.number().nullable(),
  width: z.number().nullable(),
});

const targetReview = z.object({
  target,
  snaps: count,
  model: z.number(),
  plainRate: z.number(),
  rawCell: z.number(),
  difference: z.number(),
  standardError: z.number().nullable(),
  pairs: z.array(z.tuple([z.number().min(0).max(1), z.union([z.literal(0), z.literal(1)])])),
});
const tell = z.object({
  description: z.string(),
  target,
  follows: z.string(),
  expected: z.number(),
  film: share,
  planWith: z.number(),
  game: share,
  verdict: z.enum(['held', 'died', 'too few', 'not seen']),
});

const grade = z.object({
  name: z.string(),
  snaps: count,
  held: share,
  expected: z.number(),
  saved: z.number(),
  low: z.number(),
  high: z.number(),
  overExpectation: z.number(),
  standing: z.enum(['too few', 'within the usual spread', 'above the usual spread', 'below the usual spread']),
});

const gameFit = z.object({
  snaps: z.array(
    z.object({
      row: count,
      snap: count.nullable(),
      call: z.string().nullable(),
      family: z.enum(FAMILIES),
      mark: z.enum(['right', 'neutral', 'wrong', 'open']),
      rules: z.array(z.string()),
      held: z.boolean().nullable(),
    }),
  ),
  right: share,
  neutral: share,
  wrong: share,
  open: count,
  rules: z.array(
    z.object({
      rule: z.string(),
      says: z.enum(['right', 'wrong']),
      answers: z.array(
        z.object({ answer: z.enum(ANSWERS), held: count, snaps: count, otherHeld: count, otherSnaps: count }),
      ),
    }),
  ),
  notAsked: z.array(z.string()),
});

const archive = z.object({
  offenses: z.array(
    z.object({
      offense: z.string(),
      games: count,
      snaps: count,
      style: z.number().nullable(),
      yards: z.number().nullable(),
    }),
  ),
  offenseGames: count,
  snaps: count,
  ownGames: z.number().nullable(),
  ownYards: z.number().nullable(),
  uses: z.array(
    z.object({
      target,
      games: count,
      ownShare: z.number().min(0).max(1).nullable(),
    }),
  ),
  level: z.string(),
});

const reviewShape: z.ZodType<Review> = z.object({
  schema: z.literal('pressure-plan.review/2'),
  version: z.string(),
  week: z.string(),
  opponent: z.string(),
  us: z.string(),
  date: z.string(),
  invented: z.boolean(),
  sunday: z.enum(['report.json', 'report.json of other inputs', 'worked out again']),
  gameSnaps: count,
  seenBefore: z.array(z.string()),
  scores: z.array(targetReview),
  counts: z.array(countCheck),
  ranges: z.object({ outer: rangeHits, inner: rangeHits }),
  tells: z.array(tell),
  grades: z.object({ ungraded: count, calls: z.array(grade), families: z.array(grade), total: grade }).nullable(),
  guesses: z.object({ read: count, blind: share, fromPath: share }).nullable(),
  fit: gameFit.nullable().optional(),
  archive,
});

function pathWords(path: readonly PropertyKey[]): string {
  return path.map((key, i) => (typeof key === 'number' ? `[${key}]` : `${i > 0 ? '.' : ''}${String(key)}`)).join('');
}

function valueAt(found: unknown, path: readonly PropertyKey[]): string {
  const value = path.reduce<unknown>((holder, key) => (holder as Record<PropertyKey, unknown> | null)?.[key], found);
  return foundWords(value);
}
