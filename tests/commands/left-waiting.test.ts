import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { removeLeftWaiting } from '../../src/commands/left-waiting.ts';
import { writeFiles } from '../../src/commands/write-files.ts';

it('takes away what a killed run left waiting, and leaves alone a living run and the coach', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'left-'));
  const killed = spawnSync(process.execPath, ['-e', '0']).pid;
  const kept = ['notes.writing-soon', `b.html.writing-${process.pid}-7`];
  for (const name of [...kept, `a.html.writing-${killed}-1`]) writeFileSync(join(folder, name), 'half');
  await removeLeftWaiting(folder);
  expect(readdirSync(folder).sort()).toEqual([...kept].sort());
  rmSync(folder, { recursive: true });
});

it('is done before every writing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'left-'));
  const killed = spawnSync(process.execPath, ['-e', '0']).pid;
  writeFileSync(join(folder, `report.html.writing-${killed}-1`), 'half');
  await writeFiles(folder, [{ name: 'report.html', text: 'whole' }]);
  expect(readdirSync(folder)).toEqual(['report.html']);
  rmSync(folder, { recursive: true });
});
