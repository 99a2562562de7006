// Writes dist/types: the declarations of src/library.ts and of what it names, and of nothing else. The types that the
// program derives from its schemas are written out in full, so that a reader of them needs no other package.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';

const out = resolve(process.argv[2] ?? 'dist', 'types');
const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile('tsconfig.json', ts.sys.readFile).config,
  ts.sys,
  '.',
);
const program = ts.createProgram(['src/library.ts'], {
  ...options,
  noEmit: false,
  declaration: true,
  emitDeclarationOnly: true,
  allowImportingTsExtensions: true,
  rootDir: 'src',
  outDir: out,
});
const checker = program.getTypeChecker();
const emitted = new Map();
program.emit(undefined, (...[file, text, , , sources]) => emitted.set(resolve(file), { text, source: sources?.[0] }));

/** The declarations of a file that derives its types from schemas: types written out, lists of words as they are. */
function writtenOut(source) {
  const exports = checker.getExportsOfModule(checker.getSymbolAtLocation(source));
  return exports.flatMap((symbol) => declarationOf(symbol) ?? []).join('\n');
}

const FULL =
  ts.TypeFormatFlags.NoTruncation | ts.TypeFormatFlags.InTypeAlias | ts.TypeFormatFlags.UseFullyQualifiedType;

function declarationOf(symbol) {
  const [declaration] = symbol.declarations ?? [];
  const comment = ts.displayPartsToString(symbol.getDocumentationComment(checker));
  const said = comment === '' ? '' : `/** ${comment.replaceAll('*/', '* /')} */\n`;
  if (ts.isTypeAliasDeclaration(declaration)) {
    return `${said}export type ${symbol.name} = ${checker.typeToString(checker.getDeclaredTypeOfSymbol(symbol), undefined, FULL)};`;
  }
  const type = checker.typeToString(checker.getTypeOfSymbol(symbol), undefined, FULL);
  return /\bZod|\bz\./.test(type) ? undefined : `${said}export declare const ${symbol.name}: ${type};`;
}

const IMPORT = /(?<=\b(?:from |import\())(['"])([^'"]+)\1/g;

function textOf({ text, source }) {
  const plain = /from ['"]zod['"]/.test(text) ? writtenOut(source) : text;
  return `${plain.replace(IMPORT, (_all, _quote, path) => `'${beside(source, path)}'`).trim()}\n`;
}

/** The path of one of our modules as seen from another, with the ending it has when it runs. */
function beside(source, path) {
  if (path.startsWith('.')) return path.replace(/\.ts$/, '.js');
  const found = relative(dirname(resolve(source.fileName)), path);
  return path.startsWith(resolve('src')) ? `${found.startsWith('.') ? '' : './'}${found}.js` : path;
}

/** Writes a file and those it names. */
function write(file, done = new Set()) {
  if (done.has(file)) return done;
  done.add(file);
  const found = emitted.get(file);
  if (!found) throw new Error(`no declarations for ${relative(out, file)}`);
  const text = textOf(found);
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
  for (const [, , path] of text.matchAll(IMPORT)) {
    if (!path.startsWith('.')) throw new Error(`${relative(out, file)} needs the package ${path}`);
    write(join(dirname(file), path.replace(/\.js$/, '.d.ts')), done);
  }
  return done;
}

rmSync(out, { recursive: true, force: true });
const files = write(join(out, 'library.d.ts'));
console.log(`${files.size} files of declarations`);
