import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';

const VOCABULARY = resolve('src/game/vocabulary.ts');

/** The compiler's host with one more word in the list of families. */
function withNinthFamily(options: ts.CompilerOptions): ts.CompilerHost {
  const host = ts.createCompilerHost(options);
  const asWritten = host.readFile.bind(host);
  const more = (text = '') => text.replace("  'add_on',\n] as const;", "  'add_on',\n  'ninth',\n] as const;");
  host.readFile = (file) => (resolve(file) === VOCABULARY ? more(asWritten(file)) : asWritten(file));
  return host;
}

/** The files of src/ that lack a row for the new family, as the compiler names them. */
function placesToFill(): readonly string[] {
  const { config } = ts.readConfigFile('tsconfig.json', ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, process.cwd());
  const sources = fileNames.filter((file) => relative('src', file).startsWith('..') === false);
  const program = ts.createProgram(sources, options, withNinthFamily(options));
  const lacking = program
    .getSemanticDiagnostics()
    .filter(({ messageText }) => JSON.stringify(messageText).includes("'ninth'"));
  return lacking.map(({ file }) => relative('', file?.fileName ?? '')).sort();
}

it('a family added to the list stops the compiler at every table DEVELOPERS.md names, and at no other', () => {
  const entry = readFileSync('DEVELOPERS.md', 'utf8').split('- **A family**')[1]?.split('\n- **')[0] ?? '';
  const named = [...entry.matchAll(/`(src\/pressure\/[^`]+\.ts)`/g)].map((found) => found[1]);
  expect(placesToFill()).toEqual(named.sort());
}, 600_000);
