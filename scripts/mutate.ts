// Changes one small thing at a time in the sources and sees whether the tests notice: the list planted by hand, then a draw
// from a fixed seed, the same number from each room. Says of each what noticed it. Work in a clean checkout: files are
// changed and put back. npx tsx scripts/mutate.ts [--each 4] [--seed 1] [--room src/report or planted] [--list]
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { createRandom } from '../src/stats/random.ts';
import { noticedBy } from './mutate/guards.ts';
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

function tried(mutant: Mutant): string | undefined {
  const text = readFileSync(mutant.file, 'utf8');
  try {
    writeFileSync(mutant.file, `${text.slice(0, mutant.start)}${mutant.becomes}${text.slice(mutant.end)}`);
    return noticedBy(mutant.file);
  } finally {
    writeFileSync(mutant.file, text);
  }
}

let [killed, all] = [0, 0];
function tryAll(name: string, mutants: readonly Mutant[]): void {
  let here = 0;
  for (const mutant of mutants) {
    const noticed = values.list ? undefined : tried(mutant);
    if (noticed !== undefined) here += 1;
    console.log(`  ${mutant.file}:${mutant.line}  ${mutant.was}  ->  ${mutant.becomes}${verdict(noticed)}`);
  }
  console.log(`${name}: ${here} of ${mutants.length} killed`);
  killed += here;
  all += mutants.length;
}

function verdict(noticed: string | undefined): string {
  if (values.list) return '';
  return noticed === undefined ? '  SURVIVES' : `  killed by ${noticed}`;
}

if (values.room === undefined || values.room === 'planted') tryAll('planted', plantedMutants());
for (const room of rooms()) tryAll(room, drawn(room));
console.log(`${killed} of ${all} killed`);
