import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { calls } from '../../src/commands/calls.ts';
import type { Terminal } from '../../src/commands/terminal.ts';
import { STARTER_DEFENSE } from '../../src/ingest/starter-defense.ts';

let season = '';
let out = '';
let notes: string[] = [];
const terminal: Terminal = {
  out: (text) => {
    out += text;
  },
  note: (line) => void notes.push(line),
  progress: () => undefined,
  today: '2026-11-30',
};

beforeEach(() => {
  season = mkdtempSync(join(tmpdir(), 'calls-'));
  mkdirSync(join(season, 'week-01'));
  writeFileSync(join(season, 'defense.yaml'), STARTER_DEFENSE);
  [out, notes] = ['', []];
});
afterEach(() => rmSync(season, { recursive: true, force: true }));

describe('calls', () => {
  it('draws the starter from the season, a week of it, or its file, into the out folder of the season', async () => {
    for (const place of [season, join(season, 'week-01'), join(season, 'defense.yaml')]) {
      rmSync(join(season, 'out'), { recursive: true, force: true });
      expect(await calls(place, {}, terminal)).toBe(0);
      expect(readFileSync(join(season, 'out', 'calls.html'), 'utf8')).toContain(
        '11 calls on 6 paths. Every call is sound.',
      );
    }
    expect(out).toMatch(/^Six Hot +hot +six +hot +sound$/m);
  });

  it('names an unsound call and ends with 1, and still draws it', async () => {
    const file = join(season, 'defense.yaml');
    writeFileSync(
      file,
      STARTER_DEFENSE.replace('given: [deep_middle, quarterback_run]\n    adjust', 'given: [deep_middle]\n    adjust'),
    );
    expect(await calls(season, {}, terminal)).toBe(1);
    expect(out).toMatch(/^Six Zero .*NOT SOUND$/m);
    expect(notes).toContain('Six Zero: nobody has the quarterback when he runs');
    expect(existsSync(join(season, 'out', 'calls.html'))).toBe(true);
  });

  it('gives the calls in full as JSON', async () => {
    await calls(season, { json: true, output: join(season, 'elsewhere') }, terminal);
    const library = JSON.parse(out);
    expect(library.calls[0]).toMatchObject({ name: 'Base', family: 'base', path: 'four' });
    expect(library.calls[0].rush).toHaveLength(4);
    expect(existsSync(join(season, 'elsewhere', 'calls.html'))).toBe(true);
  });

  it('says what to do without a defense.yaml', async () => {
    rmSync(join(season, 'defense.yaml'));
    await expect(calls(season, {}, terminal)).rejects.toThrow(/no defense.yaml in .*pressure-plan new/);
  });
});
