import type { Review } from '../pressure/review/review.ts';
import { isGameSheet } from './read-game.ts';
import { readSaved, type SavedJson } from './saved-json.ts';
import type { SeasonWeek } from './store.ts';
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
export async function earlierReviews(at: SeasonWeek): Promise<EarlierReviews> {
  const { files, week } = at;
  const names = (await files.list('').catch(() => [])).map(({ name }) => name);
  const gathered: Gathered = { reviews: [], notReviewed: [], problems: [], seals: new Map() };
  for (const name of earlierWeeks(names, week)) {
    const found = await readSaved<Review>({ path: `${name}/out/review.json`, schema: 'pressure-plan.review/4' }, at);
    const problem = problemOf(found, { name, gathered });
    if (problem !== null)
      gathered.problems.push(`${problem}. To write it again: pressure-plan review ${files.shown(name)}`);
    if (found.kind === 'sound' && problem === null) take(found, name, gathered);
    else if (await wasCharted(at, name)) gathered.notReviewed.push(name);
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

function take({ value, seal }: SavedJson<Review> & { readonly kind: 'sound' }, name: string, to: Gathered): void {
  const { seal: _, ...review } = value as Review & { readonly seal: unknown };
  to.reviews.push({ ...review, week: name });
  to.seals.set(seal.content, name);
}

interface WeekSoFar {
  readonly name: string;
  readonly gathered: Gathered;
}

function problemOf(found: SavedJson<Review>, { name, gathered }: WeekSoFar): string | null {
  if (found.kind === 'absent') return null;
  if (found.kind === 'unusable') return found.problem;
  const first = gathered.seals.get(found.seal.content);
  return first === undefined ? null : `out/review.json of ${name} is a copy of that of ${first}`;
}

async function wasCharted({ files }: SeasonWeek, week: string): Promise<boolean> {
  const entries = await files.list(week).catch(() => []);
  return entries.some(({ name }) => isGameSheet(name));
}
