import { readdir } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import type { Review } from '../pressure/review/review.ts';
import { isGameSheet } from './read-game.ts';
import { readSaved, type SavedJson, type UnusableJson } from './saved-json.ts';
import { earlierWeeks } from './week-order.ts';

/** What the season's earlier weeks left behind. */
export interface EarlierReviews {
  /** In the order of the weeks. */
  readonly reviews: readonly Review[];
  /** Weeks with a charted game and no review that can be used. */
  readonly notReviewed: readonly string[];
  /** Why a review that is there cannot be used, and what to do. */
  readonly problems: readonly string[];
}

/** Reads out/review.json of every earlier week of the season. */
export async function earlierReviews(weekFolder: string): Promise<EarlierReviews> {
  const week = resolve(weekFolder);
  const season = dirname(week);
  const names = await readdir(season).catch(() => [] as string[]);
  const gathered: Gathered = { reviews: [], notReviewed: [], problems: [], seals: new Map() };
  for (const name of earlierWeeks(names, basename(week))) {
    const shown = join(weekFolder, '..', name);
    const found = await readReview(shown);
    const problem = await problemOf(found, { name, gathered });
    if (problem !== null) gathered.problems.push(`${problem}. To write it anew: pressure-plan review ${shown}`);
    if (found.kind === 'sound' && problem === null) take(found, name, gathered);
    else if (await wasCharted(join(season, name))) gathered.notReviewed.push(name);
  }
  const { seals: _, ...reviews } = gathered;
  return reviews;
}

interface Gathered {
  readonly reviews: Review[];
  readonly notReviewed: string[];
  readonly problems: string[];
  /** The week of every seal met, to know a copy by. */
  readonly seals: Map<string, string>;
}

function readReview(shown: string): Promise<SavedJson<Review>> {
  const file = join(shown, 'out', 'review.json');
  return readSaved<Review>({ path: file, shown: file, schema: 'pressure-plan.review/1' });
}

function take({ value, seal }: SavedJson<Review> & { readonly kind: 'sound' }, name: string, to: Gathered): void {
  const { seal: _, ...review } = value as Review & { readonly seal: unknown };
  to.reviews.push({ ...review, week: name });
  to.seals.set(seal.content, name);
}

interface WeekSoFar {
  readonly name: string;
  readonly gathered: Gathered;
}

async function problemOf(found: SavedJson<Review>, { name, gathered }: WeekSoFar): Promise<string | null> {
  if (found.kind === 'absent') return null;
  if (found.kind === 'unusable') return withPlace(found);
  const first = gathered.seals.get(found.seal.content);
  return first === undefined ? null : `out/review.json of ${name} is a copy of that of ${first}`;
}

async function withPlace({ problem, changed }: UnusableJson): Promise<string> {
  if (!changed) return problem;
  const { reviewFault } = await import('./review-shape.ts');
  const fault = reviewFault(changed);
  return fault === null ? problem : `${problem}, at ${fault}`;
}

async function wasCharted(folder: string): Promise<boolean> {
  const entries = await readdir(folder).catch(() => [] as string[]);
  return entries.some(isGameSheet);
}
