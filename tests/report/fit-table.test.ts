import { expect, it } from 'vitest';
import type { FamilyFit, FitChapter } from '../../src/pressure/fit/fit-result.ts';
import { fitMatrix } from '../../src/report/view/fit-table.ts';
import { inventedPlan } from './invented-plan.ts';

const share = (mean: number) => ({ mean, low: mean, high: mean });

/** Hot over all snaps and on third and long, right on two of ten, where this share cannot be judged. */
function fitWith(unknown: number): FitChapter {
  const hot = {
    family: 'hot',
    right: share(0.2),
    wrong: share(0),
    net: share(0.2),
    neutral: share(0.8 - unknown),
    unknown,
    rules: [],
    notCharted: [],
  };
  const families = ['all', 'third_long'].map((situation): FamilyFit => ({ ...hot, family: 'hot', situation }));
  return { families, calls: [], breakEvens: [], charting: [], rules: [], adjustments: [] } as unknown as FitChapter;
}

it.each([
  [0.2, { text: '2.0', state: 'filled' }],
  [0.6, { text: 'not charted', state: 'none' }],
])('with %d of the snaps open, the cell of fit is %o', (unknown, cell) => {
  const { drawing } = fitMatrix(inventedPlan(), fitWith(unknown));
  const cells = drawing?.kind === 'grid' ? drawing.grid.rows.flatMap((row) => row.cells) : [];
  expect(cells).toMatchObject([cell]);
});
