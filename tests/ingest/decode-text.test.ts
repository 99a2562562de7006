import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodePieces, decodeText } from '../../src/ingest/decode-text.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);

describe('decodeText', () => {
  it.each([
    { what: 'a workbook', bytes: [0x50, 0x4b, 3, 4, 20, 0], says: /spreadsheet workbook or a zip archive/ },
    { what: 'an old workbook', bytes: [0xd0, 0xcf, 0x11, 0xe0, 0xa1], says: /old spreadsheet workbook/ },
    { what: 'a PDF', bytes: [...utf8('%PDF-1.7')], says: /a PDF/ },
    { what: 'a picture', bytes: [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10], says: /PNG picture/ },
    { what: 'a compressed file', bytes: [0x1f, 0x8b, 8, 0], says: /compressed/ },
    { what: 'bytes with zeros in odd places', bytes: [65, 66, 0, 0, 0, 67, 0, 68], says: /not text/ },
  ])('refuses $what in plain words', ({ bytes, says }) => {
    const decoded = decodeText(Uint8Array.from(bytes));
    expect(decoded.kind === 'refused' && decoded.reason).toMatch(says);
  });

  it('reads a sheet with one stray zero byte as text: it spoils a cell, not the sheet', () => {
    const text = `game,down\n${'Hackle,1\n'.repeat(50)}Har\u0000row,2\n`;
    expect(decodeText(utf8(text))).toEqual({ kind: 'text', encoding: 'utf-8', text });
  });

  it('takes an empty file as empty text', () => {
    expect(decodeText(new Uint8Array())).toEqual({ kind: 'text', encoding: 'utf-8', text: '' });
  });

  it('takes the byte-order mark off', () => {
    expect(decodeText(utf8('\ufeffgame'))).toMatchObject({ encoding: 'utf-8', text: 'game' });
    expect(decodeText(Uint8Array.of(0xff, 0xfe, 0x67, 0))).toMatchObject({ encoding: 'utf-16le', text: 'g' });
    expect(decodeText(Uint8Array.of(0xfe, 0xff, 0, 0x67))).toMatchObject({ encoding: 'utf-16be', text: 'g' });
  });

  it('reads bytes that are no UTF-8 as Windows-1252 (0x93 and 0x94 are curly quotation marks there)', () => {
    expect(decodeText(Uint8Array.of(0x93, 0x61, 0x94))).toMatchObject({
      encoding: 'windows-1252',
      text: '\u201ca\u201d',
    });
  });

  it('cuts long texts between characters: the pieces join to the whole', () => {
    const text = `${'a'.repeat(65_535)}é€😀`.repeat(3);
    fc.assert(
      fc.property(fc.nat(4), (shift) => {
        const shifted = 'b'.repeat(shift) + text;
        const decoded = decodePieces(utf8(shifted));
        expect(decoded.kind === 'text' && [...decoded.pieces].join('') === shifted).toBe(true);
      }),
      { numRuns: 5 },
    );
  });
});
