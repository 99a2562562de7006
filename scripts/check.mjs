// Runs every static check; prints one line each and exits 1 when any fails.
import { spawnSync } from 'node:child_process';

/** Room for what a tool prints: the import graph alone is over a megabyte. */
const MOST_PRINTED = 256 * 1024 * 1024;

const run = (command) => spawnSync(command, { shell: true, encoding: 'utf8', maxBuffer: MOST_PRINTED });

/** Order of the rooms: a clean verdict counts only when modules were really read. */
function layers() {
  const result = run('npx depcruise src --config .dependency-cruiser.mjs --output-type json');
  const { summary } = JSON.parse(result.stdout);
  const lines = summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}`);
  if (summary.totalCruised < 20) lines.push(`only ${summary.totalCruised} modules were read`);
  return { ok: lines.length === 0, text: lines.join('\n'), said: `${summary.totalCruised} modules read` };
}

function tool(command) {
  const result = run(command);
  return { ok: result.status === 0, text: result.stdout + result.stderr, said: '' };
}

export const checks = [
  ['types', () => tool('npx tsc -p tsconfig.json')],
  ['lint', () => tool('npx biome check --error-on-warnings .')],
  ['order of rooms', layers],
  ['dead code', () => tool('npx knip --no-progress')],
  ['code that only tests reach', () => tool('npx knip --production --no-progress')],
  ['docstrings', () => tool('npx typedoc --logLevel Warn')],
  ['build', () => tool('npm run --silent build')],
];

export function runChecks() {
  let failed = 0;
  for (const [name, check] of checks) {
    const { ok, text, said } = check();
    console.log(`${ok ? 'ok  ' : 'FAIL'} ${name}${said ? ` (${said})` : ''}`);
    if (!ok) {
      failed += 1;
      console.log(text.trim());
    }
  }
  return { passed: checks.length - failed, failed };
}

if (process.argv[1]?.endsWith('check.mjs')) process.exit(runChecks().failed === 0 ? 0 : 1);
