import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { adjustWeek } from '../../../src/pressure/halftime/adjust.ts';
import { habitWords, pressureWords, warningWords } from '../../../src/report/adjust/half-time-words.ts';
import { renderHalfTime } from '../../../src/report/adjust/render-half-time.ts';
import { share } from '../../../src/stats/share.ts';
import { inventedPlan } from '../invented-plan.ts';

const plan = inventedPlan();
const live = filmFromRecords(Array(20).fill({ down: 3, to_go: 12, play_kind: 'screen', gain: 3, call: 'Rake' }));
const update = adjustWeek(plan, live);

describe('the half-time page', () => {
  it('says what moved, ranks the calls, counts what was used, and warns of what was shown', async () => {
    const page = await renderHalfTime(update, 2);
    expect(page).toContain('Screen: 20 of 20, expected');
    expect(page).toContain('20 of 4');
    expect(page).toContain('rake: three deep behind it 20 of 20 times; change up with Rake Man.');
    expect(page).toContain('2 rows were not usable');
    expect(page).toContain('licensed athletic trainers');
  });

  it('is the same bytes twice, and needs no script and nothing from outside', async () => {
    const page = await renderHalfTime(update, 0);
    expect(page).toBe(await renderHalfTime(update, 0));
    expect(page).not.toMatch(/<script|src=|https?:|url\(/);
    expect(page).not.toContain('not usable');
  });

  it('without a menu it ranks the kinds of pressure alone', async () => {
    const bare = adjustWeek({ ...plan, menu: null, library: null }, live);
    const page = await renderHalfTime(bare, 0);
    expect(page).toContain('Sunday’s plan carries no menu');
    expect(page).toContain('Zero');
  });

  it('says what happened in words a coach would use', () => {
    const habit = {
      target: 'screen',
      situation: 'third_long',
      name: 'screen',
      expected: 0.24,
      tonight: share(6, 8),
      p: 0.01,
      adjusted: 0.05,
    } as const;
    expect(habitWords(habit)).toBe('Screen, when they pass, 3rd and long: 6 of 8, expected 24%');
    expect(habitWords({ ...habit, target: 'answer', name: 'quarterback_run', situation: 'all' })).toBe(
      'QB run: 6 of 8, expected 24%',
    );
    expect(warningWords({ path: 'rake', coverage: 'zero', count: 3, trials: 3, instead: [] })).toContain(
      'no carried call breaks it',
    );
    expect(pressureWords({ ...update, tonight: { ...update.tonight, charted: share(0, 9) } })).toContain('not charted');
  });
});
