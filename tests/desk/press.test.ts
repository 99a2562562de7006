import { describe, expect, it } from 'vitest';
import { DEPTHS, type Depth } from '../../src/desk/chart/chart-fields.ts';
import { type ChartState, openChart, type Passes } from '../../src/desk/chart/chart-state.ts';
import { press, type Stroke } from '../../src/desk/chart/press.ts';
import { sheetWriter } from '../../src/desk/chart/sheet-text.ts';
import { readSheet } from '../../src/ingest/read-sheet.ts';
import { sheetTemplate } from '../../src/ingest/templates.ts';
import { readChartSheet, type SnapCells } from '../../src/season/chart-sheet.ts';

const game = { offense: 'Cedar Falls', game: 'one' };
const open = (depth: Depth, passes: Passes = 'both', snaps: readonly SnapCells[] = []) =>
  openChart({ kind: 'opponent', depth, passes, game, snaps });
const strokes = (text: string): Stroke[] =>
  text
    .split('')
    .map((key) => (key === '~' ? { seconds: 2.1 } : { key: key === '<' ? 'Backspace' : key === '\n' ? 'Enter' : key }));
const typed = (state: ChartState, text: string) => strokes(text).reduce(press, state);
const lastOf = ({ snaps }: ChartState) => snaps.at(-1);

describe('a snap typed', () => {
  it('at each depth takes the keys of its stops and no more', () => {
    const quick = typed(open('quick'), '25 r4 ');
    expect(lastOf(quick)).toMatchObject({ down: '1', to_go: '10', ball_on: 'own 25', play_kind: 'run', gain: '4' });
    expect(quick).toMatchObject({ at: 1, draft: { down: '2', to_go: '6', ball_on: 'own 29', snap: '2', drive: '1' } });
    const plan = typed(open('plan'), '25 m1bqc9 6lb4~');
    expect(lastOf(plan)).toMatchObject({ hash: 'middle', receivers: '2x2', slide: 'left', time_to_throw: '2.1' });
    expect(plan.at).toBe(1);
  });

  it('loses its last digit to backspace and keeps the others', () => {
    expect(typed(open('quick'), '25<').entry).toBe('2');
    expect(lastOf(typed(open('quick'), '25<7 r14<2 '))).toMatchObject({ ball_on: 'own 27', gain: '12' });
  });

  it('that falls gains nothing and keeps the hash; a flag leaves everything to be said', () => {
    const fell = typed(open('plan'), '25 l1bqi6lb4~');
    expect(lastOf(fell)).toMatchObject({ result: 'incomplete', gain: '0' });
    expect(fell.draft).toMatchObject({ down: '2', to_go: '10', hash: 'left' });
    const flag = typed(open('quick'), '25  p');
    expect(flag.draft).toMatchObject({ down: '1', to_go: '10', ball_on: 'own 25' });
    expect(flag.known.size).toBe(0);
  });

  it.each([
    ['before the snap, against the offense', '25 r4 !-5 ', { down: '2', to_go: '11', ball_on: 'own 24' }],
    ['before the snap, against the defense', '25 r4 !+5 ', { down: '2', to_go: '1', ball_on: 'own 34' }],
    ['past the line to gain', '25 r4 !+15 ', { down: '1', to_go: '10', ball_on: 'own 44' }],
    ['that gives a first down', '25 r1 r1 !+5f', { down: '1', to_go: '10', ball_on: 'own 32' }],
    ['first and goal', '12or1 !+10 ', { down: '1', to_go: '1', ball_on: 'opp 1' }],
    ['on a run, at its gain', '25 r12p-10 ', { down: '1', to_go: '20', ball_on: 'own 15' }],
    ['on a pass, at its end', '25 qp+15 ', { down: '1', to_go: '10', ball_on: 'own 40' }],
    ['more than the field has', '25 r4 !-40 ', { down: '2', to_go: '46' }],
  ])('with a flag %s is walked off by its yards', (_, keys, next) => {
    const state = typed(open('quick'), keys);
    expect(state.snaps.at(-1)?.result).toBe('penalty');
    expect(state.snaps.at(-1)?.gain).toBeUndefined();
    expect(state.draft).toMatchObject(next);
    expect(state.draft.ball_on).toBe('ball_on' in next ? next.ball_on : undefined);
  });

  it('with a flag can be made a play again', () => {
    const flagged = typed(open('quick'), '25 r4p');
    const mended = typed(press(flagged, { key: 'ArrowUp' }), ' r7 ');
    expect(mended.snaps[0]).toMatchObject({ play_kind: 'run', result: 'rush', gain: '7' });
  });

  it('that is a run fumbled away takes one key more than a run', () => {
    const lost = typed(open('quick'), '25 r4f');
    expect(lost.snaps[0]).toMatchObject({ play_kind: 'run', gain: '4', result: 'fumble_lost' });
    expect(lost.draft).toMatchObject({ down: '1', to_go: '10', drive: '2' });
    expect(typed(open('quick'), '25 qc4f').snaps[0]).toMatchObject({ gain: '4', result: 'fumble_lost' });
  });

  it('ends a series by a turnover, a score or a fourth down that fell short', () => {
    for (const keys of ['25 qx0 ', '5or5 ']) {
      const over = typed(open('quick'), keys);
      expect(over.draft, keys).toMatchObject({ down: '1', to_go: '10', drive: '2' });
      expect(over.draft.ball_on, keys).toBeUndefined();
    }
    const short = typed(open('quick'), '25 r1 r1 r1 r1 ');
    expect(short.draft).toMatchObject({ down: '1', drive: '2' });
  });

  it('inside the ten is first and goal', () => {
    expect(typed(open('quick'), '8or2 ').snaps[0]).toMatchObject({ to_go: '8', ball_on: 'opp 8' });
  });

  it('has the ball on no yard line past the fifty', () => {
    expect(typed(open('quick'), '113').entry).toBe('11');
    expect(typed(open('quick'), '50 ').draft.ball_on).toBe('50');
  });

  it('is undone key by key, and taken back by Backspace', () => {
    const before = open('plan');
    const after = typed(before, '25 m1b');
    let back = after;
    for (let i = 0; i < 6; i++) back = press(back, { key: 'undo' });
    expect(back.draft).toEqual(before.draft);
    expect(back.stop).toBe(before.stop);
    expect(typed(after, '<').draft.back_spot).toBeUndefined();
  });

  it('takes the look of its formation as last time with one key, never its strength and never a blank', () => {
    const first = typed(open('full'), '25 l1=ace\n1rbsnhnrn=zone\n4 ');
    const again = typed(first, 'm11');
    expect(typed(again, ',').draft).toMatchObject({
      receivers: '2x2',
      back_spot: 'behind',
      quarterback_depth: 'shotgun',
    });
    expect(typed(again, ',').draft.strength).toBeUndefined();
    expect(lastOf(typed(again, ',lnhnrn12 '))).toMatchObject({ strength: 'left', motion: 'none', play_kind: 'run' });
    expect(typed(again, '2,').draft.receivers).toBe('3x1');
    const blank = typed(open('full'), '25 l1=ace\n1r  nhnrn=zone\n4 m11,l');
    expect(blank.draft.back_spot).toBeUndefined();
    expect(typed(blank, 's').draft.back_spot).toBe('strong');
    const other = typed(first, 'm1=trips\n');
    expect(typed(other, ',')).toBe(other);
  });

  it('writes a name that is known as it was written before', () => {
    const state = typed(open('full'), '25 l1=Ace\n1rbsnhnrn=zone\n4 m1=aCE\n');
    expect(state.draft.formation).toBe('Ace');
    expect(typed(state, ',').draft.back_spot).toBe('behind');
    expect(typed(open('full'), '25 l1=ace\n1rbsnhnrn=zone\n4 m1=Ace 2\n').draft.formation).toBe('Ace 2');
  });

  it('is charted in two passes, the second from pass to pass', () => {
    const first = typed(open('plan', 'first'), '25 m1br4 m1bqc9 ');
    expect(first.snaps).toHaveLength(2);
    const second = typed(open('plan', 'second', first.snaps), '6lb4~');
    expect(second.snaps[1]).toMatchObject({ protectors: '6', back_action: 'blocks', rushers_faced: '4' });
    expect(second.snaps[0]?.protectors).toBeUndefined();
  });
});

/** A drive at each depth, in keys, snap by snap; `~` is the space bar held down. */
const DRIVES: Readonly<Record<Depth, readonly string[]>> = {
  quick: ['25 r4 ', 'qc9 ', 'si', 'r12 '],
  plan: ['25 m1br4 ', 'm1bqc9 6lb4~', 'r1bsi5mw5~', '1br12 '],
  full: ['25 l1=ace\n1rbsnhnrn=zone\n4 ', 'l111rbsnhnqn=stick\nc9 6lb043~f6 ', 'l111rbsnhnrn112 '],
};

describe('a sheet typed', () => {
  it.each([...DEPTHS])('at depth %s is read without a fault or a warning', (depth) => {
    const head = readChartSheet(sheetTemplate('opponent'));
    const state = typed(open(depth), DRIVES[depth].join(''));
    expect(state.snaps).toHaveLength(DRIVES[depth].length);
    const text = sheetWriter(head ?? { remarks: [], columns: [] })(state.snaps);
    const { chart, problems } = readSheet({ file: 'opponent.csv', bytes: Buffer.from(text) }, { kind: 'opponent' });
    expect(problems).toEqual([]);
    expect(chart.size).toBe(DRIVES[depth].length);
    expect(readChartSheet(text)?.snaps).toEqual(state.snaps);
  });

  it('knows three depths, each with more stops than the one before', () => {
    const stops = DEPTHS.map((depth) => {
      let state = typed(open(depth), '25 ');
      let count = 0;
      for (; state.at === 0 && count < 60; count++)
        state = press({ ...state, draft: { ...state.draft, play_kind: 'quick' } }, { key: 'Enter' });
      return count;
    });
    expect(stops[0]).toBeLessThan(stops[1] ?? 0);
    expect(stops[1]).toBeLessThan(stops[2] ?? 0);
  });
});
