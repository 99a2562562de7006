import { describe, expect, it } from 'vitest';
import type { SituationProtection } from '../../src/pressure/protection/protection-result.ts';
import { protectionSituationTable } from '../../src/report/view/protection-situation-table.ts';
import { unraced } from '../pressure/invented-offense.ts';

const { mix } = unraced();
const LONG: SituationProtection = {
  situation: 'third_long',
  charted: { protectors: 31, slide: 28, back: 30 },
  protectors: [0.2, 0.65, 0.1, 0.05],
  slideToBack: 0.17,
  backWide: 0.12,
};

describe('protection by situation on the page', () => {
  it('gives shares as percent with the counts behind them, and calls thin what is thin', () => {
    const thin = { ...LONG, situation: 'fourth_long', charted: { protectors: 2, slide: 2, back: 1 } };
    const table = protectionSituationTable({ ...mix, situations: [LONG, thin] });
    expect(table.rows[0]).toMatchObject({ name: '3rd and long', situation: 'third_long' });
    expect(table.rows[0]?.cells.map(({ text }) => text)).toEqual(['20%', '65%', '15%', '17%', '12%', '31, 28, 30']);
    expect(table.rows.map((row) => row.thin)).toEqual([undefined, true]);
    expect(table.rows.every(({ cells }) => cells.length === table.columns.length - 1)).toBe(true);
  });

  it('says so where one mix stands for all', () => {
    const table = protectionSituationTable(mix);
    expect(table.rows).toEqual([]);
    expect(table.empty).toContain('the one mix stands for every situation');
  });
});
