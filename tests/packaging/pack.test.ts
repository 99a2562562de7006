import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** What `npm pack --json` says of the package it made. */
interface Packed {
  readonly filename: string;
  readonly size: number;
  readonly unpackedSize: number;
  readonly files: readonly { readonly path: string }[];
}

const root = mkdtempSync(join(tmpdir(), 'pack-'));
const empty = join(root, 'empty');
let packed: Packed;

/** Runs a command in a folder; the error it throws says what the command said. */
function run(folder: string, command: string, args: readonly string[]): string {
  const ended = spawnSync(command, args, { cwd: folder, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1' } });
  if (ended.status !== 0) throw new Error(`${command} ${args.join(' ')}: ${ended.stdout}${ended.stderr}`);
  return ended.stdout;
}

/** Packs a copy of the sources, so that dist/ stays as it is for the tests beside this one. */
beforeAll(() => {
  const stage = join(root, 'stage');
  mkdirSync(stage);
  for (const path of ['package.json', 'tsconfig.json', 'README.md', 'LICENSE', 'src', 'scripts', 'data'])
    cpSync(path, join(stage, path), { recursive: true });
  symlinkSync(resolve('node_modules'), join(stage, 'node_modules'));
  const said = run(stage, 'npm', ['pack', '--json', '--pack-destination', root]);
  [packed] = JSON.parse(said.slice(said.lastIndexOf('\n[') + 1));
  mkdirSync(empty);
  run(empty, 'npm', ['init', '--yes']);
  // Nothing but the tarball is needed: no registry, no cache, no script of a package.
  run(empty, 'npm', [
    'install',
    '--offline',
    '--ignore-scripts',
    '--no-audit',
    '--no-fund',
    join(root, packed.filename),
  ]);
}, 300_000);
afterAll(() => rmSync(root, { recursive: true, force: true }));

describe('the packed tool', () => {
  it('holds the program, the demo, the licenses and the types, and nothing else', () => {
    const paths = packed.files.map(({ path }) => path);
    for (const path of [
      'dist/cli.js',
      'dist/page-script.js',
      'dist/THIRD-PARTY-LICENSES.txt',
      'dist/types/library.d.ts',
      'LICENSE',
    ])
      expect(paths).toContain(path);
    expect(paths.filter((path) => !/^(dist\/|data\/demo\/|README\.md$|LICENSE$|package\.json$)/.test(path))).toEqual(
      [],
    );
    expect(paths.filter((path) => /node_modules|\/out\/|\.map$/.test(path))).toEqual([]);
  });

  it('keeps to 5.5 MB packed and 12 MB installed, the desk included, and brings no other package', () => {
    expect(packed.size).toBeLessThan(5_500_000);
    expect(packed.unpackedSize).toBeLessThan(12_000_000);
    expect(
      JSON.parse(run(empty, 'npm', ['ls', '--all', '--json'])).dependencies['pressure-plan'].dependencies,
    ).toBeUndefined();
  });

  it('names the license of every package inside', () => {
    const licenses = readFileSync(join(empty, 'node_modules/pressure-plan/dist/THIRD-PARTY-LICENSES.txt'), 'utf8');
    for (const name of ['vega ', 'vega-lite ', 'zod ', 'yaml ', 'papaparse ', 'commander ', 'cephes ', 'd3-scale '])
      expect(licenses).toContain(`\n${name}`);
    expect(
      licenses.match(/Permission is hereby granted|Redistribution and use|Permission to use/g)?.length,
    ).toBeGreaterThan(40);
  });

  it('runs by npx in an empty folder and writes the demo report', () => {
    run(empty, 'npx', ['--offline', 'pressure-plan', 'demo']);
    const page = readFileSync(join(empty, 'pressure-plan-demo/week-09/out/report.html'), 'utf8');
    expect(page).toContain('Harrow Creek');
    expect(page).toContain('<svg');
    expect(page).toContain('data-theme');
  }, 120_000);
});

const consumer = `
import { filmFromRecords, halftimeUpdate, readCallLibrary, readSheet, readWeekSettings, share, tendencyOf, wilsonInterval, type Film, type HalftimeInput, type Share, type WeekPlan, type WeekSettings } from 'pressure-plan';

const settings = readWeekSettings('opponent: Harrow Creek');
if (settings.kind !== 'value') throw new Error('no settings');
const week: WeekSettings = settings.value;
const size: number = week.menu.size;
const snap = { down: 3, to_go: 8, play_kind: 'screen' } as const;
const chart: Film = filmFromRecords([snap, { ...snap, play_kind: 'run' }, { ...snap, play_kind: 'screen' }]);
const answer = tendencyOf(chart, { of: 'screen', when: ['third_long'], by: 'down' }, week.situations);
if (answer.kind !== 'rows') throw new Error('no rows');
const screens: Share = answer.total.share;
const refused = readCallLibrary('calls: none');
const words: string = refused.kind === 'problems' ? (refused.problems[0]?.rule ?? '') : '';
const empty = readSheet({ file: 'x.csv', bytes: new Uint8Array() }, { kind: 'opponent' }).chart.size;
export const update: ((input: HalftimeInput) => unknown) = halftimeUpdate;
export const planOf = ({ plan }: HalftimeInput): WeekPlan => plan;
// @ts-expect-error a count is a number
share('3', 10);
// @ts-expect-error settings have no such key
week.menu.sizes;
console.log(JSON.stringify({ published: wilsonInterval(81, 263), size, screens, words: words !== '', empty }));
`
  .replace("share('3', 10);", "export const wrong = () => share('3', 10);")
  .replace('week.menu.sizes;', 'export const none = () => week.menu.sizes;');

describe('the packed library', () => {
  it.each(['nodenext', 'bundler'] as const)(
    'type-checks and computes a published value, module resolution %s',
    (resolution) => {
      const module = resolution === 'bundler' ? 'esnext' : 'nodenext';
      const options = {
        strict: true,
        target: 'es2023',
        lib: ['es2023'],
        types: [],
        module,
        moduleResolution: resolution,
      };
      writeFileSync(join(empty, 'consumer.mts'), `declare const console: { log(text: string): void };\n${consumer}`);
      const tsconfig = {
        compilerOptions: { ...options, exactOptionalPropertyTypes: true, skipLibCheck: false },
        files: ['consumer.mts'],
      };
      writeFileSync(join(empty, 'tsconfig.json'), JSON.stringify(tsconfig));
      run(empty, process.execPath, [resolve('node_modules/typescript/bin/tsc'), '-p', 'tsconfig.json']);
      const {
        published,
        size,
        screens,
        words,
        empty: none,
      } = JSON.parse(run(empty, process.execPath, ['consumer.mjs']));
      // Newcombe 1998, "Two-sided confidence intervals for the single proportion", table I, method 3: 81 of 263.
      expect(published.low).toBeCloseTo(0.2553, 4);
      expect(published.high).toBeCloseTo(0.3662, 4);
      expect([size, screens.count, screens.trials, words, none]).toEqual([10, 2, 3, true, 0]);
    },
    120_000,
  );
});

/** Other versions of Node to try, as paths of their programs in PRESSURE_PLAN_NODES. */
const others = (process.env['PRESSURE_PLAN_NODES'] ?? '').split(delimiter).filter((path) => existsSync(path));
if (others.length === 0) process.stderr.write('SKIPPED: no other Node to try; name some in PRESSURE_PLAN_NODES\n');

describe.skipIf(others.length === 0)('other versions of Node', () => {
  it.each(others.map((node) => ({ node, version: execFileSync(node, ['--version'], { encoding: 'utf8' }).trim() })))(
    '$version writes the same plan as this one',
    ({ node, version }) => {
      const program = join(empty, 'node_modules/pressure-plan/dist/cli.js');
      const plans = [process.execPath, node].map((path, i) => {
        const folder = join(root, `${version}-${i}`);
        run(root, path, [program, 'demo', '--output', folder]);
        return readFileSync(join(folder, 'week-09/out/report.json'), 'utf8');
      });
      expect(plans[1]).toBe(plans[0]);
    },
    120_000,
  );
});
