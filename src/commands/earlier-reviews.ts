import { readdir, readFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import type { Review } from '../pressure/review/review.ts';
import { isGameSheet } from './read-game.ts';
import { VERSION } from './version.ts';
import { earlierWeeks } from './week-order.ts';

/** What the season's earlier weeks left behind. */
export interface EarlierReviews {
  /** In the order of the weeks. */
  readonly reviews: readonly Review[];
  /** Weeks with a charted game and no review of this version. */
  readonly notReviewed: readonly string[];
}

/** Reads out/review.json of every earlier week of the season. */
export async function earlierReviews(weekFolder: string): Promise<EarlierReviews> {
  const week = resolve(weekFolder);
  const season = dirname(week);
  const names = await readdir(season).catch(() => [] as string[]);
  const reviews: Review[] = [];
  const notReviewed: string[] = [];
  for (const name of earlierWeeks(names, basename(week))) {
    const found = await readReview(join(season, name));
    const entries = await readdir(join(season, name)).catch(() => [] as string[]);
    if (found) reviews.push({ ...found, week: name });
    else if (entries.some(isGameSheet)) notReviewed.push(name);
  }
  return { reviews, notReviewed };
}

async function readReview(folder: string): Promise<Review | null> {
  const text = await readFile(join(folder, 'out', 'review.json'), 'utf8').catch(() => null);
  if (text === null) return null;
  try {
    const found = JSON.parse(text) as Review;
    return found.schema === 'pressure-plan.review/1' && found.version === VERSION ? found : null;
  } catch {
    return null;
  }
}
