// Runs every property test with a seed of its own, printed so that a failure can be seen again:
// PROPERTY_SEED=12345 npx vitest run FILE
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

const seed = process.env.PROPERTY_SEED ?? String(Date.now() % 2 ** 31);
const files = readdirSync('tests', { recursive: true })
  .map((file) => `tests/${file}`)
  .filter((file) => file.endsWith('.test.ts') && readFileSync(file, 'utf8').includes("from 'fast-check'"));
console.log(`${files.length} files of property tests, PROPERTY_SEED=${seed}`);
const run = spawnSync('npx', ['vitest', 'run', ...files], {
  stdio: 'inherit',
  env: { ...process.env, PROPERTY_SEED: seed },
});
process.exit(run.status ?? 1);
