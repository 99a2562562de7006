import { execFileSync, spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { LATE_OPTIONS, optimizeLate } from '../../src/commands/optimize-late.ts';

// Outside check: the list of options the engine itself prints (node --v8-options).
it.runIf(process.versions.node.startsWith('20.')).each(LATE_OPTIONS)('%s is one that the engine knows', (option) => {
  const known = execFileSync(process.execPath, ['--v8-options'], { encoding: 'utf8' });
  const [name] = option.split('=');
  expect(known).toMatch(new RegExp(`^ +${name} \\(`, 'm'));
});

it.runIf(process.versions.node.startsWith('20.')).each(LATE_OPTIONS)(
  '%s makes the engine complain of nothing',
  (option) => {
    const script = `require('node:v8').setFlagsFromString('${option}')`;
    expect(spawnSync(process.execPath, ['-e', script], { encoding: 'utf8' })).toMatchObject({ status: 0, stderr: '' });
  },
);

it.each(['19.0.0', '22.23.3', '24.21.0', '99.1.0', ''])('leaves Node "%s" alone: its engine lacks it', (release) => {
  expect(optimizeLate(release)).toBe(false);
});

it.runIf(process.versions.node.startsWith('20.'))('sets the options on Node 20', () => {
  expect(optimizeLate('20.11.1')).toBe(true);
});
