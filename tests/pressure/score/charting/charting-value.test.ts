import { describe, expect, it } from 'vitest';
import { filmFromRecords } from '../../../../src/game/film.ts';
import { chartingValues } from '../../../../src/pressure/score/charting/charting-value.ts';
import { dirichletVariance } from '../../../../src/pressure/score/charting/charting-value-variance.ts';
import { inventedRecords } from '../../invented-offense.ts';
import { plainInput } from '../expected-scores.ts';
import { inventedWeek } from '../invented-week.ts';

describe('the variance of a weighted sum of shares', () => {
  it('is that of a beta share when one class weighs 1 and the other 0', () => {
    // Beta(3, 7): variance 3 * 7 / (10^2 * 11).
    expect(dirichletVariance([3, 7], [1, 0])).toBeCloseTo(21 / 1100, 12);
  });

  it('is nothing when every class weighs alike', () => {
    expect(dirichletVariance([3, 7, 2], [5, 5, 5])).toBeCloseTo(0, 12);
  });
});

describe('the value of charting a column', () => {
  const drop = (...columns: string[]) =>
    filmFromRecords(
      inventedRecords().map((record) =>
        Object.fromEntries(Object.entries(record).filter(([key]) => !columns.includes(key))),
      ),
    );
  const valuesOf = (...columns: string[]) => {
    const chart = drop(...columns);
    const { model, week } = inventedWeek({}, plainInput({ chart }));
    return chartingValues(chart, week, model);
  };

  it('is given for columns that are not charted, and for no other', () => {
    const missing = valuesOf('receivers', 'target_zone').map(({ column }) => column);
    expect(missing).toContain('receivers');
    expect(missing).toContain('target_zone');
    expect(missing).not.toContain('personnel');
    expect(missing).not.toContain('play_kind');
  });

  it('says on how much it is charted now', () => {
    const found = valuesOf('receivers').find(({ column }) => column === 'receivers');
    expect(found?.chartedShare).toBe(0);
    expect(found?.words).toContain('charted on 0% of snaps now');
  });

  it('counts a bare pass as not charted for the answer', () => {
    const chart = filmFromRecords(inventedRecords().map((record) => ({ ...record, play_kind: 'pass' })));
    const { model, week } = inventedWeek({}, plainInput({ chart }));
    expect(chartingValues(chart, week, model).find(({ column }) => column === 'play_kind')?.chartedShare).toBe(0);
  });
});
