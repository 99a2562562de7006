// Spoils sheets, settings and whole seasons in many ways and prints how each kind ended; exits 1 when a bug was found.
// npx tsx scripts/fuzz.ts --seed 1 --inputs 2000 --weeks 100 --commands 1000 [--only adopt] [--sheet FILE --profile FILE]
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type * as z from 'zod';
import { defenseSchema } from '../src/game/short-form/defense-schema.ts';
import { weekSettingsSchema } from '../src/game/week-settings.ts';
import { profileSchema } from '../src/ingest/profile.ts';
import { profileTemplate } from '../src/ingest/templates.ts';
import { readYaml } from '../src/ingest/yaml-file.ts';
import { createRandom, type Random } from '../src/stats/random.ts';
import { COMMAND_PARTS } from '../tests/fuzz/command-parts.ts';
import { SHEET_MUTATIONS } from '../tests/fuzz/mutate-sheet.ts';
import { YAML_MUTATIONS } from '../tests/fuzz/mutate-yaml.ts';
import { type SeasonFiles, smallSeason, withSeason } from '../tests/fuzz/small-season.ts';
import { type Outcome, tryHalftime, tryReport, trySheet } from '../tests/fuzz/trial.ts';
import { tryYaml } from '../tests/fuzz/try-yaml.ts';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    inputs: { type: 'string', default: '1000' },
    weeks: { type: 'string', default: '50' },
    commands: { type: 'string', default: '100' },
    only: { type: 'string' },
    sheet: { type: 'string' },
    profile: { type: 'string' },
  },
});

const counts = new Map<string, number>();
const slowest = { milliseconds: 0, what: '' };
let bugs = 0;

async function tried(
  part: string,
  said: string | (() => string),
  trial: () => Outcome | Promise<Outcome>,
): Promise<void> {
  const began = performance.now();
  const outcome = await trial();
  const what = typeof said === 'string' ? said : said();
  const milliseconds = performance.now() - began;
  if (milliseconds > slowest.milliseconds) Object.assign(slowest, { milliseconds, what: `${part}, ${what}` });
  const key = `${part}: ${outcome.kind}`;
  counts.set(key, (counts.get(key) ?? 0) + 1);
  if (outcome.kind !== 'bug') return;
  bugs++;
  console.log(`BUG ${part}, ${what}\n${outcome.words}\n`);
}

const pick = <T>(items: readonly T[], random: Random): T => items[random.integer(items.length)]!;
const season = smallSeason();
const profile = values.profile ? readYaml(readFileSync(values.profile), profileSchema, values.profile) : undefined;
const sheet = values.sheet ? Uint8Array.from(readFileSync(values.sheet)) : season['week-09/opponent.csv']!;

/** One sheet, spoilt once or twice, read as each kind of sheet. */
async function trySheets(): Promise<void> {
  for (let i = 0; i < Number(values.inputs); i++) {
    const random = createRandom(`${values.seed} sheet ${i}`);
    const own = !values.sheet && random.uniform() < 0.3;
    const steps = Array.from({ length: 1 + random.integer(2) }, () => pick(SHEET_MUTATIONS, random));
    const bytes = steps.reduce<Uint8Array>(
      (spoilt, { spoil }) => (spoilt.length === 0 ? spoilt : spoil(spoilt, random)),
      own ? season['ours.csv']! : sheet,
    );
    const kind = own ? 'own' : 'opponent';
    const options = profile?.kind === 'value' ? ({ kind, profile: profile.value } as const) : ({ kind } as const);
    await tried('sheet', `input ${i}: ${steps.map(({ name }) => name).join(' + ')}`, () => trySheet(bytes, options));
  }
}

const SETTINGS: readonly { readonly file: string; readonly schema: z.ZodType; readonly text: string }[] = [
  { file: 'defense.yaml', schema: defenseSchema, text: Buffer.from(season['defense.yaml']!).toString() },
  { file: 'week.yaml', schema: weekSettingsSchema, text: Buffer.from(season['week-09/week.yaml']!).toString() },
  {
    file: 'profile.yaml',
    schema: profileSchema,
    text: values.profile ? readFileSync(values.profile, 'utf8') : profileTemplate(),
  },
];

/** One settings file, spoilt once or twice. */
async function trySettings(): Promise<void> {
  for (let i = 0; i < Number(values.inputs); i++) {
    const random = createRandom(`${values.seed} settings ${i}`);
    const { file, schema, text } = pick(SETTINGS, random);
    const { name, spoil } = pick(YAML_MUTATIONS, random);
    const spoilt = spoil(text, random);
    await tried('settings', `input ${i}: ${file}, ${name}`, () => tryYaml(spoilt, schema, file));
  }
}

/** A whole season with one or two of its files spoilt, from the files to the pages and on to halftime. */
async function tryWeeks(): Promise<void> {
  for (let i = 0; i < Number(values.weeks); i++) {
    const random = createRandom(`${values.seed} week ${i}`);
    const { files, what } = spoiltSeason(random);
    await withSeason(files, async (folder) => {
      await tried('report', `input ${i}: ${what}`, () => tryReport(folder));
      await tried('halftime', `input ${i}: ${what}`, () => tryHalftime(folder));
    });
  }
}

function spoiltSeason(random: Random): { readonly files: SeasonFiles; readonly what: string } {
  const files: Record<string, Uint8Array> = { ...season };
  const what: string[] = [];
  for (let i = 0; i <= random.integer(2); i++) {
    const path = pick(Object.keys(season), random);
    const bytes = files[path]!;
    if (bytes.length === 0) continue;
    const mutation = path.endsWith('.yaml') ? pick(YAML_MUTATIONS, random) : pick(SHEET_MUTATIONS, random);
    what.push(`${path}, ${mutation.name}`);
    files[path] = path.endsWith('.yaml')
      ? spoilText(mutation as (typeof YAML_MUTATIONS)[number], bytes, random)
      : (mutation as (typeof SHEET_MUTATIONS)[number]).spoil(bytes, random);
  }
  return { files, what: what.join(' + ') };
}

function spoilText(mutation: (typeof YAML_MUTATIONS)[number], bytes: Uint8Array, random: Random): Uint8Array {
  try {
    return Buffer.from(mutation.spoil(Buffer.from(bytes).toString(), random));
  } catch {
    return bytes;
  }
}

/** Every command with spoiled inputs, or those with names that begin as asked. */
async function tryCommands(): Promise<void> {
  for (const { name, perThousand, attempt } of COMMAND_PARTS.filter(({ name }) => name.startsWith(values.only ?? ''))) {
    for (let i = 0; i < (Number(values.commands) * perThousand) / 1000; i++) {
      let what = `input ${i}`;
      const trial = async () => {
        const { what: spoilt, outcome } = await attempt(createRandom(`${values.seed} ${name} ${i}`));
        what = `input ${i}: ${spoilt}`;
        return outcome;
      };
      await tried(name, () => what, trial);
    }
    for (const [key, count] of [...counts].filter(([key]) => key.startsWith(`${name}: `)))
      console.log(`${key} ${count}`);
  }
}

if (values.only === undefined) {
  await trySheets();
  await trySettings();
  await tryWeeks();
}
await tryCommands();
for (const [key, count] of [...counts].sort()) console.log(`${key.padEnd(28)} ${count}`);
console.log(`slowest: ${Math.round(slowest.milliseconds)} ms, ${slowest.what}`);
console.log(`seed ${values.seed}, ${bugs} bugs`);
process.exit(bugs === 0 ? 0 : 1);
