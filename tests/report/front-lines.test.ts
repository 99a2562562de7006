import { describe, expect, it } from 'vitest';
import { frontLines } from '../../src/report/sheet/front-lines.ts';
import { rawKeys } from '../../src/report/sheet/raw-keys.ts';
import { numbers, textCell, withoutEmptyColumns, words } from '../../src/report/view/table-view.ts';
import { inventedPlan } from './invented-plan.ts';

describe('what each man of the front meets', () => {
  const plan = inventedPlan();

  it('is one line a lineman or linebacker who rushes, as often as each call is called', () => {
    const [first] = plan.protection.calls;
    if (!first || plan.menu?.kind !== 'menu') throw new Error('the invented plan has protections and a menu');
    const rusher = (fate: 'free' | 'blocked') => [{ role: 'nose', lane: 'far_A' as const, fate, arrival: 2.5 }];
    const [often, seldom] = [...plan.menu.calls].sort((a, b) => b.expectedCalls - a.expectedCalls);
    const calls = [
      { ...first, call: often?.call ?? '', share: 1, rushers: rusher('free') },
      { ...first, call: seldom?.call ?? '', share: 1, rushers: rusher('blocked') },
    ];
    const known = { ...plan.protection, mix: { ...plan.protection.mix, source: 'charted' as const }, calls };
    const free = Math.round(
      (100 * (often?.expectedCalls ?? 0)) / ((often?.expectedCalls ?? 0) + (seldom?.expectedCalls ?? 0)),
    );
    const lines = frontLines({ ...plan, protection: known });
    expect(lines).toEqual([
      { man: 'Nose', words: `free ${free}%, one blocker ${100 - free}%; free most in ${often?.call}.` },
    ]);
  });

  it('is not guessed where protection is not charted', () => {
    const mix = { ...plan.protection.mix, source: 'assumed' as const };
    expect(frontLines({ ...plan, protection: { ...plan.protection, mix } })).toEqual([]);
  });
});

describe('a raw key', () => {
  it('says what others do from the same look, of the same thing', () => {
    const plan = inventedPlan();
    const asked = plan.forecast.forecasts.find((one) => one.target === 'run_or_pass' && one.situation === 'all');
    if (!asked) throw new Error('the invented plan forecasts run or pass');
    const counted = { count: 3, trials: 24, estimate: 0.125, low: 0, high: 0.3 };
    const classes = asked.classes.map((one) => (one.name === 'run' ? { ...one, film: counted } : one));
    const line = {
      kind: 'look' as const,
      look: 'shotgun',
      label: 'shotgun',
      situation: 'all',
      snaps: 24,
      forecasts: [{ ...asked, classes }],
    };
    const others = { offenses: [], usual: 0.3, below: 0, p: 1, rarity: 1 };
    const film = { count: 1, trials: 20, estimate: 0.05, low: 0, high: 0.3 };
    const compared = { film, games: [], others, adjusted: 1, sure: 'none' as const };
    const none = { top: [], trials: 0 };
    const row = { value: line.look, used: compared, runs: compared, answers: none, concepts: none, snaps: [] };
    const tables = { ...plan.tables, tables: [{ by: line.kind, charted: 20, snaps: 20, rows: [row] }] };
    const keys = rawKeys({ ...plan, tables, forecast: { ...plan.forecast, line: [line] } });
    expect(keys).toMatchObject([{ see: 'Shotgun', means: 'pass 21 of 24 (88%)', others: 'others 70%', sure: 'clear' }]);
  });
});

describe('columns that hold nothing', () => {
  const table = {
    id: 't',
    caption: 'T',
    columns: [words('A'), words('B'), numbers('C')],
    rows: [
      { name: 'one', cells: [textCell(''), textCell('1')] },
      { name: 'two', cells: [textCell(''), textCell('')] },
    ],
    empty: 'none',
  };

  it('are left out, with their cells; the others stay', () => {
    const shown = withoutEmptyColumns(table);
    expect(shown.columns.map(({ label }) => label)).toEqual(['A', 'C']);
    expect(shown.rows.map(({ cells }) => cells.map(({ text }) => text))).toEqual([['1'], ['']]);
  });
});
