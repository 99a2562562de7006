import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeFiles } from '../../src/commands/write-files.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'plan-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('writeFiles', () => {
  it('writes every file and leaves no temporary name behind', async () => {
    const paths = await writeFiles(join(folder, 'out'), [
      { name: 'a.txt', text: 'one' },
      { name: 'b/c.txt', text: 'two' },
    ]);
    expect(paths.map((path) => readFileSync(path, 'utf8'))).toEqual(['one', 'two']);
    expect(readdirSync(join(folder, 'out')).sort()).toEqual(['a.txt', 'b']);
  });

  it('writes nothing when one file cannot be written, and keeps what was there', async () => {
    writeFileSync(join(folder, 'a.txt'), 'before');
    writeFileSync(join(folder, 'b'), 'a file where a folder is needed');
    const attempt = writeFiles(folder, [
      { name: 'a.txt', text: 'after' },
      { name: 'b/c.txt', text: 'two' },
    ]);
    await expect(attempt).rejects.toThrow(/Nothing was written/);
    expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('before');
    expect(readdirSync(folder).sort()).toEqual(['a.txt', 'b']);
  });

  it('replaces no file when the place of another is a folder', async () => {
    writeFileSync(join(folder, 'a.txt'), 'before');
    mkdirSync(join(folder, 'b.txt'));
    await expect(
      writeFiles(folder, [
        { name: 'a.txt', text: 'after' },
        { name: 'b.txt', text: 'two' },
      ]),
    ).rejects.toThrow(/Nothing was written/);
    expect(readFileSync(join(folder, 'a.txt'), 'utf8')).toBe('before');
  });
});
