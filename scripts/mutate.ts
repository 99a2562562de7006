// Changes one small thing at a time in the sources and sees whether the tests notice: the list planted by hand, then a draw
// from a fixed seed, the same number from each room. A survivor is printed with its place. Work in a clean checkout: files
// are changed and put back. npx tsx scripts/mutate.ts [--each 4] [--seed 1] [--room src/report or planted] [--list]
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { createRandom } from '../src/stats/random.ts';
import { type Mutant, mutantsOf } from './mutate/mutants.ts';
import { plantedMutants } from './mutate/planted.ts';

const { values } = parseArgs({
  options: {
    each: { type: 'string', default: '4' },
    seed: { type: 'string', default: '1' },
    room: { type: 'string' },
    list: { type: 'boolean', default: false },
  },
});

const NOT_MUTATED = /\/(page-script|templates)\b|\.d\.ts$|src\/(cli|library)\.ts$/;

function rooms(): string[] {
  const below = (folder: string) =>
    readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => `${folder}/${name}`);
  const all = below('src').flatMap((room) => (room === 'src/pressure' ? below(room) : [room]));
  if (values.room === 'planted') return [];
  return values.room === undefined ? all : [values.room];
}

function sourcesOf(room: string): string[] {
  return readdirSync(room, { recursive: true })
    .map((file) => `${room}/${file}`)
    .filter((file) => file.endsWith('.ts') && !NOT_MUTATED.test(file))
    .sort();
}

/** A fixed draw of a room's mutants, no two of one line. */
function drawn(room: string): Mutant[] {
  const all = sourcesOf(room).flatMap((file) => mutantsOf(file, readFileSync(file, 'utf8')));
  const random = createRandom(`${values.seed} ${room}`);
  const chosen = new Map<string, Mutant>();
  for (let tries = 0; tries < 1000 && all.length > 0 && chosen.size < Number(values.each); tries++) {
    const mutant = all[random.integer(all.length)];
    if (mutant) chosen.set(`${mutant.file}:${mutant.line}`, chosen.get(`${mutant.file}:${mutant.line}`) ?? mutant);
  }
  return [...chosen.values()];
}

/** A change can make a loop that never ends: after so many milliseconds it counts as noticed. */
const LONGEST = 30 * 60_000;

const quiet = (command: string, args: readonly string[]) =>
  spawnSync(command, args, { encoding: 'utf8', timeout: LONGEST }).status === 0;

/** One process for all the files: loading the sources again for each costs more than most of the tests. */
const QUICK = ['--bail=1', '--maxWorkers=1', '--no-isolate'];
const tests = (...named: readonly string[]) => quiet('npx', ['vitest', 'run', ...QUICK, ...named]);

/** The folder of tests that answers to a file's folder, or to the nearest one above it that has one. */
function testsBeside(file: string): string {
  const folder = file.slice(0, file.lastIndexOf('/')).replace(/^src/, 'tests');
  return existsSync(folder) ? `${folder}/` : testsBeside(folder.replace(/^tests/, 'src'));
}

/** What stands behind the built program: its pages for most rooms, the browser for the desk. */
function builtTests(file: string): readonly string[] {
  if (file.startsWith('src/desk/')) return ['tests/browser/desk-week', 'tests/browser/desk-same-as-terminal'];
  return ['tests/golden/', file.startsWith('src/commands/') ? 'tests/end-to-end/' : 'tests/end-to-end/report'];
}

/** Tests that import the file by its name. */
function testsOf(file: string): readonly string[] {
  const all = readdirSync('tests', { recursive: true }).map((name) => `tests/${name}`);
  const named = `${file}'`;
  return all.filter((name) => name.endsWith('.test.ts') && readFileSync(name, 'utf8').includes(named));
}

/** The tests of the file first, then those beside it, then the built program, then every test that reaches the file. */
function survives(file: string): boolean {
  const own = testsOf(file);
  if (own.length > 0 && !tests(...own)) return false;
  if (!tests(testsBeside(file))) return false;
  if (!quiet('npm', ['run', '--silent', 'build']) || !tests(...builtTests(file))) return false;
  const apart = 'tests/{browser,end-to-end,packaging,golden,fuzz}/**';
  return quiet('npx', ['vitest', 'related', file, '--run', ...QUICK, '--exclude', apart]);
}

function tried(mutant: Mutant): boolean {
  const text = readFileSync(mutant.file, 'utf8');
  try {
    writeFileSync(mutant.file, `${text.slice(0, mutant.start)}${mutant.becomes}${text.slice(mutant.end)}`);
    return survives(mutant.file);
  } finally {
    writeFileSync(mutant.file, text);
  }
}

let [killed, all] = [0, 0];
function tryAll(name: string, mutants: readonly Mutant[]): void {
  let here = 0;
  for (const mutant of mutants) {
    const lives = values.list || tried(mutant);
    if (!lives) here += 1;
    else console.log(`  ${mutant.file}:${mutant.line}  ${mutant.was}  ->  ${mutant.becomes}`);
  }
  console.log(`${name}: ${here} of ${mutants.length} killed`);
  killed += here;
  all += mutants.length;
}

if (values.room === undefined || values.room === 'planted') tryAll('planted', plantedMutants());
for (const room of rooms()) tryAll(room, drawn(room));
console.log(`${killed} of ${all} killed`);
