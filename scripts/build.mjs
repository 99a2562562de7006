// Bundles the command line and the library into dist/ (or the folder named): split chunks, each command loaded only when
// it is asked for, everything it needs inside, and the licences of what is inside beside it.
import { copyFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { thirdPartyLicences } from './third-party-licences.mjs';

const outdir = process.argv[2] ?? 'dist';
await rm(outdir, { recursive: true, force: true });
const program = await build({
  entryPoints: ['src/cli.ts', 'src/library.ts'],
  outdir,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  external: ['canvas'],
  // The build of the special functions for browsers carries a byte buffer of its own and decodes with it, slowly.
  alias: { cephes: './node_modules/cephes/index.js' },
  // Names stay, so that a stack trace in a bug report can be read.
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  chunkNames: 'chunks/[name]-[hash]',
  banner: {
    js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
  },
  metafile: true,
  logLevel: 'warning',
});

// The page's own script: small, for browsers, inlined into the report by the program.
await build({
  entryPoints: { 'page-script': 'src/report/page-script/main.ts' },
  outdir,
  bundle: true,
  minify: true,
  format: 'iife',
  platform: 'browser',
  target: 'es2020',
  logLevel: 'warning',
});

// The solver for large call libraries brings a file of its own.
await copyFile('node_modules/highs/build/highs.wasm', join(outdir, 'highs.wasm'));

await writeFile(join(outdir, 'THIRD-PARTY-LICENCES.txt'), await thirdPartyLicences(program.metafile));
