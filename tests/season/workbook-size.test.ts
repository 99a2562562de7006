import { crc32, deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { oversizeOf } from '../../src/season/workbook-size.ts';
import { workbookText } from '../../src/season/workbook-text.ts';
import { makeWorkbook } from '../ingest/make-workbook.ts';

/** A zip archive of one deflated entry (APPNOTE.TXT 6.3.10), which states the size given instead of its own. */
function archive(piece: Buffer, stated: number, copies = 1): Buffer {
  const name = Buffer.from('xl/worksheets/sheet1.xml');
  const common = Buffer.alloc(26);
  common.writeUInt16LE(20, 0);
  common.writeUInt16LE(8, 4);
  common.writeUInt32LE(crc32(piece), 10);
  common.writeUInt32LE(piece.length, 14);
  common.writeUInt32LE(stated, 18);
  common.writeUInt16LE(name.length, 22);
  const entry = Buffer.concat([Buffer.from('PK\x01\x02\x14\x00', 'latin1'), common, Buffer.alloc(14), name]);
  const local = Buffer.concat([Buffer.from('PK\x03\x04', 'latin1'), common, name, piece]);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 0, 'latin1');
  end.writeUInt16LE(copies, 8);
  end.writeUInt16LE(copies, 10);
  end.writeUInt32LE(entry.length * copies, 12);
  end.writeUInt32LE(local.length, 16);
  return Buffer.concat([local, ...Array(copies).fill(entry), end]);
}

/** Zeros pack to a thousandth (the bound of deflate is 1032 to 1, RFC 1951). */
const zeros = (megabytes: number) => deflateRawSync(Buffer.alloc(megabytes * 1_000_000));

describe('a workbook that unpacks to more than it may', () => {
  it.each([
    ['says so', archive(zeros(150), 150_000_000)],
    ['says it is small', archive(zeros(150), 1000)],
    ['says it is larger than any disk', archive(zeros(1), 0xffff_fffe)],
    ['names one piece over and over', archive(zeros(20), 20_000_000, 50)],
    ['holds thousands of files', archive(zeros(1), 1, 6000)],
  ])('and %s is refused in little memory', async (_, bytes) => {
    const before = process.memoryUsage().rss;
    expect(await workbookText(bytes)).toMatchObject({
      kind: 'refused',
      reason: expect.stringMatching(/far more|more files/),
    });
    expect(process.memoryUsage().rss - before).toBeLessThan(400_000_000);
  });
});

describe('a workbook with cells far apart', () => {
  const sheet = (xml: string) => archive(deflateRawSync(Buffer.from(xml)), xml.length);

  it.each([
    ['the last cell of all', '<c r="XFD1048576"><v>1</v></c>'],
    ['one in the last column, one in row 100000', "<c r='XFD1'/><c r='A100000'/>"],
    ['a row beyond all numbers', '<row r="1e99"></row>'],
    ['a row without end', '<row r="Infinity"></row>'],
    ['a column of ten letters', '<c r = "ZZZZZZZZZZ1"/>'],
    ['a place in entities', '<c r="&#88;FD1048576"/>'],
  ])('%s: is refused with what to do', async (_, xml) => {
    expect(oversizeOf(sheet(xml))).toMatch(/so far apart.* delete those far off/);
  });

  it('a large chart is not', () => {
    const rows = Array.from(
      { length: 20_000 },
      (_, r) => `<row r="${r + 1}"><c r="A${r + 1}"/><c r="BZ${r + 1}"/></row>`,
    );
    expect(oversizeOf(sheet(rows.join('')))).toBeNull();
  });
});

/** The directory's offset, which stands six bytes before the end, set to the largest there is. */
const outside = (bytes: Buffer) => bytes.fill(0xff, bytes.length - 6, bytes.length - 2);

describe('any other file', () => {
  it('that we wrote is read', async () => {
    expect(await workbookText(makeWorkbook([[['dn'], [1]]]))).toEqual({
      kind: 'sheet',
      name: 'sheet1',
      csv: 'dn\r\n1\r\n',
    });
  });

  it.each([
    ['nothing', Buffer.alloc(0)],
    ['the end of a directory alone', Buffer.from('PK\x05\x06', 'latin1')],
    ['a directory that points outside', outside(archive(zeros(1), 1))],
    ['entries that point outside', archive(Buffer.from('broken'), 6).subarray(20)],
    ['a broken piece', archive(Buffer.from('not deflated at all'), 19)],
  ])('%s: is left to its reader, which refuses it in words', async (_, bytes) => {
    expect(oversizeOf(bytes)).toBeNull();
    expect(await workbookText(bytes)).toMatchObject({ kind: 'refused', reason: expect.stringMatching(/\w/) });
  });
});
