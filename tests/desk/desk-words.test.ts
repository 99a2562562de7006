import { expect, it } from 'vitest';
import { NODE_PLATFORM } from '../../src/commands/node-platform.ts';
import { deskWords } from '../../src/desk/view/desk-words.ts';
import { earlierReviews } from '../../src/season/earlier-reviews.ts';
import { halftimePages } from '../../src/season/halftime-pages.ts';
import { memoryFiles } from '../../src/season/memory-files.ts';
import { readWeek } from '../../src/season/read-week.ts';
import { readSeasonFolder } from '../../src/season/season-folder.ts';

const at = (files: Readonly<Record<string, string>>) => {
  const bytes = new Map(Object.entries(files).map(([path, text]) => [path, new TextEncoder().encode(text)]));
  return { files: memoryFiles(bytes, 'season'), platform: NODE_PLATFORM, week: 'week-02' };
};
const words = (work: Promise<unknown>) => work.then(String, (error: Error) => error.message);
const nobody = { note: () => undefined, progress: () => undefined, today: '2026-10-01' };

it.each([
  ['a week without a sheet', () => words(readSeasonFolder(at({ 'week-02/week.yaml': '' })))],
  [
    'a sheet with headers of its own',
    () => words(readSeasonFolder(at({ 'week-02/opponent.csv': 'a,b\n1,2\n' })).then(readWeek)),
  ],
  ['no sheet of tonight', () => words(halftimePages(at({ 'week-02/week.yaml': '' }), nobody))],
  [
    'a review of an earlier week that was changed',
    () => earlierReviews(at({ 'week-01/out/review.json': '{' })).then(({ problems }) => problems.join('\n')),
  ],
])('%s: the command line names what to type, the desk where to turn', async (_, made) => {
  const message = await made();
  expect(message).toMatch(/pressure-plan|--live/);
  expect(deskWords(message)).not.toMatch(/pressure-plan|--live/);
});
