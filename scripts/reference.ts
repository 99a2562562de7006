// Runs a file of published checks through the statistics: npm run reference -- FILE. Exits 1 when any fails.
import { readFileSync } from 'node:fs';
import { runCheck } from '../tests/reference/adapters.ts';
import type { Check } from '../tests/reference/check.ts';

const [file] = process.argv.slice(2);
if (!file) {
  console.error('usage: npm run reference -- FILE (a JSON list of {id, method, input, expected, tolerance, source})');
  process.exit(2);
}

const checks = JSON.parse(readFileSync(file, 'utf8')) as Check[];
const without = new Map<string, number>();
let [passed, failed, skipped] = [0, 0, 0];
for (const check of checks) {
  const outcome = runCheck(check);
  if (outcome.kind === 'passed') passed += 1;
  else if (outcome.kind === 'no-adapter') {
    skipped += 1;
    without.set(check.method, (without.get(check.method) ?? 0) + 1);
  } else {
    failed += 1;
    console.log(
      `FAIL ${check.id ?? ''} ${check.method}\n  ${outcome.deviations.join('\n  ')}\n  source: ${check.source}`,
    );
  }
}
const list = [...without].map(([method, count]) => `${method} (${count})`).join(', ');
console.log(`methods without an adapter: ${list || 'none'}`);
console.log(`${passed} passed, ${failed} failed, ${skipped} skipped`);
process.exitCode = failed === 0 ? 0 : 1;
