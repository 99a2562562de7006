import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { VERSION } from '../../src/season/version.ts';

it('is the version of package.json', () => {
  expect(VERSION).toBe(JSON.parse(readFileSync('package.json', 'utf8')).version);
});
