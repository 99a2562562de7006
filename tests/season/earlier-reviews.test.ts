import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { diskWeek } from '../../src/commands/disk-season.ts';
import { NODE_PLATFORM } from '../../src/commands/node-platform.ts';
import { earlierReviews } from '../../src/season/earlier-reviews.ts';
import { sealed } from '../../src/season/seal.ts';
import { VERSION } from '../../src/season/version.ts';

const season = mkdtempSync(join(tmpdir(), 'reviews-'));
afterAll(() => rmSync(season, { recursive: true }));

function week(name: string, files: Readonly<Record<string, string>>): void {
  mkdirSync(join(season, name, 'out'), { recursive: true });
  for (const [file, text] of Object.entries(files)) writeFileSync(join(season, name, file), text);
}

let made = 0;
/** A review in little: every one tells of another day. */
const review = (version: string) =>
  sealed({ schema: 'pressure-plan.review/4', version, week: 'moved', day: ++made }, '', NODE_PLATFORM.digest).text;

it('takes the reviews of earlier weeks in order and names the charted games without one', async () => {
  week('week-03', { 'out/review.json': review(VERSION), 'game.csv': '' });
  week('week-02', { 'out/review.json': review(VERSION), 'game.csv': '' });
  week('week-04', { 'game.csv': '' });
  week('week-05', { 'out/review.json': '{"schema":', 'game.csv': '' });
  week('week-06', { 'out/review.json': review('0.0.1'), 'game.csv': '' });
  week('week-07', { 'opponent.csv': '' });
  week('week-08', { 'out/review.json': review(VERSION), 'game.csv': '' });
  week('week-09', { 'out/review.json': review(VERSION) });
  const { reviews, notReviewed, problems } = await earlierReviews(diskWeek(join(season, 'week-08')));
  expect(reviews.map((found) => found.week)).toEqual(['week-02', 'week-03']);
  expect(notReviewed).toEqual(['week-04', 'week-05', 'week-06']);
  expect(problems).toEqual([
    expect.stringMatching(
      /week-05.out.review\.json is cut off: it ends within line 1\. To write it again: .* review .*week-05$/,
    ),
    expect.stringMatching(
      /week-06.out.review\.json, at "version": "0\.0\.1", this is version "0\.1\.0" of the tool\. /,
    ),
  ]);
});

it('takes no review twice, and none that was changed', async () => {
  const again = mkdtempSync(join(tmpdir(), 'reviews-'));
  const put = (name: string, text: string) => {
    mkdirSync(join(again, name, 'out'), { recursive: true });
    writeFileSync(join(again, name, 'game.csv'), '');
    writeFileSync(join(again, name, 'out/review.json'), text);
  };
  const text = review(VERSION);
  put('week-01', text);
  put('week-02', text);
  put('week-03', text.replace('moved', 'other'));
  put('week-04', '');
  put('week-05', '[]');
  mkdirSync(join(again, 'week-06/out/review.json'), { recursive: true });
  mkdirSync(join(again, 'week-08'), { recursive: true });
  const { reviews, notReviewed, problems } = await earlierReviews(diskWeek(join(again, 'week-08')));
  rmSync(again, { recursive: true });
  expect(reviews.map(({ week }) => week)).toEqual(['week-01']);
  expect(notReviewed).toEqual(['week-02', 'week-03', 'week-04', 'week-05']);
  expect(problems.map((line) => line.replaceAll(again, ''))).toEqual([
    expect.stringContaining('out/review.json of week-02 is a copy of that of week-01'),
    expect.stringMatching(/week-03.* was changed after it was written/),
    expect.stringMatching(/week-04.*review\.json is empty/),
    expect.stringMatching(/week-05.*review\.json holds no object/),
    expect.stringMatching(/week-06.*review\.json is not a file/),
  ]);
});
