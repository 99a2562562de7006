import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'pressure-plan-no-eval-'));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

it('draws the whole report where making code from text is forbidden', async () => {
  const outfile = join(folder, 'draw.mjs');
  await build({
    stdin: {
      contents: `
        import { renderReport } from './src/report/render-report.ts';
        import { inventedPlan } from './tests/report/invented-plan.ts';
        const page = await renderReport(inventedPlan());
        process.stdout.write(String(page.match(/<div class="drawing"><svg/g).length));
        try { new Function('return 1')(); process.stdout.write(' allowed'); } catch { process.stdout.write(' forbidden'); }`,
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    external: ['canvas'],
    outfile,
    banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
    logLevel: 'silent',
  });
  const run = spawnSync(process.execPath, ['--disallow-code-generation-from-strings', outfile], { encoding: 'utf8' });
  expect(run.stderr).toBe('');
  expect(run.stdout).toBe('1 forbidden');
});
