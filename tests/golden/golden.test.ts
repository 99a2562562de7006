import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { GOLDEN_FOLDER, goldenFiles } from './golden-files.ts';

const made = goldenFiles();

it('makes as many golden files as are kept', () => {
  expect(readdirSync(GOLDEN_FOLDER).sort()).toEqual([...made.keys()].sort());
});

// A change that is meant: npm run golden prints it as a diff and keeps the new files.
it.each([...made])('%s is as it was last reviewed', (name, text) => {
  expect(text).toBe(readFileSync(join(GOLDEN_FOLDER, name), 'utf8').replace(/\n$/, ''));
});
