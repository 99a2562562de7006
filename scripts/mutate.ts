// Changes one small thing at a time in the sources and sees whether the tests notice. The list is drawn once from a fixed
// seed, the same number from each room; a survivor is printed with its place. Work in a clean checkout: files are changed
// and put back. npx tsx scripts/mutate.ts [--each 10] [--seed 1] [--room src/report] [--list]
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { createRandom } from '../src/stats/random.ts';
import { type Mutant, mutantsOf } from './mutate/mutants.ts';

const { values } = parseArgs({
  options: {
    each: { type: 'string', default: '10' },
    seed: { type: 'string', default: '1' },
    room: { type: 'string' },
    list: { type: 'boolean', default: false },
  },
});

const NOT_MUTATED = /\/(page-script|templates|words)\b|\.d\.ts$|src\/(cli|library)\.ts$/;

function rooms(): string[] {
  const below = (folder: string) =>
    readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => `${folder}/${name}`);
  const all = below('src').flatMap((room) => (room === 'src/pressure' ? below(room) : [room]));
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

const quiet = (command: string, args: readonly string[]) => spawnSync(command, args, { encoding: 'utf8' }).status === 0;

/** The tests that reach the file first; the built program and its pages for what they let through. */
function survives(file: string): boolean {
  const near = [
    'vitest',
    'related',
    file,
    '--run',
    '--bail=1',
    '--exclude',
    'tests/{browser,end-to-end,packaging,golden,fuzz}/**',
  ];
  if (!quiet('npx', near)) return false;
  if (!quiet('npm', ['run', '--silent', 'build'])) return false;
  return quiet('npx', ['vitest', 'run', '--bail=1', 'tests/golden', 'tests/end-to-end/report.test.ts']);
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
for (const room of rooms()) {
  const mutants = drawn(room);
  const survivors = values.list ? mutants : mutants.filter(tried);
  all += mutants.length;
  killed += mutants.length - survivors.length;
  console.log(`${room}: ${mutants.length - survivors.length} of ${mutants.length} killed`);
  for (const { file, line, was, becomes } of survivors) console.log(`  ${file}:${line}  ${was}  ->  ${becomes}`);
}
console.log(`${killed} of ${all} killed`);
