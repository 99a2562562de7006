import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { earlierReviews } from '../../src/commands/earlier-reviews.ts';
import { VERSION } from '../../src/commands/version.ts';

const season = mkdtempSync(join(tmpdir(), 'reviews-'));
afterAll(() => rmSync(season, { recursive: true }));

function week(name: string, files: Readonly<Record<string, string>>): void {
  mkdirSync(join(season, name, 'out'), { recursive: true });
  for (const [file, text] of Object.entries(files)) writeFileSync(join(season, name, file), text);
}

const review = (version: string) => JSON.stringify({ schema: 'pressure-plan.review/1', version, week: 'moved' });

it('takes the reviews of earlier weeks in order and names the charted games without one', async () => {
  week('week-03', { 'out/review.json': review(VERSION), 'game.csv': '' });
  week('week-02', { 'out/review.json': review(VERSION), 'game.csv': '' });
  week('week-04', { 'game.csv': '' });
  week('week-05', { 'out/review.json': '{"schema":', 'game.csv': '' });
  week('week-06', { 'out/review.json': review('0.0.1'), 'game.csv': '' });
  week('week-07', { 'opponent.csv': '' });
  week('week-08', { 'out/review.json': review(VERSION), 'game.csv': '' });
  week('week-09', { 'out/review.json': review(VERSION) });
  const { reviews, notReviewed } = await earlierReviews(join(season, 'week-08'));
  expect(reviews.map((found) => found.week)).toEqual(['week-02', 'week-03']);
  expect(notReviewed).toEqual(['week-04', 'week-05', 'week-06']);
});
