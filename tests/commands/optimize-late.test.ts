import { execFileSync, spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { LATE_OPTION, optimizeLate } from '../../src/commands/optimize-late.ts';

// Outside check: the list of options the engine itself prints (node --v8-options).
it.runIf(process.versions.node.startsWith('20.'))('names an option that the engine running it knows', () => {
  const known = execFileSync(process.execPath, ['--v8-options'], { encoding: 'utf8' });
  expect(known).toMatch(new RegExp(`^ +${LATE_OPTION} \\(`, 'm'));
});

it.runIf(process.versions.node.startsWith('20.'))('sets an option the engine does not complain of', () => {
  const script = `require('node:v8').setFlagsFromString('${LATE_OPTION}=1000000')`;
  expect(spawnSync(process.execPath, ['-e', script], { encoding: 'utf8' })).toMatchObject({ status: 0, stderr: '' });
});

it.each(['19.0.0', '22.23.3', '24.21.0', '99.1.0', ''])('leaves Node "%s" alone, whose engine lacks it', (release) => {
  expect(optimizeLate(release)).toBe(false);
});

it.runIf(process.versions.node.startsWith('20.'))('sets the option on Node 20', () => {
  expect(optimizeLate('20.11.1')).toBe(true);
});
