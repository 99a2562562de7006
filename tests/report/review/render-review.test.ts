import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { type Review, reviewWeek } from '../../../src/pressure/review/review.ts';
import { seasonOf } from '../../../src/pressure/review/season.ts';
import { renderReport } from '../../../src/report/render-report.ts';
import { renderReview } from '../../../src/report/review/render-review.ts';
import { renderSeason } from '../../../src/report/review/render-season.ts';
import { clearWords, reviewSentences } from '../../../src/report/review/review-words.ts';
import { seasonSentences } from '../../../src/report/review/season-words.ts';
import { seasonChart } from '../../../src/report/view/season-chart.ts';
import { mondayCalls } from '../../../src/report/words/monday-words.ts';
import { share } from '../../../src/stats/share.ts';
import { inventedPlan } from '../../report/invented-plan.ts';

const plan = inventedPlan({ opponent: '<b>Hill & Dale</b>' });
const game = filmFromRecords(
  Array.from({ length: 30 }, (_, i) => ({
    game: 'Friday',
    down: 1 + (i % 3),
    to_go: 10,
    play_kind: ['run', 'screen', 'dropback'][i % 3] ?? 'run',
  })),
);
const ours = filmFromRecords(
  Array.from({ length: 12 }, () => ({
    down: 1,
    to_go: 10,
    play_kind: 'dropback',
    call: 'Rake',
    family: 'three_under',
    path: 'rake',
    coverage: 'three deep',
    gain: 3,
  })),
);
const reviewOf = (week: string): Review =>
  reviewWeek({ plan, week, sunday: 'saved', game, ours, film: game, archive: null, earlierFilm: ours });
const reviews = ['week-01', 'week-02', 'week-03'].map(reviewOf);
const first = reviewOf('week-01');

describe('the report of a season with finished games', () => {
  it('draws forecast against what happened once a game was reviewed, and nothing before', async () => {
    const report = await renderReport(plan, { reviews });
    expect(report).toMatch(/<figure id="season-forecasts">[\s\S]*<svg[\s\S]*<\/figure>/);
    for (const { week } of reviews) expect(report).toContain(`${week}: runs`);
    expect(await renderReport(plan)).not.toContain('season-forecasts');
  });
});

describe('the review page', () => {
  it('is whole, asks for nothing outside, and escapes names', async () => {
    const page = await renderReview(first);
    expect(page).toMatch(/^<!doctype html>[\s\S]*<\/html>\n$/);
    expect(page).not.toMatch(/(?:src|href)="(?!#|data:)/);
    expect(page).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b|<b>Hill/);
    expect(page).toContain('One game proves nothing');
    expect(page).toContain('Invented demonstration data');
    expect(page).toContain('licensed athletic trainers');
    expect(page).toContain('creativecommons.org/licenses/by-sa/4.0');
    expect(await renderReview(first)).toBe(page);
  });

  it('calls a game of twelve graded snaps thin and says what luck alone does', () => {
    const said = reviewSentences(first).join(' ');
    expect(said).toMatch(
      /Graded all 12 snaps: [\d.]+ points (?:better|worse) than expected; luck alone is plus or minus \d/,
    );
    expect(said).toMatch(/on 12 of 12 \(100%\) \(thin\); a blind guess gets \d/);
    expect(said).toMatch(/Counts overlap, so this is not a test/);
  });

  it('says so when our calls were not charted and when the film held the game', () => {
    const lacking = reviewSentences({ ...first, grades: null, guesses: null, seenBefore: ['Friday'] }).join(' ');
    expect(lacking).toContain('Our own calls are not charted');
    expect(lacking).toContain('already held Friday, so that part is not a forecast');
  });
});

describe('keep, fix, drop', () => {
  const gradedAs = (count: number, marks: readonly ('right' | 'wrong')[]): Review => {
    const [call] = first.grades?.calls ?? [];
    if (!call || !first.grades) throw new Error('the invented game is graded');
    const snaps = marks.map((mark, i) => ({
      row: i,
      snap: i,
      call: call.name,
      family: 'three_under' as const,
      mark,
      rules: [],
      held: null,
    }));
    const none = { count: 0, trials: 0, estimate: null, low: 0, high: 1 };
    return {
      ...first,
      grades: { ...first.grades, calls: [{ ...call, held: { ...call.held, count, trials: 6, estimate: count / 6 } }] },
      fit: { snaps, right: none, neutral: none, wrong: none, open: 0, rules: [], notAsked: [] },
    };
  };
  const kinds = (review: Review) =>
    Object.entries(mondayCalls([review])).flatMap(([kind, list]) => list.map(() => kind));

  it('keeps what holds, fixes what does not hold on the right snaps, drops what was called into the wrong ones', () => {
    expect(kinds(gradedAs(5, []))).toEqual(['keep']);
    expect(kinds(gradedAs(3, ['right']))).toEqual(['between']);
    expect(kinds(gradedAs(1, ['right', 'right', 'wrong']))).toEqual(['fix']);
    expect(kinds(gradedAs(1, ['wrong', 'wrong', 'right']))).toEqual(['drop']);
  });

  it('names the calls that came out in between, so that none is missing', async () => {
    const review = gradedAs(3, ['right']);
    const [call] = review.grades?.calls ?? [];
    if (!call || !review.grades) throw new Error('the invented game is graded');
    const two = { ...review, grades: { ...review.grades, calls: [call, { ...call, name: 'Torch' }] } };
    const page = (await renderReview(two)).replaceAll(/<[^>]+>/g, '');
    expect(page).toContain(
      'In between, carry on: Rake held 3 of 6 (50%); right call on 1, wrong on 0; Torch held 3 of 6 (50%).',
    );
  });

  it('stands on top of Monday’s page', async () => {
    const page = await renderReview(gradedAs(5, ['right']));
    expect(page.indexOf('<h2>Keep</h2>')).toBeGreaterThan(0);
    expect(page.indexOf('<h2>Keep</h2>')).toBeLessThan(page.indexOf('The forecast beat'));
    expect(page).toContain('held 5 of 6 (83%); right call on 1, wrong on 0');
  });
});

describe('the season page', () => {
  it('is whole with one game and with three, and calls one game a first look', async () => {
    for (const list of [[first], reviews]) {
      const page = await renderSeason(seasonOf(list, []), list);
      expect(page).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b/);
      expect(page).toContain('<svg');
    }
    expect(seasonSentences(seasonOf([first], []))[0]).toMatch(/Under 3 games this is a first look/);
    expect(seasonSentences(seasonOf(reviews, ['week-00'])).join(' ')).toMatch(/Not reviewed yet: week-00/);
  });

  it.each([
    [1.1, 0.1, 'about as bold as they should be (slope 1.10, 1 is ideal); what was asked about came about as often'],
    [0.6, 0.5, 'too bold (slope 0.60, 1 is ideal); what was asked about came more often than said'],
    [1.6, -0.5, 'too careful (slope 1.60, 1 is ideal); what was asked about came less often than said'],
    [null, null, '400 yes-or-no forecasts: too few to say'],
  ])(
    'says of slope %s and shift %s whether forecasts were as sure and as high as they should be',
    (slope, inTheLarge, said) => {
      const season = seasonOf(reviews, []);
      const [bin] = season.bins;
      if (!bin) throw new Error('the reviewed games have forecasts');
      const bins = [{ ...bin, came: share(200, 400) }];
      expect(seasonSentences({ ...season, bins, line: { slope, inTheLarge, intercept: null } }).at(-1)).toContain(said);
    },
  );

  it('says what hurt us once a situation was beaten, and has no heading over nothing', async () => {
    expect(await renderSeason(seasonOf(reviews, []), reviews)).not.toContain('What hurt us');
    const beaten = { name: 'third_long', beaten: share(3, 5), bigPlays: 0, snaps: ['3', '9', '20'] };
    const hurt = [{ ...first, hurt: { plays: [], calls: [], situations: [beaten] } }];
    const page = await renderSeason(seasonOf(hurt, []), hurt);
    expect(page).toContain('<h2>What hurt us</h2><ul><li>3rd and long: beaten on 3 of 5 (60%).</li></ul>');
  });

  it('says so without any review', async () => {
    const page = await renderSeason(seasonOf([], []), []);
    expect(page).toContain('0 games reviewed');
    expect(page).not.toMatch(/\bNaN\b|\bundefined\b/);
  });
});

describe('what is beyond its error', () => {
  it('is counted either way, never as better alone', () => {
    expect(clearWords([{ difference: -1 }, { difference: 1 }, { difference: 2 }])).toBe(
      'clearly better on 1, clearly worse on 2',
    );
    expect(clearWords([])).toBe('no clear difference on any');
  });

  it('over three games takes more than four standard errors (Student’s t, 2 degrees of freedom: 4.303, any table)', () => {
    const season = seasonOf(reviews, []);
    const [target] = season.targets;
    if (!target) throw new Error('the invented season forecasts something');
    const said = (difference: number) =>
      seasonSentences({ ...season, targets: [{ ...target, difference, standardError: 0.1 }] })[4];
    expect(said(-0.43)).toContain('no clear difference on any');
    expect(said(-0.431)).toContain('clearly better on 1, clearly worse on 0');
    expect(said(0.431)).toContain('clearly better on 0, clearly worse on 1');
  });
});

describe('forecast against what happened over the season', () => {
  it('draws a row for each question and game that was charted, with its table', () => {
    const chart = seasonChart(reviews);
    expect(chart.table.rows.length).toBe(6);
    expect(chart.table.rows[0]?.cells[2]?.text).toBe('10 of 30');
    expect(chart.drawing).toMatchObject({ kind: 'strips', axis: { domain: [0, 1] } });
    expect(seasonChart([])).toMatchObject({ drawing: null, empty: expect.stringContaining('No finished game') });
  });
});
