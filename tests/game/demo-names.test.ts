import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { freeWordKey } from '../../src/game/free-word.ts';
import { demoDefense } from '../pressure/demo-defense.ts';

const SEASON = 'data/demo/season';
const rows = (readdirSync(SEASON, { recursive: true }) as string[])
  .filter((name) => name.endsWith('.csv') && !/(^|[\\/])out[\\/]/.test(name))
  .flatMap(
    (name) => Papa.parse<Record<string, string>>(readFileSync(join(SEASON, name), 'utf8'), { header: true }).data,
  );

/** What stands in these columns of the demo's sheets. */
function wordsIn(...columns: readonly string[]): ReadonlySet<string> {
  const words = rows.flatMap((row) => columns.map((column) => freeWordKey(row[column] ?? '')));
  return new Set(words.filter((word) => word !== ''));
}

const { calls, roles } = demoDefense;
const keys = (words: readonly string[]) => new Set(words.map(freeWordKey));
const KINDS: readonly (readonly [string, ReadonlySet<string>])[] = [
  ['school', wordsIn('offense', 'defense')],
  ['formation', wordsIn('formation')],
  ['call', new Set([...keys(calls.map(({ name }) => name)), ...wordsIn('call')])],
  ['path', new Set([...keys(calls.map(({ path }) => path)), ...wordsIn('path')])],
  ['coverage', new Set([...keys(calls.map(({ coverage }) => coverage)), ...wordsIn('coverage')])],
  ['man', keys(roles.flatMap(({ id, title }) => [id, title]))],
];
const PAIRS = KINDS.flatMap(([kind, words], i) =>
  KINDS.slice(i + 1).map(([other, others]) => ({ kind, other, both: [...words].filter((word) => others.has(word)) })),
);

describe('the names of the demo season', () => {
  it.each(KINDS)('has several of each kind: %s', (_, words) => expect(words.size).toBeGreaterThan(3));

  it.each(PAIRS)('no $kind has the name of a $other', ({ both }) => expect(both).toEqual([]));
});
