import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';

const TABLE = resolve('src/game/families.ts');
const END = '} as const satisfies Readonly<Record<string, FamilyFacts>>;';

/** The worked example of DEVELOPERS.md, and the files it says the compiler leads to. */
const entry = readFileSync('DEVELOPERS.md', 'utf8').split('- **A family**')[1]?.split('\n- **')[0] ?? '';
const example = /```ts\n([\s\S]*?)```/.exec(entry)?.[1] ?? '';
const ledTo = [...entry.matchAll(/`(src\/report\/[^`]+\.ts)`/g)].map((found) => found[1]).sort();

/** The errors of src/ with one more line at the end of the table of families: the file and what the compiler says. */
function errorsWith(line: string): readonly { readonly file: string; readonly says: string }[] {
  const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, process.cwd());
  const host = ts.createCompilerHost(options);
  const asWritten = host.readFile.bind(host);
  host.readFile = (file) =>
    resolve(file) === TABLE ? asWritten(file)?.replace(END, `${line}\n${END}`) : asWritten(file);
  const sources = fileNames.filter((file) => relative('src', file).startsWith('..') === false);
  return ts
    .createProgram(sources, options, host)
    .getSemanticDiagnostics()
    .map(({ file, messageText }) => ({
      file: relative('', file?.fileName ?? ''),
      says: ts.flattenDiagnosticMessageText(messageText, '\n'),
    }));
}

it('a family without its facts stops the compiler in the table, which names every key', () => {
  const errors = errorsWith('  trap: {},').filter(({ file }) => file === relative('', TABLE));
  expect(errors.length).toBeGreaterThan(0);
  expect(errors[0]?.says).toMatch(/missing the following properties.*words, theory, men, openData, and 3 more/);
}, 600_000);

it('with the worked example of DEVELOPERS.md the compiler asks in the files it names, and in no other', () => {
  expect(example).toContain('trap:');
  const errors = errorsWith(example);
  expect([...new Set(errors.map(({ file }) => file))].sort()).toEqual(ledTo);
  for (const { says } of errors) expect(says).toContain("Property 'trap' is missing");
}, 600_000);
