import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { finishUnfinished, moveAll } from '../../src/commands/unfinished-write.ts';
import { writeFiles } from '../../src/commands/write-files.ts';

const NAMES = ['a.txt', 'b.txt', 'c.txt', 'd.txt'];
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'unfinished-'));
  for (const name of [...NAMES, 'old.csv']) writeFileSync(join(folder, name), 'before');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const held = () => NAMES.map((name) => readFileSync(join(folder, name), 'utf8'));

/** Puts four new files in place in a process of its own, and kills it outright before so many renames. */
function killedAfter(renames: number): void {
  const files = [...NAMES.map((name) => ({ name, text: 'new' })), { name: 'old.csv', text: null }];
  const code = `
    import fs from 'node:fs';
    import { syncBuiltinESMExports } from 'node:module';
    const real = fs.renameSync;
    let done = 0;
    fs.renameSync = (...args) => {
      if (done++ === ${renames}) process.kill(process.pid, 'SIGKILL');
      return real(...args);
    };
    syncBuiltinESMExports();
    const { writeFiles } = await import('./src/commands/write-files.ts');
    await writeFiles(${JSON.stringify(folder)}, ${JSON.stringify(files)});
  `;
  const script = join(folder, '..', `killed-${process.pid}-${renames}.mts`);
  writeFileSync(script, code.replace('./src', `${process.cwd()}/src`));
  const ended = spawnSync(process.execPath, ['--import', 'tsx', script], { encoding: 'utf8' });
  rmSync(script);
  expect(ended.signal, ended.stderr).toBe('SIGKILL');
  // The lock that the killed run left would be waited for.
  rmSync(join(folder, '.writing'), { force: true });
}

describe('a run that is killed between two renames', () => {
  it.each([0, 1, 2, 3])('after %i of them leaves a mark, and the next writer finishes the set', async (renames) => {
    killedAfter(renames);
    expect(held()).toEqual(NAMES.map((_, i) => (i < renames ? 'new' : 'before')));
    expect(readFileSync(join(folder, 'unfinished-write.txt'), 'utf8')).toMatch(/Run the same command again/);
    await finishUnfinished(folder);
    expect(held()).toEqual(['new', 'new', 'new', 'new']);
    expect(readdirSync(folder).sort()).toEqual(NAMES);
  });

  it('is finished before another set of files is written', async () => {
    killedAfter(2);
    await writeFiles(folder, [{ name: 'a.txt', text: 'newer' }]);
    expect(held()).toEqual(['newer', 'new', 'new', 'new']);
    expect(readdirSync(folder).sort()).toEqual(NAMES);
  });
});

describe('the mark of an unfinished set', () => {
  it('that was itself cut off begins nothing', async () => {
    writeFileSync(join(folder, 'a.txt.writing-1-1'), 'new');
    writeFileSync(
      join(folder, 'unfinished-write.txt'),
      'words\nwords\n{"waiting":"a.txt.writing-1-1","name":"a.txt"}\n',
    );
    await finishUnfinished(folder);
    expect(held()).toEqual(['before', 'before', 'before', 'before']);
  });

  it('leads nowhere outside its folder', async () => {
    const outside = join(folder, '..', `outside-${process.pid}.txt`);
    writeFileSync(outside, 'theirs');
    const name = `../outside-${process.pid}.txt`;
    const lines = [
      { waiting: null, name },
      { waiting: 'b.txt', name: 'a.txt' },
    ].map((move) => JSON.stringify(move));
    writeFileSync(join(folder, 'unfinished-write.txt'), ['words', 'words', ...lines, 'That is all.', ''].join('\n'));
    await finishUnfinished(folder);
    expect(readFileSync(outside, 'utf8')).toBe('theirs');
    expect(held()).toEqual(['before', 'before', 'before', 'before']);
    rmSync(outside);
  });

  it('is gone when all went well', () => {
    writeFileSync(join(folder, 'a.txt.writing-1-1'), 'new');
    moveAll(folder, [
      { waiting: 'a.txt.writing-1-1', name: 'a.txt' },
      { waiting: null, name: 'old.csv' },
    ]);
    expect(readdirSync(folder).sort()).toEqual(NAMES);
  });
});
