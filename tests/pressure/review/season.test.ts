import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS } from '../../../src/game/answers.ts';
import { FAMILIES } from '../../../src/game/families.ts';
import { filmFromRecords, joinFilms } from '../../../src/game/film.ts';
import { gradeGame } from '../../../src/pressure/review/grade.ts';
import { type Review, reviewWeek } from '../../../src/pressure/review/review.ts';
import { seasonOf } from '../../../src/pressure/review/season.ts';
import {
  calibrationBins,
  calibrationLine,
  type ForecastPair,
} from '../../../src/pressure/review/season-calibration.ts';
import { seasonFamilies } from '../../../src/pressure/review/season-family.ts';
import { guessTrend } from '../../../src/pressure/review/season-guess.ts';
import { newcombeDifference } from '../../../src/stats/difference.ts';
import { mean } from '../../../src/stats/mean.ts';
import { calibration } from '../../../src/stats/scores.ts';
import { share } from '../../../src/stats/share.ts';
import { inventedPlan } from '../../report/invented-plan.ts';

const plan = inventedPlan();
const game = (name: string, screens: number) =>
  filmFromRecords(
    Array.from({ length: 12 }, (_, i) => ({
      game: name,
      down: 1 + (i % 3),
      to_go: 10,
      play_kind: i < screens ? 'screen' : 'dropback',
    })),
  );
const calls = filmFromRecords([{ down: 1, to_go: 10, play_kind: 'run', call: 'Rake', family: 'three_under', gain: 2 }]);
const reviewOf = (week: string, screens = 2): Review =>
  reviewWeek({
    plan,
    week,
    sunday: 'saved',
    game: game(`${week} game`, screens),
    ours: calls,
    film: game('film', 3),
    archive: null,
    earlierFilm: null,
  });

describe('the review of a week', () => {
  it('is the same whether it is read back from disk or not', () => {
    const made = reviewOf('week-01');
    expect(JSON.parse(JSON.stringify(made))).toEqual(made);
    expect(made).toMatchObject({ week: 'week-01', gameSnaps: 12, seenBefore: [], guesses: null });
  });

  it('names the games that Sunday’s film held already', () => {
    const seen = reviewWeek({
      plan,
      week: 'week-01',
      sunday: 'worked_out_again',
      game: game('W02 Alder Gap', 2),
      ours: null,
      film: game('film', 3),
      archive: null,
      earlierFilm: null,
    });
    expect(seen).toMatchObject({ seenBefore: ['W02 Alder Gap'], grades: null, guesses: null });
  });

  it('takes the plan as JSON gives it back: a report.json is as good as the plan itself', () => {
    const saved = JSON.parse(JSON.stringify(plan));
    const from = (said: typeof plan) =>
      reviewWeek({
        plan: said,
        week: 'w',
        sunday: 'saved',
        game: game('g', 2),
        ours: calls,
        film: game('film', 3),
        archive: null,
        earlierFilm: null,
      });
    expect(from(saved)).toEqual(from(plan));
  });
});

describe('the season', () => {
  const reviews = [reviewOf('week-01', 2), reviewOf('week-02', 5), reviewOf('week-03', 0)];
  const season = seasonOf(reviews, ['week-04']);

  it('lists its games and those not reviewed', () => {
    expect(season.games.map(({ week }) => week)).toEqual(['week-01', 'week-02', 'week-03']);
    expect(season.notReviewed).toEqual(['week-04']);
  });

  it('weights games alike and gives no error under three of them', () => {
    const screens = season.targets.find(({ target }) => target === 'screen');
    const byGame = reviews.map(({ scores }) => scores.find(({ target }) => target === 'screen')?.difference ?? 9);
    expect(screens?.difference).toBeCloseTo(mean(byGame), 12);
    expect(screens?.yes?.came).toMatchObject({ count: 7, trials: 36 });
    expect(screens?.standardError).toBeGreaterThan(0);
    expect(seasonOf(reviews.slice(0, 2), []).targets.every(({ standardError }) => standardError === null)).toBe(true);
  });

  it('pools the ranges of all games', () => {
    const checks = reviews.flatMap(({ counts }) => counts);
    expect(season.ranges.outer.hits.trials).toBe(checks.length);
  });

  it('without a review is empty, not wrong', () => {
    expect(seasonOf([], [])).toMatchObject({
      games: [],
      targets: [],
      families: [],
      guesses: { games: [], change: null },
      line: { slope: null },
    });
  });
});

describe('kinds of pressure over the season', () => {
  const snap = fc.record({
    down: fc.integer({ min: 1, max: 4 }),
    to_go: fc.integer({ min: 1, max: 12 }),
    play_kind: fc.constantFrom(...ANSWERS),
    gain: fc.integer({ min: -8, max: 40 }),
    call: fc.constantFrom('Rake', 'Torch'),
    family: fc.constantFrom(...FAMILIES.slice(0, 3)),
  });
  const film = fc.array(snap, { minLength: 1, maxLength: 15 });

  it('games added up are graded as all their snaps together', () => {
    fc.assert(
      fc.property(film, film, (first, second) => {
        const charts = [filmFromRecords(first), filmFromRecords(second)] as const;
        const grade = (chart: (typeof charts)[number]) => gradeGame(chart, plan.scores, plan.settings.situations);
        const games = charts.map((chart) => ({ ...reviewOf('w'), grades: grade(chart) }));
        const whole = grade(joinFilms([...charts])).families;
        for (const family of seasonFamilies(games)) {
          const same = whole.find(({ name }) => name === family.name);
          expect(family.held).toEqual(same?.held);
          for (const key of ['saved', 'expected', 'low', 'high', 'overExpectation'] as const)
            expect(family[key]).toBeCloseTo(same?.[key] ?? Number.NaN, 6);
        }
      }),
      { numRuns: 15 },
    );
  });

  it('say nothing under twenty snaps or three games', () => {
    const many = filmFromRecords(
      Array(25).fill({ down: 1, to_go: 10, play_kind: 'dropback', family: 'hot', result: 'sack' }),
    );
    const one = { ...reviewOf('w'), grades: gradeGame(many, plan.scores, plan.settings.situations) };
    expect(seasonFamilies([one])[0]?.standing).toBe('too_few');
    expect(seasonFamilies([one, one, one])[0]).toMatchObject({ games: 3, standing: 'above' });
  });
});

describe('calibration over the season', () => {
  const pairs = Array.from(
    { length: 120 },
    (_, i): ForecastPair => ({ forecast: (i % 10) / 10, came: i % 3 === 0 ? 1 : 0 }),
  );

  it('puts every forecast into one fifth, the last one included', () => {
    const bins = calibrationBins([...pairs, { forecast: 1, came: 1 }]);
    expect(bins.map(({ came }) => came.trials).reduce((a, b) => a + b, 0)).toBe(121);
    expect(bins.at(-1)?.forecast).toBeGreaterThan(0.8);
    expect(calibrationBins([])[0]).toMatchObject({ forecast: null, came: { trials: 0, estimate: null } });
  });

  it('draws its line as the scoring library does, and none under a hundred forecasts', () => {
    const line = calibration(
      pairs.map(({ forecast }) => forecast),
      pairs.map(({ came }) => came),
    );
    expect(calibrationLine(pairs)).toEqual(line);
    expect(calibrationLine(pairs.slice(0, 99)).slope).toBeNull();
  });
});

describe('the guess rate over the season', () => {
  const withGuess = (week: string, count: number): Review => ({
    ...reviewOf(week),
    guesses: { read: 100, blind: share(8, 20), fromPath: share(count, 20) },
  });

  it('compares the last game with all before it by Newcombe’s interval', () => {
    const { change, games } = guessTrend([withGuess('a', 16), withGuess('b', 14), withGuess('c', 9)]);
    expect(games.length).toBe(3);
    expect(change).toEqual(newcombeDifference({ x1: 9, n1: 20, x2: 30, n2: 40 }));
    expect(change?.estimate).toBeLessThan(0);
  });

  it('one game has nothing to be compared with', () => {
    expect(guessTrend([withGuess('a', 16)]).change).toBeNull();
    expect(guessTrend([reviewOf('a')])).toEqual({ games: [], change: null });
  });
});
