import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/stats/random.ts';
import { cellsOf, SHEET_MUTATIONS, sheetOfCells, shuffleColumns } from './mutate-sheet.ts';
import { type SeasonFiles, smallSeason, withSeason } from './small-season.ts';
import { type Outcome, tryHalftime, tryReport } from './trial.ts';

const season = smallSeason();

/** How the report of a season ended, and its numbers; the seal tells the bytes of the sheets, no number. */
async function planned(files: SeasonFiles): Promise<{ outcome: Outcome; plan: string }> {
  return withSeason(files, async (folder) => {
    const outcome = await tryReport(folder);
    const plan = ['refused', 'bug'].includes(outcome.kind)
      ? ''
      : readFileSync(join(folder, 'week-09/out/report.json'), 'utf8');
    return { outcome, plan: plan.replaceAll(folder, 'season').replace(/,\n "seal": \{[^}]*\}/, '') };
  });
}

/** The season with every sheet changed. */
function eachSheet(change: (bytes: Uint8Array) => Uint8Array): SeasonFiles {
  return Object.fromEntries(
    Object.entries(season).map(([path, bytes]) => [path, path.endsWith('.csv') ? change(bytes) : bytes]),
  );
}

const plain = await planned(season);

describe('a whole season', () => {
  it('of sound files gives a report without a fault', () => expect(plain.outcome).toEqual({ kind: 'correct' }));

  it('gives the same report.json when the columns of every sheet are shuffled', async () => {
    const random = createRandom('columns');
    const shuffled = await planned(eachSheet((bytes) => sheetOfCells(shuffleColumns(cellsOf(bytes), random))));
    expect(shuffled.outcome).toEqual({ kind: 'correct' });
    expect(shuffled.plan).toBe(plain.plan);
  });

  it('gives the same numbers when rows are repeated, and names each of them', async () => {
    const doubled = await planned(
      eachSheet((bytes) => sheetOfCells([...cellsOf(bytes), ...cellsOf(bytes).slice(1, 4)])),
    );
    expect(doubled.outcome).toEqual({ kind: 'faults named' });
    const [before, after] = [plain, doubled].map(({ plan }) => JSON.parse(plan));
    // Opponent, archive and our own film, three rows each; the live sheet is no part of the plan.
    expect(after.film.faults).toBe(9);
    // What was read says how many rows were faulty, and the short version repeats it; no number may differ.
    const numbers = ({ film, ...chapters }: typeof after) => [chapters, film.columns, film.games];
    expect(numbers(after)).toEqual(numbers(before));
  });

  it.each(['nasty cells', 'bytes flipped', 'blank cells'])(
    'with %s in every sheet ends in a report or in words, and so does halftime',
    async (name) => {
      const mutation = SHEET_MUTATIONS.find((candidate) => candidate.name === name);
      const random = createRandom(name);
      await withSeason(
        eachSheet((bytes) => mutation?.spoil(bytes, random) ?? bytes),
        async (folder) => {
          for (const trial of [tryReport, tryHalftime]) {
            const outcome = await trial(folder);
            expect(outcome.kind, JSON.stringify(outcome)).not.toBe('bug');
          }
        },
      );
    },
  );

  it('writes nowhere but into out, whatever the opponent and the games are called', async () => {
    const path = '../../../../elsewhere';
    const text = String(Buffer.from(season['week-09/week.yaml'] ?? [])).replace('Harrow Creek', path);
    const sheet = String(Buffer.from(season['week-09/opponent.csv'] ?? [])).replaceAll('Harrow Creek', path);
    const files = { ...season, 'week-09/week.yaml': Buffer.from(text), 'week-09/opponent.csv': Buffer.from(sheet) };
    await withSeason(files, async (folder) => {
      const before = readdirSync(folder, { recursive: true }).length;
      expect((await tryReport(folder)).kind).toBe('correct');
      const added = (readdirSync(folder, { recursive: true }) as string[]).filter((name) => /[\\/]out[\\/]/.test(name));
      expect(readdirSync(folder, { recursive: true })).toHaveLength(before + added.length + 1);
      expect(readdirSync(join(folder, '..')).includes('elsewhere')).toBe(false);
    });
  });
});
