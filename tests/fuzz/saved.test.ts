import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { diskWeek } from '../../src/commands/disk-season.ts';
import { halftime } from '../../src/commands/halftime.ts';
import { report } from '../../src/commands/report.ts';
import { review } from '../../src/commands/review.ts';
import { script } from '../../src/commands/script.ts';
import { savedPlan } from '../../src/season/sunday-plan.ts';
import { createRandom } from '../../src/stats/random.ts';
import { JSON_MUTATIONS } from './mutate-json.ts';
import { type SeasonFiles, smallSeason, withSeason } from './small-season.ts';

/** The commands that read Sunday's plan again, and the file that shows what they made of it. */
const READERS = {
  halftime: [halftime, 'halftime.json'],
  script: [script, 'script.csv'],
  review: [review, 'review.html'],
} as const;

async function made(folder: string, reader: keyof typeof READERS) {
  const [command, page] = READERS[reader];
  const notes: string[] = [];
  const note = (line: string) => void notes.push(line);
  await command(join(folder, 'week-09'), {}, { out: () => {}, note, progress: () => {}, today: '2026-10-18' });
  return { page: readFileSync(join(folder, 'week-09/out', page), 'utf8'), notes: notes.join('\n') };
}

const quiet = { out: () => {}, note: () => {}, progress: () => {}, today: '2026-10-15' };
const season = smallSeason();
const saved = await withSeason(season, async (folder) => {
  await report(join(folder, 'week-09'), {}, quiet);
  return readFileSync(join(folder, 'week-09/out/report.json'), 'utf8');
});

/** The season with this as out/report.json. */
function withPlan<Result>(plan: string, use: (folder: string) => Promise<Result>, files: SeasonFiles = season) {
  return withSeason(files, (folder) => {
    mkdirSync(join(folder, 'week-09/out'));
    writeFileSync(join(folder, 'week-09/out/report.json'), plan);
    return use(folder);
  });
}

/** Which file, where it stops or which key is wrong. */
const PROBLEM =
  /report\.json (is (empty|cut off)|cannot be read at line \d|holds no object|was changed)|report\.json, at "(schema|version|seal)": ./;

async function planFaults(spoilt: string): Promise<string[]> {
  const reading = await withPlan(spoilt, (folder) => savedPlan(diskWeek(join(folder, 'week-09'))));
  if (reading.kind !== 'unusable') return [`it is ${reading.kind}`];
  return PROBLEM.test(reading.problem) ? [] : [reading.problem];
}

describe('Sunday’s plan, spoilt between two commands', () => {
  it.each(JSON_MUTATIONS)('$name: is not used, and words name the file and what is wrong', async ({ name, spoil }) => {
    for (let seed = 0; seed < 4; seed++) {
      const spoilt = spoil(saved, createRandom(`${name} ${seed}`));
      if (spoilt !== saved) expect(await planFaults(spoilt), String(seed)).toEqual([]);
    }
  });

  it('left as it was is sound, and with other line ends too', async () => {
    for (const text of [saved, saved.replaceAll('\n', '\r\n')])
      expect((await withPlan(text, (folder) => savedPlan(diskWeek(join(folder, 'week-09'))))).kind).toBe('sound');
  });
});

describe('a command on a spoilt plan', () => {
  const spoilt = saved.replace(/"trials": (\d+)/, '"trials": "$1"');

  it.each(['halftime', 'script'] as const)('%s makes what it makes of the sound one, and says so', async (reader) => {
    const sound = await withPlan(saved, (folder) => made(folder, reader));
    const { page, notes } = await withPlan(spoilt, (folder) => made(folder, reader));
    expect(page).toBe(sound.page);
    expect(sound.notes).not.toMatch(/report\.json/);
    expect(notes).toMatch(/out.report\.json was changed after it was written; Sunday's plan is worked out again/);
    expect(notes).toMatch(/^To write it again: pressure-plan report .*week-09$/m);
  });

  it('review says that the plan was worked out again', async () => {
    const { page, notes } = await withPlan(spoilt, (folder) => made(folder, 'review'));
    expect(page).toContain('worked out again from the folder, without the game');
    expect(notes).toMatch(/was changed after it was written/);
  });
});

describe('a plan of other files', () => {
  it.each<[string, SeasonFiles]>([
    [
      'a corrected cell',
      { 'week-09/opponent.csv': Buffer.from(String(season['week-09/opponent.csv']).replace(',run,', ',pass,')) },
    ],
    ['a sheet taken away', { 'archive/one.csv': Buffer.from('') }],
    ['other calls', { 'defense.yaml': Buffer.from(String(season['defense.yaml']).replace('Roof', 'Ridge')) }],
  ])('is not used at halftime after %s', async (_, change) => {
    for (const [path, bytes] of Object.entries(change)) expect(String(season[path])).not.toBe(String(bytes));
    const { notes } = await withPlan(saved, (folder) => made(folder, 'halftime'), { ...season, ...change });
    expect(notes).toMatch(/made from other inputs; Sunday's plan is worked out again/);
  });

  it('is not used when it is the plan of another week', async () => {
    const other = {
      ...season,
      'week-09/week.yaml': Buffer.from(String(season['week-09/week.yaml']).replace('Harrow Creek', 'Tamarack Valley')),
      'week-09/opponent.csv': Buffer.from(
        String(season['week-09/opponent.csv']).replaceAll('Harrow Creek', 'Tamarack Valley'),
      ),
    };
    const { page, notes } = await withPlan(saved, (folder) => made(folder, 'halftime'), other);
    expect(JSON.parse(page).opponent).toBe('Tamarack Valley');
    expect(notes).toMatch(/made from other inputs/);
    const reviewed = await withPlan(saved, (folder) => made(folder, 'review'), {
      ...other,
      'week-09/game.csv': Buffer.from(String(season['week-09/game.csv']).replaceAll('Harrow Creek', 'Tamarack Valley')),
    });
    expect(reviewed.notes).toMatch(/report\.json is a plan against Harrow Creek, not Tamarack Valley/);
  });

  it('is taken as it is where no sheet of the opponent lies beside it, and that is said', async () => {
    const { 'week-09/opponent.csv': _, ...alone } = season;
    const { page, notes } = await withPlan(saved, (folder) => made(folder, 'halftime'), alone);
    expect(JSON.parse(page).opponent).toBe('Harrow Creek');
    expect(notes).toMatch(/no opponent….csv here .* Sunday's plan for Harrow Creek/);
  });
});
