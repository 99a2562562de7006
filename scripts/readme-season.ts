// Runs every command quoted in the README's season, in order, in a fresh folder, and writes what it prints again into the
// README: as many lines of each as stand there now. The built program is used: npm run build first.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { quoted, quotedRuns } from './readme/quoted-run.ts';

const [file = 'README.md'] = process.argv.slice(2);
const program = resolve('dist/cli.js');
const folder = mkdtempSync(join(tmpdir(), 'season-'));
let readme = readFileSync(file, 'utf8');
for (const { args, lines, block } of quotedRuns(readme, 'A season, week by week')) {
  const began = performance.now();
  const { stdout, status } = spawnSync('sh', ['-c', 'exec "$0" "$@" 2>&1', process.execPath, program, ...args], {
    cwd: folder,
    encoding: 'utf8',
  });
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(`${args.join(' ')}: exit ${status}, ${seconds} s`);
  const text = [`$ pressure-plan ${args.join(' ')}`, ...quoted(stdout, Math.max(1, lines.length))].join('\n');
  readme = readme.replace(`\`\`\`\n${block}`, () => `\`\`\`\n${text}`);
}
writeFileSync(file, readme);
rmSync(folder, { recursive: true, force: true });
