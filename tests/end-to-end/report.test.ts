import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSeason, type Run, run } from './program.ts';

let season = '';
let first: Run;
const out = (name: string) => readFileSync(join(season, 'week-09/out', name), 'utf8');

beforeAll(() => {
  season = demoSeason();
  first = run(['report', join(season, 'week-09')]);
});
afterAll(() => rmSync(season, { recursive: true, force: true }));

describe('pressure-plan report on the demo week', () => {
  it('ends with 0, says where the files are, and keeps standard output for results', () => {
    expect(first.code, first.note).toBe(0);
    expect(first.out).toBe('');
    expect(first.note).toContain('report.html');
    expect(readdirSync(join(season, 'week-09/out')).sort()).toEqual([
      'call-sheet.html',
      'report.html',
      'report.json',
      'tip-sheet.html',
      'wristband.csv',
      'wristband.html',
    ]);
  });

  it('keeps to its sizes and asks for nothing outside the file', () => {
    expect(Buffer.byteLength(out('report.html'))).toBeLessThan(400_000);
    expect(Buffer.byteLength(out('call-sheet.html'))).toBeLessThan(120_000);
    for (const page of ['report.html', 'call-sheet.html', 'tip-sheet.html']) {
      expect(out(page)).not.toMatch(/(?:src|href)="(?!#|data:)/);
      expect(out(page)).toMatch(/invented/i);
    }
  });

  it('leaves no NaN, undefined or null number on a page', () => {
    for (const page of ['report.html', 'call-sheet.html', 'tip-sheet.html'])
      expect(out(page)).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b/);
  });

  it('writes the same bytes for the same input', () => {
    const before = ['report.html', 'report.json', 'call-sheet.html', 'tip-sheet.html'].map(out);
    expect(run(['report', join(season, 'week-09')]).code).toBe(0);
    expect(['report.html', 'report.json', 'call-sheet.html', 'tip-sheet.html'].map(out)).toEqual(before);
  });

  it('prints with --json exactly what it puts into report.json', () => {
    const printed = run(['report', join(season, 'week-09'), '--json']);
    expect(JSON.parse(printed.out)).toEqual(JSON.parse(out('report.json')));
  });

  it('works from the opponent sheet alone and says what is absent', () => {
    const bare = join(season, 'bare', 'week-01');
    mkdirSync(bare, { recursive: true });
    writeFileSync(join(bare, 'opponent.csv'), readFileSync(join(season, 'week-09/opponent-latest.csv')));
    const ended = run(['report', bare, '--json']);
    expect(ended.code, ended.note).toBe(0);
    const plan = JSON.parse(ended.out);
    expect(plan.film.absent).toEqual(['weekFile', 'library', 'ownFilm', 'archive']);
    expect(plan.menu).toBeNull();
    expect([plan.protection.race, plan.scores.families.length > 1]).toEqual([[], true]);
    const page = (name: string) => readFileSync(join(bare, 'out', name), 'utf8');
    expect(page('report.html')).toContain('here are kinds of pressure, not calls');
    expect(page('call-sheet.html')).toContain('No call library (defense.yaml), so there are no calls to list.');
    expect(page('wristband.html')).toContain('so there is nothing to number');
    for (const command of ['script', 'calls']) {
      const said = run([command, bare]);
      expect([said.code === 0, said.note]).toEqual([
        false,
        expect.stringMatching(/needs defense\.yaml|no defense\.yaml in/),
      ]);
    }
  });
});
