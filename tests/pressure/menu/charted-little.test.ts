import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { STYLES } from '../fit/styles.ts';
import { chartedMore, inventedRecords } from '../invented-offense.ts';
import { menuAgainst, planAgainst } from './style-menus.ts';

const held = STYLES.find(({ style }) => style === 'held ball, back in')!;
const records = chartedMore(inventedRecords(held), {
  motion: { none: 100 },
  tempo: { huddle: 100 },
  checked: { no: 100 },
  optionTag: { none: 100 },
  concept: { stick: 100 },
  formation: { doubles: 100 },
  held: 0.85,
});

/** Third and nine is always a deep drop behind seven. */
const thirds = records.map(
  (record): SnapRecord =>
    record['down'] === 3 && record['to_go'] === 9
      ? {
          ...record,
          play_kind: 'dropback',
          back_action: 'blocks',
          protectors: 7,
          time_to_throw: 3.1,
          target_zone: 'outside',
          result: 'incomplete',
        }
      : record,
);

describe('a ball held behind seven on third and long', () => {
  it('is where the late rusher is sent, and never on more of the snaps than the week allows', () => {
    const plan = planAgainst(filmFromRecords(thirds));
    const extra = menuAgainst(plan).calls.find(({ family }) => family === 'add_on');
    expect(extra?.mix.find(({ situation }) => situation === 'third_long')?.share).toBeGreaterThan(0.1);
    for (const { share } of extra?.mix ?? []) expect(share).toBeLessThanOrEqual(0.15 + 1e-6);
  });
});

describe('a film that says run or pass alone', () => {
  const CHARTED = ['game', 'down', 'to_go', 'ball_on'];
  const bare = records.map((record): SnapRecord => {
    const runs = ['run', 'quarterback_run'].includes(String(record['play_kind']));
    const kept = Object.entries(record).filter(([column]) => CHARTED.includes(column));
    return { ...Object.fromEntries(kept), play_kind: runs ? 'run' : 'pass' };
  });
  const plan = planAgainst(filmFromRecords(bare));
  const menu = menuAgainst(plan);

  it('leaves every pressure open on a large share of their snaps, and claims next to nothing', () => {
    for (const { family, unknown } of plan.fit?.families.filter(({ situation }) => situation === 'all') ?? []) {
      if (family !== 'base') expect(unknown, family).toBeGreaterThan(0.4);
    }
    expect(menu.right + menu.wrong).toBeLessThan(1);
  });

  it('still gives a menu that keeps its limits and hides the coverage', () => {
    const sent = menu.calls.reduce((sum, { expectedCalls }) => sum + expectedCalls, 0);
    expect(sent).toBeGreaterThan(10);
    expect(menu.reps).toBeLessThanOrEqual(menu.repsAllowed);
    expect(menu.read?.share).toBeLessThanOrEqual(0.7);
    expect(menu.regret.points).toBeLessThanOrEqual(menu.regret.allowed + 1e-5);
  });
});
