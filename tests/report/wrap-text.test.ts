import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/report/chart/text-width.ts';
import { wrapText } from '../../src/report/chart/wrap-text.ts';
import { cleanText } from '../../src/report/words/clean-text.ts';

describe('wrapText', () => {
  it('cuts nothing off and no line is wider than asked', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
        const lines = wrapText(text, 120, { size: 14 });
        expect(lines.join('').replaceAll(' ', '')).toBe(cleanText(text).replaceAll(' ', ''));
        for (const line of lines) expect(textWidth(line, 14)).toBeLessThanOrEqual(120);
      }),
      { numRuns: 200 },
    );
  });

  it('breaks a word that is too wide at its hyphens first', () => {
    const width = textWidth('Three-', 14) + 1;
    expect(wrapText('Three-under', width, { size: 14 })).toEqual(['Three-', 'under']);
  });

  it('gives one line for a short text and for none', () => {
    expect(wrapText('Rake', 200, { size: 14 })).toEqual(['Rake']);
    expect(wrapText('', 200, { size: 14 })).toEqual(['']);
  });
});

describe('textWidth', () => {
  it('adds the advance widths with a sixth for safety', () => {
    // Arial advance widths (hmtx table, units of 1/2048 em): H 1479, i 455.
    expect(textWidth('Hi', 100)).toBeCloseTo(((1479 + 455) / 2048) * 100 * 1.16, 0);
    expect(textWidth('', 14)).toBe(0);
    expect(textWidth('Hi', 14, 'bold')).toBeGreaterThan(textWidth('Hi', 14));
  });
});
