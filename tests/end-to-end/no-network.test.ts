import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoSeason, run } from './program.ts';

/**
 * Takes from the program what it promises never to use: every way to the network, other programs, threads, and code made
 * from text. A use throws, and is written down in case it is caught.
 */
const WITHOUT = `
import { appendFileSync } from 'node:fs';
import { createRequire, syncBuiltinESMExports } from 'node:module';
const require = createRequire(import.meta.url);
const refuse = (name) => function () {
  appendFileSync(process.env.USES, name + '\\n');
  throw new Error('not allowed: ' + name);
};
const taken = {
  net: ['connect', 'createConnection', 'createServer'], tls: ['connect'], dgram: ['createSocket'],
  http: ['request', 'get', 'createServer'], https: ['request', 'get'], http2: ['connect'],
  dns: ['lookup', 'resolve'], child_process: ['spawn', 'exec', 'execFile', 'fork', 'spawnSync', 'execSync', 'execFileSync'],
  worker_threads: ['Worker'], vm: ['runInContext', 'runInNewContext', 'runInThisContext', 'Script', 'compileFunction'],
};
for (const [module, names] of Object.entries(taken)) for (const name of names) require(module)[name] = refuse(module + '.' + name);
require('net').Socket.prototype.connect = refuse('net.Socket.connect');
syncBuiltinESMExports();
for (const name of ['fetch', 'WebSocket', 'EventSource', 'XMLHttpRequest', 'eval']) globalThis[name] = refuse(name);
`;

const folder = mkdtempSync(join(tmpdir(), 'without-'));
const uses = join(folder, 'uses');
const hook = join(folder, 'without.mjs');
let season = '';

/** The program without all that; V8 itself refuses to make code from text. */
function runWithout(args: readonly string[]) {
  return spawnSync(
    process.execPath,
    ['--disallow-code-generation-from-strings', '--import', pathToFileURL(hook).href, resolve('dist/cli.js'), ...args],
    { encoding: 'utf8', env: { ...process.env, USES: uses, SOURCE_DATE_EPOCH: '1792800000' }, maxBuffer: 2 ** 28 },
  );
}

beforeAll(() => {
  writeFileSync(hook, WITHOUT);
  writeFileSync(uses, '');
  season = demoSeason();
  run(['--version']);
});
afterAll(() => {
  for (const made of [folder, season]) rmSync(made, { recursive: true, force: true });
});

describe('without network, other programs and code made from text', () => {
  it('the hook does take them away', () => {
    for (const [code, name] of [
      ["(await import('node:net')).connect(1)", 'net.connect'],
      ["await fetch('http://localhost')", 'fetch'],
      ["(await import('node:child_process')).spawnSync('true')", 'child_process.spawnSync'],
    ]) {
      const ended = spawnSync(
        process.execPath,
        ['--import', pathToFileURL(hook).href, '--input-type=module', '-e', code ?? ''],
        {
          encoding: 'utf8',
          env: { ...process.env, USES: uses },
        },
      );
      expect(ended.stderr).toContain(`not allowed: ${name}`);
    }
    expect(readFileSync(uses, 'utf8')).toContain('fetch');
    writeFileSync(uses, '');
  });

  it.each([
    ['report', ['report']],
    ['halftime', ['halftime']],
    ['script', ['script']],
    ['check', ['check', '--json']],
    ['review', ['review']],
    ['tendency', ['tendency', '--of', 'run']],
    ['counts', ['counts']],
    ['backtest', ['backtest']],
  ])('%s does all its work', (_, [command, ...rest]) => {
    const ended = runWithout([command ?? '', join(season, 'week-09'), ...rest]);
    expect(ended.stderr).not.toMatch(/not allowed|Code generation|bug in Pressure Plan/);
    expect(ended.status).toBe(0);
    expect(readFileSync(uses, 'utf8')).toBe('');
  });

  it('adopt drafts a profile from a sheet', () => {
    const sheet = join(folder, 'film.csv');
    writeFileSync(sheet, readFileSync(join(season, 'week-09/opponent-latest.csv'), 'utf8').replace('play_kind', 'R/P'));
    const ended = runWithout(['adopt', sheet]);
    expect(ended.stderr).not.toMatch(/not allowed|Code generation|bug in Pressure Plan/);
    expect(ended.status).toBe(0);
    expect(readFileSync(uses, 'utf8')).toBe('');
  });

  it('writes the very report it writes with them', () => {
    const before = readFileSync(join(season, 'week-09/out/report.html'), 'utf8');
    expect(run(['report', join(season, 'week-09')]).code).toBe(0);
    expect(readFileSync(join(season, 'week-09/out/report.html'), 'utf8')).toBe(before);
  });
});
