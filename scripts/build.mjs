// Bundles the command line into dist/: one entry, split chunks, each command loaded only when it is asked for.
import { rm } from 'node:fs/promises';
import { build } from 'esbuild';

await rm('dist', { recursive: true, force: true });
await build({
  entryPoints: ['src/cli.ts'],
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  external: ['canvas'],
  minifySyntax: true,
  chunkNames: 'chunks/[name]-[hash]',
  banner: {
    js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
  },
  logLevel: 'warning',
});

// The page's own script: small, for browsers, inlined into the report by the program.
await build({
  entryPoints: { 'page-script': 'src/report/page-script/main.ts' },
  outdir: 'dist',
  bundle: true,
  minify: true,
  format: 'iife',
  platform: 'browser',
  target: 'es2020',
  logLevel: 'warning',
});
