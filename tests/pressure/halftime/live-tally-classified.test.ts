import { expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { liveTallies, liveTotals } from '../../../src/pressure/halftime/live-tally.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

function totals(kinds: readonly string[], target: string) {
  const records = kinds.map(
    (play_kind, i) => ({ game: 'w09', snap: i + 1, down: 1, to_go: 10, play_kind }) as SnapRecord,
  );
  const tally = liveTallies(filmFromRecords(records), cuts).find((each) => each.target === target)!;
  return Object.fromEntries(liveTotals(tally).map((count, k) => [tally.classes[k], count]));
}

it('a first half typed as run or pass counts no answers, so that nobody is told they only run', () => {
  const typed = [...new Array(16).fill('run'), ...new Array(12).fill('pass')];
  expect(totals(typed, 'run_or_pass')).toEqual({ run: 16, pass: 12 });
  expect(Object.values(totals(typed, 'answer')).every((count) => count === 0)).toBe(true);
});

it('one that tells most passes counts them and the runs', () => {
  const typed = [...new Array(16).fill('run'), ...new Array(8).fill('quick'), ...new Array(4).fill('pass')];
  expect(totals(typed, 'answer')).toMatchObject({ run: 16, quick: 8, dropback: 0 });
});
