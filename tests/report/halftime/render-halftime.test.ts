import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { halftimeUpdate } from '../../../src/pressure/halftime/halftime.ts';
import { callsTable, situationsTable } from '../../../src/report/halftime/halftime-table.ts';
import {
  habitWords,
  overtakingWords,
  pressureWords,
  topLine,
  warningWords,
} from '../../../src/report/halftime/halftime-words.ts';
import { renderHalftime } from '../../../src/report/halftime/render-halftime.ts';
import { situationLabel } from '../../../src/report/words/situation-label.ts';
import { share } from '../../../src/stats/share.ts';
import { inventedPlan } from '../invented-plan.ts';

const plan = inventedPlan();
const live = filmFromRecords(Array(20).fill({ down: 3, to_go: 12, play_kind: 'screen', gain: 3, call: 'Rake' }));
const update = halftimeUpdate({ plan, live, film: null });

describe('the halftime page', () => {
  it('says what moved, ranks the calls, counts what was used, and warns of what was shown', async () => {
    const page = await renderHalftime(update, 2);
    expect(page).toContain('Screen: 20 of 20 (100%), expected');
    expect(page).toMatch(/<bdi>Rake<\/bdi>.*?>20<\/td><td class="n" data-v="4\.\d+">4<\/td>/);
    expect(page).toContain('rake: same coverage behind it (three deep) 20 of 20; change up with Rake Man.');
    expect(page).toContain('2 rows left out of the numbers');
    expect(page).toContain('licensed athletic trainers');
    expect(page).toContain('creativecommons.org/licenses/by-sa/4.0');
  });

  it('puts no number before a call but the wristband’s, and says from which place it moved', () => {
    const [first, second, ...rest] = update.calls;
    if (first === undefined || second === undefined) throw new Error('the invented plan carries two calls');
    const moved = [{ ...first, rankBefore: 2 }, { ...second, rankBefore: 1 }, ...rest];
    const names = callsTable({ ...update, calls: moved }).rows.map(({ name }) => name);
    expect(names.slice(0, 2)).toEqual([`${first.call} ↑ from 2nd`, `${second.call} ↓ from 1st`]);
    for (const name of names) expect(name).not.toMatch(/^\d/);
  });

  it('says on one line on top what to change, or to stay', async () => {
    expect(topLine(update)).toMatch(/^Change this: /);
    const quiet = { ...update, moved: { ...update.moved, moved: [] }, warnings: [] };
    expect(topLine(quiet)).toMatch(/^Stay with Sunday’s calls/);
    const shown = { ...quiet, warnings: update.warnings };
    expect(topLine(shown)).toBe(
      'Change this: rake: same coverage behind it (three deep) 20 of 20; change up with Rake Man.',
    );
    const seldom = { ...quiet, warnings: update.warnings.map((one) => ({ ...one, count: 3, trials: 3 })) };
    expect(topLine(seldom)).toMatch(/^Stay with Sunday’s calls.* A lean: rake: .* 3 of 3; change up with Rake Man\.$/);
    expect(await renderHalftime(quiet, 0)).toContain(topLine(quiet));
  });

  it('names the snaps that put one call ahead of another, as a lean', () => {
    const two = { call: 'Torch', over: 'Rake', snaps: ['4', '9'] };
    expect(overtakingWords(two)).toBe('Lean: Torch before Rake (snaps 4 and 9)');
    expect(overtakingWords({ ...two, snaps: ['4'] })).toBe('Lean: Torch before Rake (snap 4)');
    expect(overtakingWords({ ...two, snaps: [] })).toBe('Lean: Torch before Rake (by what they call tonight)');
    const many = Array.from({ length: 8 }, (_, i) => String(i + 1));
    expect(overtakingWords({ ...two, snaps: many })).toContain('(snaps 1, 2, 3, 4, 5, 6 and 2 more)');
  });

  it('sends a coach to base where nothing on the sheet fits what moved', () => {
    const here = (now: number) => ({
      ...update,
      situations: update.situations.map((entry) => ({ ...entry, calls: [{ call: 'Rake', before: 0, now }] })),
    });
    const moved = update.moved.moved.find(({ situation }) => situation === 'third_long');
    if (moved === undefined) throw new Error('twenty screens of twenty move the screens of third and long');
    const top = (now: number) => topLine({ ...here(now), moved: { ...update.moved, moved: [moved] } });
    expect(top(-0.1)).toMatch(/: call base\.$/);
    expect(top(0.1)).toMatch(/Best on the sheet there: Rake\.$/);
  });

  it('counts what they did against four, five and six', async () => {
    expect(await renderHalftime(update, 0)).toContain('Five, 20 snaps');
  });

  it('recommends nothing in a situation where Sunday’s sheet never calls it', () => {
    const { rows } = situationsTable(update);
    expect(rows.length).toBeGreaterThan(3);
    for (const { name, cells } of rows) {
      const id = update.situations.find(({ situation }) => situationLabel(situation) === name)?.situation;
      const onSheet = update.calls.filter(({ mix }) => mix.some((part) => part.situation === id && part.share > 0.005));
      const said = (cells[0]?.text ?? '').split(', ').map((text) => text.replace(/ [+\u2212]?[\d.]+$/, ''));
      for (const call of said) expect([...onSheet.map((entry) => entry.call), 'base']).toContain(call);
    }
  });

  it('is the same bytes twice, and needs no script and nothing from outside', async () => {
    const page = await renderHalftime(update, 0);
    expect(page).toBe(await renderHalftime(update, 0));
    expect(page).not.toMatch(/<script|src=|https?:|url\(/);
    expect(page).not.toContain('left out of the numbers');
  });

  it('without a menu it ranks the kinds of pressure alone', async () => {
    const bare = halftimeUpdate({ plan: { ...plan, menu: null, library: null }, live, film: null });
    const page = await renderHalftime(bare, 0);
    expect(page).toContain('Sunday’s plan carries no menu');
    expect(page).toContain('Zero');
  });

  it('says what happened in words a coach would use', () => {
    const habit = {
      target: 'screen',
      situation: 'third_long',
      name: 'screen',
      expected: 0.24,
      firstHalf: share(6, 8),
      p: 0.01,
      adjusted: 0.05,
    } as const;
    expect(habitWords(habit)).toBe('Screen, when they pass, 3rd and long: 6 of 8 (75%), expected 24%');
    expect(habitWords({ ...habit, target: 'answer', name: 'quarterback_run', situation: 'all' })).toBe(
      'QB run: 6 of 8 (75%), expected 24%',
    );
    expect(warningWords({ path: 'rake', coverage: 'zero', count: 3, trials: 3, instead: [] })).toContain(
      'nothing on the menu breaks it',
    );
    expect(pressureWords({ ...update, ours: { ...update.ours, charted: share(0, 9) } })).toContain('not charted');
  });
});
