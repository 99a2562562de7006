// Makes the golden files again, prints what changed as a diff, and keeps the new ones: npm run golden
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { GOLDEN_FOLDER, goldenFiles } from '../tests/golden/golden-files.ts';

const made = goldenFiles();
rmSync(GOLDEN_FOLDER, { recursive: true, force: true });
mkdirSync(GOLDEN_FOLDER, { recursive: true });
for (const [name, text] of made) writeFileSync(join(GOLDEN_FOLDER, name), `${text}\n`);
spawnSync('git', ['--no-pager', 'diff', '--no-color', '--', GOLDEN_FOLDER], { stdio: 'inherit' });
