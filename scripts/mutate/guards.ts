import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';

/** One part of `npm test` that may notice a change to a file. */
interface Guard {
  readonly name: string;
  readonly passes: (file: string) => boolean;
}

/** A change can make a loop that never ends: after so many milliseconds it counts as noticed. */
const LONGEST = 15 * 60_000;

const quiet = (command: string, args: readonly string[]) =>
  spawnSync(command, args, { encoding: 'utf8', timeout: LONGEST }).status === 0;

/** One process for all the files: loading the sources again for each costs more than most of the tests. */
const QUICK = ['--bail=1', '--maxWorkers=1', '--no-isolate'];

const tests = (named: readonly string[]) => named.length === 0 || quiet('npx', ['vitest', 'run', ...QUICK, ...named]);

/** Tests of the built program: it has to be built again before they see a change. */
const BUILT = /^tests\/(browser|end-to-end|packaging|golden|fuzz)\//;

/** Tests that import the file by its name. */
function testsOf(file: string): readonly string[] {
  const all = readdirSync('tests', { recursive: true }).map((name) => `tests/${name}`);
  const named = `${file}'`;
  return all.filter(
    (name) => name.endsWith('.test.ts') && !BUILT.test(name) && readFileSync(name, 'utf8').includes(named),
  );
}

/** The folder of tests that answers to a file's folder, or to the nearest one above it that has one. */
function testsBeside(file: string): string {
  const folder = file.slice(0, file.lastIndexOf('/')).replace(/^src/, 'tests');
  return existsSync(folder) ? `${folder}/` : testsBeside(folder.replace(/^tests/, 'src'));
}

/** What stands behind the built program: its pages for most rooms, the browser for the desk. */
function builtTests(file: string): readonly string[] {
  if (file.startsWith('src/desk/')) return ['tests/browser/desk-'];
  return ['tests/golden/', ...(file.startsWith('src/commands/') ? ['tests/end-to-end/'] : [])];
}

/** Every other test that reaches the file by its imports. */
function related(file: string): boolean {
  const apart = 'tests/{browser,end-to-end,packaging,golden,fuzz}/**';
  return quiet('npx', ['vitest', 'related', file, '--run', ...QUICK, '--exclude', apart]);
}

/** In the order that is cheapest over a whole list. */
const GUARDS: readonly Guard[] = [
  { name: 'its own tests', passes: (file) => tests(testsOf(file)) },
  { name: 'its folder', passes: (file) => tests([testsBeside(file)]) },
  { name: 'pages', passes: (file) => quiet('npm', ['run', '--silent', 'build']) && tests(builtTests(file)) },
  { name: 'types', passes: () => quiet('npx', ['tsc', '-p', 'tsconfig.json']) },
  { name: 'tests farther off', passes: related },
  { name: 'the built program', passes: () => tests(['tests/end-to-end/', 'tests/fuzz/']) },
];

/**
 * What notices the change made to a file.
 *
 * @returns name of the first guard that fails, undefined where all of them pass
 */
export const noticedBy = (file: string): string | undefined => GUARDS.find(({ passes }) => !passes(file))?.name;
