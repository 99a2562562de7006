import { describe, expect, it } from 'vitest';
import type { IntervalAxis, IntervalRow } from '../../src/report/chart/interval-row.ts';
import { stripDrawing, stripPlace } from '../../src/report/chart/strip.ts';
import { tintClass } from '../../src/report/layout/grid.ts';

const SHARES: IntervalAxis = { title: 'of snaps', domain: [0, 1], format: 'percent', reference: null };
const row = (changes: Partial<IntervalRow> = {}): IntervalRow => ({
  id: 'a',
  label: 'Screens',
  note: '26 of 113 (23%)',
  state: 'solid',
  value: 0.23,
  low: 0.16,
  high: 0.32,
  second: null,
  ...changes,
});

/** The strip is 300 wide with an edge of 7, so 0 stands at 7, 1 at 293 and a share s at 7 + 286 s. */
const at = (share: number) => Math.round((7 + 286 * share) * 10) / 10;

describe('stripPlace', () => {
  it('puts both ends of the scale at its ends, the middle in the middle, and nothing beyond', () => {
    expect([0, 0.5, 1, -3, 4].map((value) => stripPlace(value, [0, 1]))).toEqual([7, 150, 293, 7, 293]);
    expect([-2, 0, 2].map((value) => stripPlace(value, [-2, 2]))).toEqual([7, 150, 293]);
  });
});

describe('stripDrawing', () => {
  it('draws the dot at the value and the bar from the low to the high end', () => {
    const svg = stripDrawing(row(), SHARES);
    expect(svg).toContain(`<circle class="dot" cx="${at(0.23)}" cy="10" r="5"/>`);
    expect(svg).toContain(`<path class="range" d="M${at(0.16)},10H${at(0.32)}"/>`);
    expect(svg).toContain(`M${at(0.16)},6v8M${at(0.32)},6v8`);
  });

  it('draws a gray tick for each other offense at its own place', () => {
    const svg = stripDrawing(row({ others: [0.05, 0.1, 0.18] }), SHARES);
    expect(svg).toContain(`<path class="others" d="M${at(0.05)},4v12M${at(0.1)},4v12M${at(0.18)},4v12"/>`);
    expect(stripDrawing(row(), SHARES)).not.toContain('others');
  });

  it('opens the dot and dashes the bar of a thin row, and hatches one without snaps', () => {
    const thin = stripDrawing(row({ state: 'thin' }), SHARES);
    expect(thin).toMatch(/class="range thin".*class="open"/);
    const none = stripDrawing(row({ state: 'none' }), SHARES);
    expect(none).toContain('hatched');
    expect(none).not.toMatch(/class="(?:dot|open|range)/);
  });

  it('stands the second value and the reference rule where they belong', () => {
    const axis: IntervalAxis = { ...SHARES, domain: [-1, 1], reference: { at: 0, label: 'the base' } };
    const svg = stripDrawing(row({ value: 0.5, low: 0, high: 1, second: -0.5 }), axis);
    expect(svg).toContain(`<path class="reference" d="M150,0V20"/>`);
    expect(svg).toContain(`<path class="second" d="M${stripPlace(-0.5, [-1, 1])},4l5,6l-5,6l-5,-6Z"/>`);
  });
});

describe('tintClass', () => {
  it('darkens with the number in five steps and stays within them', () => {
    expect([-1, 0, 0.01, 0.25, 0.26, 0.5, 0.76, 1, 9].map((strength) => tintClass(strength).text)).toEqual([
      't0',
      't0',
      't1',
      't1',
      't2',
      't2',
      't4',
      't4',
      't4',
    ]);
  });
});
