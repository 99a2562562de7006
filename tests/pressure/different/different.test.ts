import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { differentChapter } from '../../../src/pressure/different/different.ts';
import type { Tell } from '../../../src/pressure/forecast/forecast-result.ts';
import { pressuredChapter } from '../../../src/pressure/pressured/pressured.ts';
import { createRandom } from '../../../src/stats/random.ts';
import { share } from '../../../src/stats/share.ts';

const cuts = weekSettingsSchema.parse({ opponent: 'Cinder Vale' }).situations;

interface Style {
  readonly run: number;
  readonly screen: number;
  readonly motion: number;
  readonly heavy: number;
}

const PLAIN: Style = { run: 0.5, screen: 0.1, motion: 0.35, heavy: 0.15 };

/** Four games of an offense; each column is drawn on its own. */
function offense(name: string, style: Style): SnapRecord[] {
  const random = createRandom(`different ${name}`);
  const is = (share: number) => random.uniform() < share;
  return Array.from({ length: 240 }, (_, i): SnapRecord => {
    const [down, toGo] = [
      [1, 10],
      [1, 10],
      [2, 7],
      [3, 8],
      [3, 2],
    ][random.integer(5)] as [number, number];
    return {
      offense: name,
      game: `w${Math.floor(i / 60)} ${name}`,
      down,
      to_go: toGo,
      ball_on: 1 + random.integer(98),
      hash: ['left', 'middle', 'right'][random.integer(3)] as string,
      personnel: ['11', '22'][Number(is(style.heavy))] as string,
      receivers: ['2x2', '3x1'][Number(is(0.4))] as string,
      motion: ['none', 'across'][Number(is(style.motion))] as string,
      tempo: ['huddle', 'no_huddle'][Number(is(0.2))] as string,
      rushers_faced: 4 + Number(is(0.3)),
      play_kind: is(style.run) ? 'run' : pass(is, style.screen),
    };
  });
}

function pass(is: (share: number) => boolean, screen: number): string {
  if (is(screen)) return 'screen';
  return is(0.4) ? 'quick' : 'dropback';
}

const OTHERS = ['Elm', 'Fir', 'Oak', 'Pine', 'Yew', 'Ash', 'Bay', 'Gum'];

function chapterOf(own: readonly SnapRecord[], others: readonly SnapRecord[] | null, shown: readonly Tell[] = []) {
  const chart = filmFromRecords(own);
  const archive = others && filmFromRecords(others);
  const pressured = pressuredChapter({ chart, archive, forecasts: [], cuts });
  const tells = { looked: 0, discoveryRate: 0.1, tells: shown };
  return differentChapter({ chart, archive, cuts, pressured, tells });
}

describe('differentChapter', () => {
  const archive = OTHERS.flatMap((name) => offense(name, PLAIN));

  it('names what sets an option team apart, at most eight lines, two of a topic, with every tick', () => {
    const own = offense('option', { run: 0.88, screen: 0.1, motion: 0.75, heavy: 0.6 });
    const { against, offenses, looked, lines } = chapterOf(own, archive);
    expect([against, offenses]).toEqual(['archive', 8]);
    expect(looked).toBeGreaterThan(40);
    expect(lines.length).toBeLessThanOrEqual(8);
    const topics = lines.map(({ topic }) => topic);
    expect(new Set(topics)).toEqual(
      new Set(['answers', 'run_by_situation', 'run_by_zone', 'motion', 'personnel', 'pressured']),
    );
    for (const topic of topics) expect(topics.filter((one) => one === topic).length).toBeLessThanOrEqual(2);
    const runs = lines.find(({ question, where }) => question === 'run_or_pass' && where === null);
    const counted = own.filter(({ play_kind: kind }) => kind === 'run').length;
    expect(runs?.film).toMatchObject({ count: counted, trials: 240 });
    expect(runs).toMatchObject({ direction: 'more', sure: 'clear', below: 8 });
    expect(runs?.offenses).toHaveLength(8);
    expect(runs?.snapsAGame).toBeCloseTo((counted - 240 * (runs?.usual as number)) / 4, 10);
    expect(runs?.snaps).toHaveLength(240);
  });

  it('counts of a tell what came beyond the forecast, by game', () => {
    const tell: Tell = {
      id: 'planted',
      seen: [{ feature: 'motion', value: 'across' }],
      target: 'screen',
      follows: 'screen',
      film: share(18, 24),
      expected: 0.25,
      standing: 'plan_with',
      planWith: 0.5,
      p: 0.0001,
      adjusted: 0.01,
      games: [],
      gamesShown: 4,
      oneGameOnly: false,
      snaps: [1, 2],
    };
    const { lines } = chapterOf(offense('plain', PLAIN), archive, [tell]);
    const line = lines.find(({ topic }) => topic === 'tells');
    // 18 came where a quarter of 24 were expected: 12 more over four games.
    expect(line).toMatchObject({ snapsAGame: 3, usual: 0.25, sure: 'clear', where: { by: 'seen', seen: tell.seen } });
    expect(line?.film).toMatchObject({ count: 18, trials: 24 });
  });

  it('says of the same offense again that nothing is different, for nearly all of thirteen', () => {
    const named = Array.from({ length: 13 }, (_, i) => chapterOf(offense(`like them ${i}`, PLAIN), archive).lines);
    const sure = named.map((lines) => lines.filter(({ sure }) => sure === 'clear' || sure === 'likely').length);
    expect(sure.filter((count) => count > 0).length).toBeLessThanOrEqual(2);
  });

  it('compares with nobody without an archive, and says so', () => {
    const own = offense('alone', { run: 0.9, screen: 0.5, motion: 0.9, heavy: 0.9 });
    expect(chapterOf(own, null)).toEqual({ against: 'no_archive', offenses: 0, looked: 0, lines: [] });
    expect(chapterOf([], archive)).toEqual({ against: 'no_archive', offenses: 0, looked: 0, lines: [] });
  });

  it('compares what they do against a rush from eight passes on, and not from fewer', () => {
    const lookedWith = (faced: number) => {
      const own = offense('seldom', PLAIN).map(({ rushers_faced: _, ...snap }, i): SnapRecord => {
        const played = i < 8 ? { ...snap, play_kind: 'dropback' } : snap;
        return i < faced ? { ...played, rushers_faced: 5 } : played;
      });
      return chapterOf(own, archive).looked;
    };
    expect(lookedWith(7)).toBe(lookedWith(0));
    expect(lookedWith(8)).toBeGreaterThan(lookedWith(7));
  });

  it('never counts a blank as a no', () => {
    const own = offense('blank', { ...PLAIN, motion: 0.9 }).map((snap, i): SnapRecord => {
      const { motion: _, ...rest } = snap;
      return i % 2 === 0 ? rest : snap;
    });
    const line = chapterOf(own, archive).lines.find(({ topic, name }) => topic === 'motion' && name === 'across');
    expect(line?.film.trials).toBe(120);
    expect(line?.snaps.every((row) => row % 2 === 1)).toBe(true);
  });
});
