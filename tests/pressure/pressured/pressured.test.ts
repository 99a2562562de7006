import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../src/game/week-settings.ts';
import { answersToPressure } from '../../../src/pressure/pressured/answers-to-pressure.ts';
import { pressuredChapter } from '../../../src/pressure/pressured/pressured.ts';
import type { PressuredChapter, PressuredShare } from '../../../src/pressure/pressured/pressured-result.ts';
import { rushGroupOf } from '../../../src/pressure/snap/rush-group.ts';
import { createRandom, type Random } from '../../../src/stats/random.ts';
import { countedForecast } from '../invented-offense.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Cinder Vale' });
const cuts = settings.situations;

interface Habits {
  /** Screens among passes against four and against five. */
  readonly screens: readonly [number, number];
  readonly offense?: string;
  readonly games?: number;
}

/** Plain football with a rush of five on three snaps in ten; screens as the habits say. */
function offense(seed: string, { screens, offense: name = 'Cinder Vale', games = 4 }: Habits): SnapRecord[] {
  const random = createRandom(seed);
  return Array.from({ length: games * 60 }, (_, i): SnapRecord => {
    const five = random.uniform() < 0.3;
    const [down, toGo] = [
      [1, 10],
      [1, 10],
      [2, 7],
      [3, 7],
    ][random.integer(4)] as [number, number];
    const place = { offense: name, game: `w${Math.floor(i / 60)}`, down, to_go: toGo, ball_on: 60 };
    const rush = { rushers_faced: five ? 5 : 4, coverage_faced: five ? 'man_free' : 'three_deep' };
    return { ...place, ...rush, ...play(random, screens[five ? 1 : 0]) };
  });
}

function play(random: Random, screens: number): SnapRecord {
  if (random.uniform() < 0.5) return { play_kind: 'run', gain: 4, result: 'rush' };
  if (random.uniform() < screens) return { play_kind: 'screen', gain: 5, result: 'complete' };
  const seconds = Math.round(160 + random.uniform() * 160) / 100;
  return { play_kind: seconds <= 2 ? 'quick' : 'dropback', time_to_throw: seconds, gain: 6, result: 'complete' };
}

function chapterOf(records: SnapRecord[], others: SnapRecord[] | null = null): PressuredChapter {
  const chart = filmFromRecords(records);
  const archive = others && filmFromRecords(others);
  return pressuredChapter({ chart, archive, forecasts: countedForecast(chart, settings).forecasts, cuts });
}

/** Screens against a group, of their passes, or of which pass they throw. */
function screensOf(
  chapter: PressuredChapter,
  group: string,
  target: PressuredShare['target'] = 'screen',
): PressuredShare {
  const shares = chapter.splits.flatMap(({ groups }) => groups).find((one) => one.group === group)?.shares ?? [];
  return shares.find((share) => share.target === target && share.name === 'screen') as PressuredShare;
}

describe('pressuredChapter', () => {
  it('finds an offense that screens when five come, with counts by game and over the very snaps it names', () => {
    const records = offense('screens against five', { screens: [0.04, 0.5] });
    const chapter = chapterOf(records);
    const five = screensOf(chapter, 'five');
    const passes = records.filter((snap) => snap['rushers_faced'] === 5 && snap['play_kind'] !== 'run');
    expect(five.film.trials).toBe(passes.length);
    expect(five.film.count).toBe(passes.filter((snap) => snap['play_kind'] === 'screen').length);
    expect(five.sure).toBe('clear');
    expect(five.games.reduce((sum, { count }) => sum + count, 0)).toBe(five.film.count);
    expect(five.snaps.map((row) => records[row]!['rushers_faced'])).toEqual(passes.map(() => 5));
  });

  it('finds nothing sure where the rush changes nothing, in thirteen offenses', () => {
    const sure = Array.from({ length: 13 }, (_, seed) => {
      const chapter = chapterOf(offense(`plain ${seed}`, { screens: [0.15, 0.15] }));
      const shares = chapter.splits.flatMap(({ groups }) => groups.flatMap((group) => group.shares));
      return shares.filter((share) => share.sure === 'clear' || share.sure === 'likely').length;
    });
    expect(sure.filter((count) => count > 0).length).toBeLessThanOrEqual(1);
  });

  it('leans on what all offenses do against five', () => {
    const screens: [number, number] = [0.05, 0.35];
    const others = ['Elm', 'Fir', 'Oak', 'Pine', 'Yew', 'Ash'].flatMap((name) =>
      offense(name, { screens, offense: name }),
    );
    const plain = offense('few snaps', { screens: [0.15, 0.15], games: 2 });
    const [alone, helped] = [chapterOf(plain), chapterOf(plain, others)];
    const [before, after] = [alone, helped].map((chapter) => screensOf(chapter, 'five')) as [
      PressuredShare,
      PressuredShare,
    ];
    const [own, leaning] = [alone, helped].map((chapter) => screensOf(chapter, 'five', 'pass_answer').planWith);
    expect(leaning).toBeGreaterThan(own as number);
    expect(after.others?.offenses).toHaveLength(6);
    expect(before.others).toBeNull();
    // Screens by rushers did not forecast the next game better, so they are not planned with on their own.
    expect(after.planWith).toBeCloseTo(after.expected, 12);
  });

  it('says nothing of runs where the rush was charted on passes alone, and counts no blank as a rush', () => {
    const records = offense('passes charted', { screens: [0.1, 0.1] }).map((snap): SnapRecord => {
      const { rushers_faced: _, ...blank } = snap;
      return snap['play_kind'] === 'run' ? blank : snap;
    });
    const chapter = chapterOf(records);
    const rushers = chapter.splits.find(({ by }) => by === 'rushers');
    expect(rushers?.runsCharted).toBe(false);
    expect(rushers?.charted).toBe(records.filter((snap) => snap['rushers_faced'] !== undefined).length);
    expect(rushers?.groups.flatMap(({ shares }) => shares).some(({ target }) => target === 'run_or_pass')).toBe(false);
    expect(rushers?.groups.map(({ group }) => group)).toEqual(['four', 'five']);
    expect(chapter.splits.find(({ by }) => by === 'coverage')?.runsCharted).toBe(true);
  });

  it('is empty for no film, and for film without a rush or a coverage', () => {
    expect(chapterOf([]).splits).toEqual([]);
    const bare = offense('bare', { screens: [0.1, 0.1] }).map((snap): SnapRecord => {
      const { rushers_faced: _r, coverage_faced: _c, ...rest } = snap;
      return rest;
    });
    const chapter = chapterOf(bare);
    expect(chapter.splits.map(({ charted, groups }) => [charted, groups.length])).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });

  it('tells release times apart', () => {
    const records = offense('times', { screens: [0.1, 0.1] }).map((snap): SnapRecord => {
      const seconds = snap['time_to_throw'];
      return typeof seconds === 'number' && snap['rushers_faced'] === 5
        ? { ...snap, time_to_throw: Math.round(100 * (seconds - 0.4)) / 100 }
        : snap;
    });
    const groups = chapterOf(records).splits[0]?.groups ?? [];
    const [four, five] = ['four', 'five'].map((name) => groups.find(({ group }) => group === name)?.release);
    const timed = records.filter((snap) => snap['rushers_faced'] === 5 && snap['time_to_throw'] !== undefined);
    expect(five?.timed).toBe(timed.length);
    expect(five?.mean as number).toBeLessThan(four?.mean as number);
  });
});

describe('answersToPressure', () => {
  it('takes what other offenses do against five where nobody ever sent five at these', () => {
    const never = offense('never five', { screens: [0.1, 0.1] }).map((snap) => ({ ...snap, rushers_faced: 4 }));
    const others = ['Elm', 'Fir', 'Oak', 'Pine', 'Yew'].flatMap((name) =>
      offense(`league ${name}`, { screens: [0.05, 0.5], offense: name }),
    );
    const { factors } = chapterOf(never, others);
    const kept = factors.filter(({ by, group, target }) => {
      return by === 'rushers' && group === 'five' && target === 'pass_answer';
    });
    const of = (answer: string) => kept.find(({ name }) => name === answer)?.factor;
    expect(of('screen')).toBeGreaterThan(1.2);
    expect(of('quick')).toBeLessThan(1);
    expect(of('dropback')).toBeLessThan(1);
  });

  it('is the forecast itself without a rush or coverage on film', () => {
    const chart = filmFromRecords(offense('plain', { screens: [0.1, 0.1] }));
    const { forecasts } = countedForecast(chart, settings);
    const answers = answersToPressure(forecasts, { factors: [] }, { situation: 'all', rushers: 5 });
    expect(answers?.every(({ share, forecast }) => Math.abs(share - forecast) < 1e-12)).toBe(true);
    expect(answersToPressure([], { factors: [] }, { situation: 'all', rushers: 5 })).toBeNull();
  });

  it('moves their answers toward what they do against five, sums to one and leaves the runs alone', () => {
    const chart = filmFromRecords(offense('moves', { screens: [0.03, 0.6] }));
    const { forecasts } = countedForecast(chart, settings);
    const chapter = pressuredChapter({ chart, archive: null, forecasts, cuts });
    const [four, five] = [4, 5].map((rushers) => {
      return answersToPressure(forecasts, chapter, { situation: 'first_ten', rushers }) ?? [];
    }) as [NonNullable<ReturnType<typeof answersToPressure>>, NonNullable<ReturnType<typeof answersToPressure>>];
    const share = (answers: typeof five, name: string) =>
      answers.find(({ answer }) => answer === name)?.share as number;
    expect(five.reduce((sum, answer) => sum + answer.share, 0)).toBeCloseTo(1, 12);
    expect(share(five, 'screen')).toBeGreaterThan(1.3 * share(four, 'screen'));
    expect(share(five, 'run')).toBeCloseTo(five.find(({ answer }) => answer === 'run')?.forecast as number, 12);
  });
});

describe('rushGroupOf', () => {
  it('groups as a coach counts, and nobody rushes none or one', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 8].map(rushGroupOf)).toEqual([
      undefined,
      undefined,
      'three_or_fewer',
      'three_or_fewer',
      'four',
      'five',
      'six_or_more',
      'six_or_more',
    ]);
  });
});
