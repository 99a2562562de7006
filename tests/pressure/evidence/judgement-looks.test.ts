import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../src/game/film.ts';
import { ANSWERS, FAMILIES } from '../../../src/game/vocabulary.ts';
import { answerHabits } from '../../../src/pressure/evidence/judgement-habits.ts';
import { LOOK_PARTS, LOOK_REACHES, lookRow, reaches } from '../../../src/pressure/evidence/judgement-look-parts.ts';
import {
  LOOK_PRIOR_SNAPS,
  lookMarks,
  lotsOf,
  meanShares,
  readLooks,
} from '../../../src/pressure/evidence/judgement-looks.ts';
import { type SheetRow, sheetMark } from '../../../src/pressure/evidence/judgement-sheet.ts';
import { countedForecast, inventedRecords, inventedSettings } from '../invented-offense.ts';

const CUTS = inventedSettings().situations;
const looksOf = (records: Parameters<typeof filmFromRecords>[0]) => {
  const chart = filmFromRecords(records);
  return readLooks(chart, countedForecast(chart), CUTS);
};

describe('the parts of the look', () => {
  it('have typical shares that sum to 1 and rows that point at a class', () => {
    for (const part of LOOK_PARTS) {
      expect(part.typical.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      for (const row of part.rows) expect(part.typical[row.index]).toBeGreaterThan(0);
    }
  });

  it('give wide and inside releases the same lot, so that more of one never helps by less of the other', () => {
    const lot = (row: SheetRow) => LOOK_PARTS[lookRow(row).part]?.rows.find((entry) => entry.row === row)?.lot;
    expect(lot('releases_wide')).toBe(lot('releases_inside'));
  });
});

describe('looks nobody charted', () => {
  it('are typical, mark nobody, and are not taken for "no"', () => {
    const looks = looksOf([{ down: 1, to_go: 10, play_kind: 'run' }]);
    for (const reach of LOOK_REACHES) {
      for (const mark of lookMarks(looks.all.map(meanShares), reach)) expect(mark).toBeCloseTo(0, 12);
    }
    expect(looks.film.every((counts) => counts.every((count) => count === 0))).toBe(true);
  });
});

describe('crossers', () => {
  const { part, index } = lookRow('crossers');
  const passes = (concept: string, count: number) =>
    Array.from({ length: count }, () => ({ play_kind: 'dropback', concept }));

  it('are counted over passes of a file that names one', () => {
    const runs = Array.from({ length: 9 }, () => ({ play_kind: 'run', concept: 'power' }));
    const film = looksOf([...passes('mesh', 3), ...passes('verticals', 5), ...runs]).film[part];
    expect(Array.from(film ?? [])).toEqual([3, 5]);
  });

  it('are not charted, rather than none, in a file whose concepts never name one', () => {
    const looks = looksOf(passes('dropback', 40));
    expect(Array.from(looks.film[part] ?? [])).toEqual([0, 0]);
    expect(meanShares(looks.all[part] ?? [])[index]).toBeCloseTo(LOOK_PARTS[part]?.typical[index] ?? 0, 12);
  });
});

describe('a forecast without a snap of theirs', () => {
  it('marks nobody: what is typical stands', () => {
    const chart = filmFromRecords([{ down: 1, to_go: 10, play_kind: 'dropback' }]);
    const counted = countedForecast(chart);
    const forecasts = counted.forecasts.map((entry) =>
      entry.target === 'protectors'
        ? { ...entry, ownSnaps: 0, classes: entry.classes.map((one) => ({ ...one, alpha: 0.7 })) }
        : entry,
    );
    const looks = readLooks(chart, { ...counted, forecasts }, CUTS);
    const { part, index } = lookRow('max_protection');
    expect(meanShares(looks.all[part] ?? [])[index]).toBeCloseTo(LOOK_PARTS[part]?.typical[index] ?? 0, 12);
  });
});

describe('charted looks', () => {
  it('count their snaps on top of eight typical ones', () => {
    const looks = looksOf(Array.from({ length: 12 }, () => ({ down: 1, to_go: 10, receivers: '3x1' })));
    const { part, index } = lookRow('trips');
    const typical = LOOK_PARTS[part]?.typical[index] ?? 0;
    expect(meanShares(looks.all[part] ?? [])[index]).toBeCloseTo(
      (12 + LOOK_PRIOR_SNAPS * typical) / (12 + LOOK_PRIOR_SNAPS),
      12,
    );
    expect(looks.film[part]?.[index]).toBe(12);
  });

  it('keep a situation apart from the whole as far as its snaps go', () => {
    const trips = Array.from({ length: 30 }, () => ({ down: 3, to_go: 9, receivers: '3x1' }));
    const balanced = Array.from({ length: 30 }, () => ({ down: 1, to_go: 10, receivers: '2x2' }));
    const looks = looksOf([...trips, ...balanced]);
    const { part, index } = lookRow('trips');
    const share = (id: string) => meanShares(looks.situations.get(id)?.[part] ?? [])[index] ?? 0;
    expect(share('third_long')).toBeGreaterThan(0.8);
    expect(share('first_ten')).toBeLessThan(0.2);
    expect(share('fourth_long')).toBeCloseTo(meanShares(looks.all[part] ?? [])[index] ?? 0, 12);
  });

  it("take the back's job from its forecast", () => {
    const looks = looksOf(inventedRecords({ backAction: { releases_wide: 100 } }));
    const { part, index } = lookRow('releases_wide');
    expect(meanShares(looks.all[part] ?? [])[index]).toBeCloseTo(1, 12);
  });
});

describe('the marks of looks', () => {
  it("give a family its row's mark in full at a lot more than typical", () => {
    for (const part of LOOK_PARTS) {
      for (const row of part.rows) {
        expect(lotsOf(part, row, (part.typical[row.index] ?? 0) + row.lot)).toBeCloseTo(1, 12);
        expect(lotsOf(part, row, part.typical[row.index] ?? 0)).toBe(0);
      }
    }
  });

  it('are linear: two offenses mixed earn the mix of their marks', () => {
    const alphas = LOOK_PARTS.map((part) =>
      fc.array(fc.double({ min: 0.1, max: 9, noNaN: true }), {
        minLength: part.typical.length,
        maxLength: part.typical.length,
      }),
    );
    fc.assert(
      fc.property(fc.tuple(...alphas), fc.tuple(...alphas), (one, other) => {
        const [left, right] = [one.map((a) => meanShares(a)), other.map((a) => meanShares(a))];
        const mixed = left.map((shares, i) => shares.map((share, k) => (share + (right[i]?.[k] ?? 0)) / 2));
        const marks = [left, right, mixed].map((shares) => lookMarks(shares, 'pass'));
        FAMILIES.forEach((_, f) => {
          expect(marks[2]?.[f]).toBeCloseTo(((marks[0]?.[f] ?? 0) + (marks[1]?.[f] ?? 0)) / 2, 9);
        });
      }),
      { numRuns: 40 },
    );
    expect(sheetMark('back_in', 'add_on')).toBe(2);
  });
});

describe('what a look bears on', () => {
  // A safety from depth never beats a quick throw (computed from the sprint figures), and nobody scrambles on one.
  it('is the held ball alone for who stays in and for scrambles, every pass for where the back goes', () => {
    const reachOf = (row: SheetRow) =>
      LOOK_PARTS[lookRow(row).part]?.rows.find((entry) => entry.row === row)?.reach ?? 'set';
    for (const row of ['back_in', 'max_protection', 'quarterback_run'] as const) {
      expect(ANSWERS.filter((answer) => reaches(reachOf(row), answer))).toEqual(['dropback', 'deep_shot', 'movement']);
    }
    expect(reaches(reachOf('releases_wide'), 'quick')).toBe(true);
    expect(reaches(reachOf('releases_wide'), 'screen')).toBe(false);
    expect(reaches(reachOf('trips'), 'run')).toBe(true);
  });

  it('counts scrambles over held balls, so that more screens and runs never make a quarterback less of a runner', () => {
    const held = [
      ...Array.from({ length: 8 }, () => ({ play_kind: 'dropback', result: 'complete' })),
      ...Array.from({ length: 2 }, () => ({ play_kind: 'dropback', result: 'scramble' })),
    ];
    const others = Array.from({ length: 40 }, (_, i) => ({
      play_kind: ['run', 'screen', 'quick'][i % 3] as string,
      result: 'complete',
    }));
    const { part, index } = lookRow('quarterback_run');
    expect(looksOf([...held, ...others]).film[part]?.[index]).toBe(2);
    expect(meanShares(looksOf([...held, ...others]).all[part] ?? [])[index]).toBe(
      meanShares(looksOf(held).all[part] ?? [])[index],
    );
  });
});

describe('how screens and runs split', () => {
  it('is typical where neither release times nor concepts were charted', () => {
    const habits = answerHabits(filmFromRecords([{ play_kind: 'screen' }, { play_kind: 'run' }]));
    expect(habits).toEqual({ slowScreens: 0.5, draws: 0.05 });
  });

  it('follows the release time at 1.8 seconds, the dip between the two humps of screens in open data', () => {
    const screens = (seconds: number) =>
      filmFromRecords(Array.from({ length: 8 }, () => ({ play_kind: 'screen', time_to_throw: seconds })));
    expect(answerHabits(screens(1.3)).slowScreens).toBeCloseTo(0.25, 12);
    expect(answerHabits(screens(2.3)).slowScreens).toBeCloseTo(0.75, 12);
  });

  it('is typical where a file names no draw at all: nobody told them apart', () => {
    const runs = Array.from({ length: 30 }, () => ({ play_kind: 'run', concept: 'power' }));
    expect(answerHabits(filmFromRecords(runs)).draws).toBeCloseTo(0.05, 12);
  });

  it('takes a draw from the name of the concept', () => {
    const runs = ['draw', 'lead draw', 'power', 'zone'].map((concept) => ({ play_kind: 'run', concept }));
    expect(answerHabits(filmFromRecords(runs)).draws).toBeCloseTo((2 + 0.4) / 12, 12);
  });
});
