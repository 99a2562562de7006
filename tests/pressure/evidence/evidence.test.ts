import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filmFromRecords, type SnapRecord } from '../../../src/game/film.ts';
import { ANSWERS, type Answer, FAMILIES, type Family } from '../../../src/game/vocabulary.ts';
import { cellWorth, joinEvidence, meanOutcomes } from '../../../src/pressure/evidence/evidence.ts';
import { cellIndex } from '../../../src/pressure/evidence/evidence-cell.ts';
import { countOwnFilm } from '../../../src/pressure/evidence/evidence-own-film.ts';
import { baseShares, openEvidence } from '../../../src/pressure/evidence/open-data.ts';
import { inventedSettings } from '../invented-offense.ts';

const HABITS = { slowScreens: 0.5, draws: 0.05 };
const cellOf = (family: Family, answer: Answer) => cellIndex(FAMILIES.indexOf(family), ANSWERS.indexOf(answer));

function joined(records: readonly SnapRecord[] = [], weights = { judgement_snaps: 12, open_data: 1, own_film: 1 }) {
  const settings = inventedSettings({ weights });
  const ownFilm = countOwnFilm(filmFromRecords(records), null, settings.situations);
  return joinEvidence({ settings, ownFilm, habits: HABITS });
}

const zeroScreens = (count: number, gain: number): SnapRecord[] =>
  Array.from({ length: count }, () => ({
    family: 'zero',
    play_kind: 'screen',
    down: 1,
    to_go: 10,
    gain,
    result: 'complete',
  }));

describe('the joined evidence of a cell', () => {
  it('is worth twelve judged snaps, the open-data size and every own snap', () => {
    const evidence = joined(zeroScreens(5, 30));
    const cell = cellOf('zero', 'screen');
    const size = openEvidence('zero', 'screen', 'high_school')?.size ?? 0;
    expect(evidence.judgement[cell]).toBe(12);
    expect(evidence.openData[cell]).toBeCloseTo(size, 12);
    expect(evidence.ownFilm[cell]).toBe(5);
    expect(cellWorth(evidence, cell)).toBeCloseTo(17 + size, 12);
  });

  it('updates as (own count + size x share) / (own snaps + size), the rule of the open-data table', () => {
    const evidence = joined(zeroScreens(12, 30), { judgement_snaps: 0, open_data: 1, own_film: 1 });
    const cell = cellOf('zero', 'screen');
    const open = openEvidence('zero', 'screen', 'high_school');
    const size = open?.size ?? 0;
    expect(meanOutcomes(evidence, cell)[3]).toBeCloseTo((12 + size * (open?.shares[3] ?? 0)) / (12 + size), 12);
    expect(12 / (12 + size)).toBeGreaterThan(0.3); // twelve own snaps carry about a third of the weight
  });

  it('has nothing but judgement on runs and for the spy', () => {
    const evidence = joined();
    for (const cell of [cellOf('zero', 'run'), cellOf('base', 'quarterback_run'), cellOf('peel_spy', 'dropback')]) {
      expect(evidence.openData[cell]).toBe(0);
      expect(cellWorth(evidence, cell)).toBe(12);
    }
  });

  it("holds the base's outcomes for one snap where nothing speaks at all", () => {
    const evidence = joined([], { judgement_snaps: 0, open_data: 0, own_film: 1 });
    for (let cell = 0; cell < evidence.judgement.length; cell++) expect(cellWorth(evidence, cell)).toBe(1);
    const cell = cellOf('add_on', 'screen');
    meanOutcomes(evidence, cell).forEach((share, kind) => {
      expect(share).toBeCloseTo(baseShares('screen')[kind] ?? 0, 12);
    });
  });

  it('takes a mark for the same in every cell, measured or not', () => {
    const shiftOf = (family: Family, marked: ReturnType<typeof joined>, plain: ReturnType<typeof joined>) =>
      (meanOutcomes(marked, cellOf(family, 'dropback'))[0] ?? 0) -
      (meanOutcomes(plain, cellOf(family, 'dropback'))[0] ?? 0);
    const marked = joined();
    const unmarked = unmarkedCells(marked);
    // Three-under and the spy are both marked +1 against the held ball; only one of them is in open data.
    expect(shiftOf('three_under', marked, unmarked)).toBeCloseTo(shiftOf('peel_spy', marked, unmarked), 12);
    expect(shiftOf('add_on', marked, unmarked)).toBeCloseTo(2 * shiftOf('hot', marked, unmarked), 12);
  });

  it('is a distribution for every weight a coach may set', () => {
    const weights = fc.record({
      judgement_snaps: fc.double({ min: 0, max: 200, noNaN: true }),
      open_data: fc.double({ min: 0, max: 5, noNaN: true }),
      own_film: fc.double({ min: 0, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(weights, (given) => {
        const evidence = joined(zeroScreens(2, 3), given);
        for (let cell = 0; cell < evidence.judgement.length; cell++) {
          const shares = meanOutcomes(evidence, cell);
          expect(Math.min(...shares)).toBeGreaterThan(0);
          expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        }
      }),
      { numRuns: 40 },
    );
  });
});

/** The same evidence with the judged part at the base's shares: what no mark at all would give. */
function unmarkedCells(evidence: ReturnType<typeof joined>): ReturnType<typeof joined> {
  const alphas = evidence.alphas.slice();
  FAMILIES.forEach((family) => {
    const cell = cellOf(family, 'dropback');
    const open = openEvidence(family, 'dropback', 'high_school');
    baseShares('dropback').forEach((share, kind) => {
      alphas[cell * 5 + kind] = 12 * share + (open?.size ?? 0) * (open?.shares[kind] ?? 0);
    });
  });
  return { ...evidence, alphas };
}
