import { describe, expect, it } from 'vitest';
import { isWorkbookName, readWorkbook } from '../../src/ingest/read-workbook.ts';
import { makeWorkbook } from './make-workbook.ts';

describe('a workbook', () => {
  it('is read as the text of its fullest sheet: dates as days, times of day as clocks, numbers as written', async () => {
    // Serial 46091 is 10 March 2026, and 0.320833 of a day is 7:42 (ECMA-376 part 1, 18.17.4, 1900 date system).
    const bytes = makeWorkbook([
      [['only a title']],
      [
        ['dn', 'dist', 'time', 'note, long'],
        [1, { date: 46091 }, { date: 0.3208333333333333 }, 'a "quick" one'],
        [2, 2.6000000000000001, null, '<x> & y'],
      ],
    ]);
    const reading = await readWorkbook(bytes);
    expect(reading).toEqual({
      kind: 'sheet',
      name: 'sheet2',
      csv: 'dn,dist,time,"note, long"\r\n1,2026-03-10,7:42,"a ""quick"" one"\r\n2,2.6,,<x> & y\r\n',
    });
  });

  it('does not change the bytes it is given', async () => {
    const bytes = makeWorkbook([[['a', 'b']]]);
    const before = Uint8Array.from(bytes);
    await readWorkbook(bytes);
    expect(bytes).toEqual(before);
  });

  it.each([
    ['nothing', new Uint8Array()],
    ['plain text', new TextEncoder().encode('dn,dist\n1,10\n')],
    ['half a workbook', makeWorkbook([[['a']]]).slice(0, 500)],
    ['a zip archive of something else', Uint8Array.from([...Buffer.from('PK\x05\x06'), ...new Uint8Array(18)])],
  ])('that is %s is refused with a reason', async (_, bytes) => {
    const reading = await readWorkbook(bytes);
    expect(reading).toMatchObject({ kind: 'refused' });
  });

  it('is known by its name', () => {
    expect(['Week 3.XLSX', 'week.xls', 'week.csv'].map(isWorkbookName)).toEqual([true, false, false]);
  });
});
