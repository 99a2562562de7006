import { expect, it } from 'vitest';
import { scoreTable } from '../../../src/report/review/review-table.ts';

const score = { target: 'screen', model: 0.5, plainRate: 0.56, rawCell: 0.7, difference: -0.06, pairs: [] } as const;

it('marks a question answered on under twenty snaps as thin, and none with twenty', () => {
  const { rows } = scoreTable([
    { ...score, snaps: 19, standardError: 0.02 },
    { ...score, snaps: 20, standardError: 0.02 },
  ]);
  expect(rows.map(({ thin }) => thin)).toEqual([true, undefined]);
  expect(rows.map(({ cells }) => cells[0]?.text)).toEqual(['19, thin', '20']);
});

it('writes the forecast beside the plainer ways, and how far from the plain rate with its error', () => {
  const [row] = scoreTable([{ ...score, snaps: 40, standardError: 0.02 }]).rows;
  expect(row?.cells.map(({ text }) => text)).toEqual(['40', '0.500', '0.560', '0.700', '−0.060, give or take 0.020']);
  const [few] = scoreTable([{ ...score, snaps: 2, standardError: null }]).rows;
  expect(few?.cells.at(-1)?.text).toBe('−0.060, too few snaps to say how far off');
});
