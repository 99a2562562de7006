import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ANSWERS, FAMILIES } from '../../../src/game/vocabulary.ts';
import { answerMark, judgementShare, pointShift, pointsSaved } from '../../../src/pressure/evidence/judgement.ts';
import { SHEET, sheetMark } from '../../../src/pressure/evidence/judgement-sheet.ts';
import { baseShares } from '../../../src/pressure/evidence/open-data.ts';
import { outcomeValues } from '../../../src/pressure/evidence/outcome-value.ts';
import { inventedSettings } from '../invented-offense.ts';

const HALF = { slowScreens: 0.5, draws: 0 };

describe('the score sheet', () => {
  // The anchored cells of the trade's sheet; their sources are coaching clinics and articles.
  it.each([
    {
      row: 'flat_throws',
      family: 'three_under',
      mark: -1,
      source: 'Thompson and Zimmerman, American Football Monthly',
    },
    {
      row: 'max_protection',
      family: 'three_under',
      mark: -1,
      source: 'The Zone Blitz, Max Pro, and the Super Bowl, 2006',
    },
    { row: 'quick_screen', family: 'four_under', mark: 2, source: 'Blitzology, 24 May 2010' },
    { row: 'trips', family: 'four_under', mark: -2, source: 'Blitzology, 24 May 2010' },
    { row: 'crossers', family: 'man_free', mark: -2, source: 'Breakdown Sports, Cover 1 Defense, 2014' },
    { row: 'quarterback_run', family: 'man_free', mark: -2, source: 'Breakdown Sports, Cover 1 Defense, 2014' },
    { row: 'slow_screen', family: 'hot', mark: -2, source: 'Board Drill, Answers versus Hot Pressures' },
    { row: 'quick_game', family: 'hot', mark: 1, source: 'Thakkar, X&O Labs, 1 Feb 2016' },
    { row: 'releases_wide', family: 'peel', mark: 2, source: 'Blitzology, 21 Aug 2020' },
    { row: 'quarterback_run', family: 'peel_spy', mark: 2, source: 'Casey, 3-3-5 Complex Cover 1' },
    { row: 'empty', family: 'three_under', mark: -2, source: 'Kent State staff, AFCA, 9 Aug 2023' },
  ] as const)('$row marks $family $mark', ({ row, family, mark, source }) => {
    expect(sheetMark(row, family), source).toBe(mark);
  });

  it('marks between -2 and 2, and the base nowhere', () => {
    for (const row of Object.keys(SHEET) as (keyof typeof SHEET)[]) {
      expect(sheetMark(row, 'base')).toBe(0);
      for (const mark of SHEET[row]) expect(Math.abs(mark)).toBeLessThanOrEqual(2);
    }
  });
});

describe('what a sheet point does', () => {
  it('moves outcome shares without making or losing any', () => {
    for (const answer of ANSWERS) {
      expect(pointShift(baseShares(answer)).reduce((sum, move) => sum + move, 0)).toBeCloseTo(0, 12);
    }
  });

  it('raises losses by 1.35 to 1.5 for two points, as four rushers to a pressure do in open data (6.9 to 10%)', () => {
    const base = baseShares('dropback');
    const raised = ((base[0] ?? 0) + 2 * (pointShift(base)[0] ?? 0)) / (base[0] ?? 1);
    expect(raised).toBeGreaterThan(1.35);
    expect(raised).toBeLessThan(1.5);
  });

  it('never turns a share negative, even at two points one way', () => {
    for (const answer of ANSWERS) {
      const base = baseShares(answer);
      pointShift(base).forEach((move, kind) => {
        expect((base[kind] ?? 0) - 2 * Math.abs(move)).toBeGreaterThan(0);
      });
    }
  });

  it('always saves points, against every answer on every down', () => {
    for (const answer of ANSWERS) {
      for (const down of [1, 2, 3, 4]) {
        const saved = pointsSaved(pointShift(baseShares(answer)), outcomeValues(answer, down));
        expect(saved).toBeGreaterThan(0.02);
        expect(saved).toBeLessThan(0.6);
      }
    }
  });
});

describe('the mark against an answer', () => {
  it('takes screens as they split, and runs as far as they are draws', () => {
    expect(answerMark('four_under', 'screen', { slowScreens: 1, draws: 0 })).toBe(1);
    expect(answerMark('four_under', 'screen', { slowScreens: 0, draws: 0 })).toBe(2);
    expect(answerMark('hot', 'run', { slowScreens: 0, draws: 0.25 })).toBe(0.25);
  });

  it('stays between -2 and 2 for every split', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const cell = fc.tuple(fc.constantFrom(...FAMILIES), fc.constantFrom(...ANSWERS));
    fc.assert(
      fc.property(cell, share, share, ([family, answer], slowScreens, draws) => {
        expect(Math.abs(answerMark(family, answer, { slowScreens, draws }))).toBeLessThanOrEqual(2);
      }),
    );
    expect(answerMark('add_on', 'screen', HALF)).toBe(-2);
  });
});

describe("judgement's share of a cell", () => {
  const share = (judgement: number, open = 1) =>
    judgementShare(inventedSettings({ weights: { judgement_snaps: judgement, open_data: open, own_film: 1 } }));

  it('is 12 of 33 snaps as shipped, and grows with its snaps', () => {
    expect(share(12)).toBeCloseTo(12 / (12 + 21.02), 3);
    expect(share(24)).toBeGreaterThan(share(12));
    expect(share(6)).toBeLessThan(share(12));
  });

  it('is nothing at no snaps and everything without open data', () => {
    expect([share(0), share(12, 0), share(0, 0)]).toEqual([0, 1, 0]);
  });
});
