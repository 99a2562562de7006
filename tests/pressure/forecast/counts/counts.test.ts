import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Film, filmFromRecords, type SnapRecord } from '../../../../src/game/film.ts';
import { weekSettingsSchema } from '../../../../src/game/week-settings.ts';
import { countChart } from '../../../../src/pressure/forecast/counts/count-chart.ts';
import { readCounts } from '../../../../src/pressure/forecast/counts/count-reading.ts';
import { COUNT_COLUMNS, type CountRow, countedSnaps } from '../../../../src/pressure/forecast/counts/count-row.ts';
import { forecastWeek } from '../../../../src/pressure/forecast/week/forecast.ts';
import { tallyRule } from '../../../../src/season/tally-words.ts';

const settings = weekSettingsSchema.parse({ opponent: 'Harrow Creek' });
const cuts = settings.situations;

const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: undefined, freq: 3 });
const word = (...words: string[]) => maybe(fc.constantFrom(...words));
const number = (min: number, max: number) => maybe(fc.integer({ min, max }));
const snap = fc.record({
  offense: fc.constantFrom('Alder Point', 'Copper Fork', 'Larkmoor'),
  game: fc.constantFrom('first', 'second'),
  down: number(1, 4),
  to_go: number(1, 20),
  ball_on: number(1, 99),
  quarter: number(1, 4),
  clock: number(0, 720),
  score_margin: number(-30, 30),
  play_kind: word('run', 'quarterback_run', 'pass', 'screen', 'quick', 'play_action', 'scramble'),
  time_to_throw: maybe(fc.constantFrom(1.5, 2.2, 3.1)),
  target_depth: number(-3, 40),
  motion: word('none', 'fast'),
  protectors: number(4, 8),
  slide: word('left', 'full_right', 'man'),
  strength: word('left', 'right', 'none'),
  back_spot: word('strong', 'weak', 'behind'),
  hash: word('left', 'middle', 'right'),
  back_action: word('blocks', 'releases_wide', 'none'),
  result: word('rush', 'sack', 'scramble', 'complete'),
});
const film = (least: number, most: number) =>
  fc.array(snap, { minLength: least, maxLength: most }).map((snaps) => filmFromRecords(snaps as SnapRecord[], 'film'));

const forecastFrom = (chart: Film, archive: Film | null, counts: readonly CountRow[]) => {
  const { forecasts, archive: part } = forecastWeek({ chart, archive, counts, settings });
  return { forecasts, part };
};

describe('tallies in place of an archive', () => {
  it('give the very forecasts of the archive they were counted on', () => {
    fc.assert(
      fc.property(film(1, 20), film(1, 50), (chart, archive) => {
        expect(forecastFrom(chart, null, countChart(archive, cuts))).toEqual(forecastFrom(chart, archive, []));
      }),
      { numRuns: 12 },
    );
  });

  it('give them too when other offenses are in the archive as film', () => {
    fc.assert(
      fc.property(film(1, 20), fc.array(snap, { minLength: 2, maxLength: 50 }), (chart, snaps) => {
        const of = (isCounted: (offense: string) => boolean) =>
          filmFromRecords(snaps.filter(({ offense }) => isCounted(offense)) as SnapRecord[], 'film');
        const filmed = of((offense) => offense !== 'Larkmoor');
        const counts = countChart(
          of((offense) => offense === 'Larkmoor'),
          cuts,
        );
        // Nobody's words in one offense's snaps decide how another's are read: screens are told apart by file.
        fc.pre(snaps.every(({ play_kind }) => play_kind !== 'screen'));
        const whole = filmFromRecords(
          [...snaps].sort(
            (a, b) => Number(a.offense === 'Larkmoor') - Number(b.offense === 'Larkmoor'),
          ) as SnapRecord[],
          'film',
        );
        expect(forecastFrom(chart, filmed, counts)).toEqual(forecastFrom(chart, whole, []));
      }),
      { numRuns: 12 },
    );
  });

  it('are sums: those of two films are those of both films, added up', () => {
    fc.assert(
      fc.property(film(0, 30), film(0, 30), (one, other) => {
        const rows = [...countChart(one, cuts), ...countChart(other, cuts)];
        expect(countedSnaps(rows)).toBe(one.size + other.size);
        const chart = filmFromRecords([{ down: 1, to_go: 10, play_kind: 'run' }]);
        const added = new Map<string, CountRow>();
        for (const row of rows) {
          const key = JSON.stringify({ ...row, count: 0 });
          added.set(key, { ...row, count: row.count + (added.get(key)?.count ?? 0) });
        }
        expect(forecastFrom(chart, null, [...added.values()])).toEqual(forecastFrom(chart, null, rows));
      }),
      { numRuns: 12 },
    );
  });
});

describe('a file of tallies', () => {
  const cellsOf = (rows: readonly CountRow[]) => [
    [...COUNT_COLUMNS],
    ...rows.map((row) => COUNT_COLUMNS.map((name) => String(row[name]))),
  ];
  const fine = ['Larkmoor', 'third_long', 'normal', 'screen', 'screen', '4'];
  const problemsOf = (...rows: string[][]) => {
    const reading = readCounts([[...COUNT_COLUMNS], ...rows]);
    return reading.kind === 'problems' ? reading.problems.map((one) => ({ ...one, rule: tallyRule(one) })) : [];
  };

  it('is read as it was written', () => {
    fc.assert(
      fc.property(film(0, 40), (chart) => {
        const rows = countChart(chart, cuts);
        expect(readCounts(cellsOf(rows))).toEqual({ kind: 'counts', rows });
      }),
      { numRuns: 20 },
    );
  });

  it('may have its columns in any order, and others besides', () => {
    const reading = readCounts([
      ['count', 'year', 'class', 'target', 'state', 'situation', 'offense'],
      ['4', '2025', 'screen', 'screen', 'normal', 'third_long', 'Larkmoor'],
      ['', '', '', '', '', '', ''],
    ]);
    expect(reading).toMatchObject({ kind: 'counts', rows: [{ offense: 'Larkmoor', class: 'screen', count: 4 }] });
  });

  it.each([
    { column: 0, value: '', rule: /names its offense/ },
    { column: 1, value: '3rd and long', rule: /third_long/ },
    { column: 2, value: 'calm', rule: /normal/ },
    { column: 3, value: 'screens', rule: /run_or_pass/ },
    { column: 4, value: 'yes', rule: /no_screen/ },
    { column: 5, value: '4.5', rule: /whole number/ },
    { column: 5, value: '-1', rule: /whole number/ },
    { column: 5, value: '', rule: /whole number/ },
  ])('with "$value" in column $column is refused, by row, column and rule', ({ column, value, rule }) => {
    const faulty = fine.map((cell, i) => (i === column ? value : cell));
    expect(problemsOf(fine, faulty)).toMatchObject([
      { row: 3, place: column, column: COUNT_COLUMNS[column], found: value, rule: expect.stringMatching(rule) },
    ]);
  });

  it('without a column says which', () => {
    const reading = readCounts([['offense', 'situation', 'state', 'target', 'class', 'number']]);
    const problems = reading.kind === 'problems' ? reading.problems : [];
    expect(problems).toMatchObject([{ row: 1, column: 'count', words: ['number'] }]);
    expect(problems.map(tallyRule)).toEqual([expect.stringContaining('has no column "count"')]);
  });
});
