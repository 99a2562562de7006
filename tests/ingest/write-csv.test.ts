import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { toCsv, withoutGuard } from '../../src/ingest/write-csv.ts';

describe('toCsv', () => {
  it('doubles quotation marks and encloses what needs it (RFC 4180 section 2 rules 6 and 7)', () => {
    expect(toCsv([['aaa', 'b\r\nbb', 'c"c', 'd,d']])).toBe('aaa,"b\r\nbb","c""c","d,d"\r\n');
  });

  it.each(['=cmd()', '+cmd()', '-cmd()', '@sum(1)', '\ttab', '\rreturn', '-1+2'])(
    'neutralises %j, which a spreadsheet could run (leading characters named by OWASP, "CSV Injection")',
    (cell) => {
      expect(toCsv([[cell]]).replace(/^"/, '')).toMatch(/^'/);
      expect(withoutGuard(`'${cell}`)).toBe(cell);
    },
  );

  it.each(['-7', '+3', '-2.5', "'tis", 'a=b', ''])('leaves %j as it is', (cell) => {
    expect(toCsv([[cell, 'x']])).toBe(`${cell},x\r\n`);
    expect(withoutGuard(cell)).toBe(cell);
  });

  it('writes a blank for undefined, and numbers plainly', () => {
    expect(toCsv([[undefined, -7, 0.5]])).toBe(',-7,0.5\r\n');
    expect(toCsv([])).toBe('');
  });

  it('writes what papaparse writes, and asks it for odd cells only', () => {
    const unit = fc.constantFrom('a', '7', '.', ',', '"', '\n', '\r', ' ', '=', '-', '+', '\t', ')', '\ufeff', 'é');
    const cell = fc.oneof(fc.string({ unit, maxLength: 5 }), fc.double({ noNaN: true }), fc.integer());
    const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(rows, (written) => {
        const escapeFormulae = /^[\t\r\n]|^\s*[=@]|^\s*[+-](?!\d+(?:\.\d+)?$)/;
        expect(toCsv(written)).toBe(`${Papa.unparse(written, { escapeFormulae, newline: '\r\n' })}\r\n`);
      }),
    );
  });

  it('comes back as it was through a general CSV reader, but for the guard', () => {
    const cell = fc.string({
      unit: fc.constantFrom('a', ',', '"', '\n', '\r', ';', ' ', '=', '-', "'", 'é'),
      maxLength: 6,
    });
    const rows = fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(rows, (written) => {
        const read = Papa.parse<string[]>(toCsv(written), { delimiter: ',', newline: '\r\n' }).data.slice(0, -1);
        const plain = (text: string) => (text.startsWith("'") ? withoutGuard(text) : text);
        expect(read.map((row) => row.map(plain))).toEqual(written.map((row) => row.map(plain)));
      }),
    );
  });
});
