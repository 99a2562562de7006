// Bundles the command line and the library into dist/ (or the folder named): split chunks, each command loaded only when
// it is asked for, everything it needs inside, and the licenses of what is inside beside it. A file that is loaded costs
// more than the code in it, so the check, which a coach runs again and again, and halftime, which he waits for in the
// locker room, are one file each.
import { copyFile, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { buildDesk } from './build-desk.mjs';
import { commanderAlone, shorterNames, standingApart } from './build-plugins.mjs';
import { thirdPartyLicenses } from './third-party-licenses.mjs';

const outdir = process.argv[2] ?? 'dist';
await rm(outdir, { recursive: true, force: true });

const REQUIRE =
  "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);";
const common = {
  outdir,
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  external: ['canvas'],
  // The build of the special functions for browsers carries a byte buffer of its own and decodes with it, slowly.
  alias: { cephes: './node_modules/cephes/index.js' },
  // Our names stay, so that a stack trace in a bug report can be read.
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: 'none',
  banner: { js: REQUIRE },
  metafile: true,
  logLevel: 'warning',
};

// What the check shares with the rest of the program, or asks for in few runs, stands apart under a name of its own.
const apart = {
  'user-problem': 'src/season/user-problem.ts',
  'late/yaml-file': 'src/ingest/yaml-file.ts',
  'late/profile': 'src/ingest/profile.ts',
  'late/formation-schema': 'src/ingest/formation/formation-schema.ts',
  'late/workbook-text': 'src/season/workbook-text.ts',
  'late/disk-solver': 'src/commands/disk-solver.ts',
};
// So does what halftime asks for only where there is no plan of Sunday's, or a profile; and the library it shares, which is
// large.
const shared = {
  'late/week-plan-source': 'src/season/week-plan-source.ts',
  'late/yaml-file-quick': 'src/ingest/yaml-file-quick.ts',
  'special-functions': 'src/stats/special-functions.ts',
};
const check = { check: 'src/commands/check.ts' };
const halftime = { halftime: 'src/commands/halftime.ts' };
const program = await build({
  ...common,
  entryPoints: { cli: 'src/cli.ts', library: 'src/library.ts', ...apart, ...shared },
  splitting: true,
  chunkNames: 'chunks/[name]-[hash]',
  plugins: [standingApart({ ...check, ...halftime }), commanderAlone, shorterNames],
});
const checking = await build({
  ...common,
  entryPoints: check,
  plugins: [standingApart(apart), shorterNames],
});
const updating = await build({
  ...common,
  entryPoints: halftime,
  plugins: [standingApart({ ...apart, ...shared }), shorterNames],
});
for (const file of [program, checking, updating].flatMap(({ metafile }) => Object.keys(metafile.outputs))) {
  await withoutIdleRequire(file);
}

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

const desk = await buildDesk(outdir, await readFile(join(outdir, 'page-script.js'), 'utf8'));
await writeFile(join(outdir, 'THIRD-PARTY-LICENSES.txt'), await thirdPartyLicenses(program.metafile, ...desk));

/** Takes the maker of `require` off a file that never asks for it: making it takes longer than loading a small file. */
async function withoutIdleRequire(file) {
  const [first, ...rest] = (await readFile(file, 'utf8')).split(`${REQUIRE}\n`);
  if (rest.length === 1 && !/\brequire\b/.test(rest[0])) await writeFile(file, first + rest[0]);
}
