import { describe, expect, it } from 'vitest';
import type * as z from 'zod';
import { callLibrarySchema } from '../../src/game/call-library.ts';
import { weekSettingsSchema } from '../../src/game/week-settings.ts';
import { dictionaryRows } from '../../src/ingest/dictionary.ts';
import { profileSchema } from '../../src/ingest/profile.ts';
import { readSheet, type SheetKind } from '../../src/ingest/read-sheet.ts';
import { describeProblem } from '../../src/ingest/row-problem.ts';
import { defenseTemplate, profileTemplate, sheetTemplate, weekTemplate } from '../../src/ingest/templates.ts';
import { toCsv } from '../../src/ingest/write-csv.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';

const problemsOf = <Value>(text: string, schema: z.ZodType<Value>) => {
  const reading = readYaml(text, schema, 'template.yaml');
  return reading.kind === 'problems' ? reading.problems.map(describeProblem) : [];
};
const keysOf = (schema: { readonly shape: object }) => Object.keys(schema.shape);

describe('templates of YAML files', () => {
  it('can be read as they are', () => {
    expect(problemsOf(weekTemplate(), weekSettingsSchema)).toEqual([]);
    expect(problemsOf(defenseTemplate(), callLibrarySchema)).toEqual([]);
    expect(problemsOf(profileTemplate(), profileSchema)).toEqual([]);
  });

  it('name every key of their schema, set or in a remark', () => {
    for (const key of keysOf(weekSettingsSchema)) expect(weekTemplate()).toMatch(new RegExp(`^(# )?${key}:`, 'm'));
    for (const key of keysOf(profileSchema)) expect(profileTemplate()).toMatch(new RegExp(`^(# )?${key}:`, 'm'));
    for (const key of keysOf(callLibrarySchema.shape.calls.element)) {
      expect(defenseTemplate()).toMatch(new RegExp(`^ {2}[ -] (# )?${key}:`, 'm'));
    }
  });

  it('explain: every described key of week.yaml brings its words', () => {
    for (const { description } of Object.values(weekSettingsSchema.shape)) {
      expect(weekTemplate()).toContain(description ?? 'never');
    }
  });

  it('leave the settings at their defaults', () => {
    const reading = readYaml(weekTemplate(), weekSettingsSchema, 'week.yaml');
    const opponent = 'Name of the opponent';
    expect(reading).toEqual({ kind: 'value', value: weekSettingsSchema.parse({ opponent }) });
  });

  it('say that the defense is invented, and which rules hold', () => {
    expect(defenseTemplate()).toMatch(/invented/);
    expect(defenseTemplate()).toMatch(/state association and licensed athletic trainers/);
  });
});

describe.each(['opponent', 'own', 'live'] as const)('the template of a sheet, %s', (kind: SheetKind) => {
  const read = (text: string) => readSheet({ file: 'sheet.csv', bytes: new TextEncoder().encode(text) }, { kind });

  it('can be read as it is, and holds no snap', () => {
    const { chart, problems, unmapped } = read(sheetTemplate(kind));
    expect(chart.size).toBe(0);
    expect(unmapped).toEqual([]);
    expect(problems.map(({ severity, rule }) => `${severity} ${rule}`)).toEqual([
      'warning has a header row and no snaps',
    ]);
  });

  it('can be read with a snap of examples under its remarks, also after a spreadsheet saved it', () => {
    const headers = read(sheetTemplate(kind)).headers;
    const examples = headers.map((header) => dictionaryRows().find((row) => row.header === header)?.example ?? '');
    const text = sheetTemplate(kind) + toCsv([examples]);
    const padded = text.replace(/^("?#.*)$/gm, `$1${','.repeat(headers.length - 1)}`);
    for (const sheet of [text, padded, text.replaceAll('\r\n', '\n')]) {
      const { chart, problems } = read(sheet);
      expect(problems.filter(({ severity }) => severity === 'fault').map(describeProblem)).toEqual([]);
      expect(chart.size).toBe(1);
    }
  });
});
