import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { adopt } from '../../src/commands/adopt.ts';

const folder = mkdtempSync(join(tmpdir(), 'wide-'));
afterAll(() => rmSync(folder, { recursive: true }));

it.each([',', ';', '\t'])(
  'adopt refuses a sheet of ten thousand columns (parted by %j) at once, and says how many',
  async (delimiter) => {
    const sheet = join(folder, 'sheet.csv');
    const row = (cell: (i: number) => string) => Array.from({ length: 10_000 }, (_, i) => cell(i)).join(delimiter);
    writeFileSync(sheet, `${row((i) => `c${i}`)}\n${row(() => '1')}\n`);
    const quiet = { out: () => {}, note: () => {}, progress: () => {}, today: '2026-10-18' };
    await expect(adopt(sheet, {}, quiet)).rejects.toThrow(/sheet.csv has 10000 columns; .*at most 500/);
    expect(readdirSync(folder)).toEqual(['sheet.csv']);
  },
);

it.each([20_000, 20_000_000])('adopt refuses a cell of %i characters at once, and says where', async (length) => {
  const sheet = join(folder, 'sheet.csv');
  writeFileSync(sheet, `dn,dist,type,note\n1,10,run,\n2,7,pass,${'x'.repeat(length)}\n`);
  const quiet = { out: () => {}, note: () => {}, progress: () => {}, today: '2026-10-18' };
  await expect(adopt(sheet, {}, quiet)).rejects.toThrow(/cell of more than 10000 characters in row 3; is a quotation/);
  expect(readdirSync(folder)).toEqual(['sheet.csv']);
});
