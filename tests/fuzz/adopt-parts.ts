import { join } from 'node:path';
import { adopt } from '../../src/commands/adopt.ts';
import type { Random } from '../../src/stats/random.ts';
import { makeWorkbook } from '../ingest/make-workbook.ts';
import { type Tried, tryCommand, withStandardInput } from './command-trial.ts';
import { cellsOf, SHEET_MUTATIONS, sheetOfCells } from './mutate-sheet.ts';
import { NASTY_TEXTS } from './nasty-text.ts';
import { smallSeason, withSeason } from './small-season.ts';
import { pick, spoiltSheet, spoiltYaml } from './spoilt.ts';

const season = smallSeason();
const opponent = season['week-09/opponent.csv']!;
const own = season['ours.csv']!;

/** Foreign headers over our own values: what adopt is for. */
function foreign(random: Random): Uint8Array {
  const [header = [], ...rows] = cellsOf(random.uniform() < 0.3 ? own : opponent);
  const names = header.map((_, i) => (random.uniform() < 0.5 ? `F${i}` : header[i]!.toUpperCase().slice(0, 4)));
  return sheetOfCells([names, ...rows]);
}

export async function attemptAdopt(random: Random): Promise<Tried> {
  const { what, bytes } = spoiltSheet(foreign(random), random);
  const name = pick(['sheet.csv', 'sheet.tsv', 'ours.csv', 'sheet.txt'], random);
  const kind = random.uniform() < 0.3 ? pick(['own', 'opponent'], random) : undefined;
  const outcome = await withSeason({ [name]: bytes }, (folder) => {
    const options = { output: join(folder, 'made'), ...(kind ? { kind } : {}) };
    return tryCommand({
      season: folder,
      into: ['made/'],
      run: (terminal) => adopt(join(folder, name), options, terminal),
    });
  });
  return { what: `${name}: ${what}`, outcome };
}

export async function attemptPasted(random: Random): Promise<Tried> {
  const { what, bytes } = spoiltSheet(foreign(random), random);
  const outcome = await withSeason({ 'week.yaml': Buffer.from('') }, (folder) =>
    withStandardInput(bytes, () =>
      tryCommand({
        season: folder,
        into: ['made/'],
        run: (terminal) => adopt('-', { output: join(folder, 'made') }, terminal),
      }),
    ),
  );
  return { what, outcome };
}

export async function attemptWorkbook(random: Random): Promise<Tried> {
  const rows = cellsOf(foreign(random)).slice(0, 30);
  const plain = makeWorkbook([
    rows.map((row) => row.slice(0, 26).map((cell) => (/^\d+$/.test(cell) ? Number(cell) : cell))),
  ]);
  const cuts = SHEET_MUTATIONS.filter(({ name }) => /cut|flipped|piece|NUL|random/.test(name));
  const { name, spoil } = pick(cuts, random);
  const outcome = await withSeason({ 'sheet.xlsx': spoil(plain, random) }, (folder) =>
    tryCommand({
      season: folder,
      into: ['made/'],
      run: (terminal) => adopt(join(folder, 'sheet.xlsx'), { output: join(folder, 'made') }, terminal),
    }),
  );
  return { what: name, outcome };
}

const ANSWERS = `play_kind: F3
"F3 means": run
down: F1
"code R in F3": run
F5: ignore
offense: F2
`;

export async function attemptAnswers(random: Random): Promise<Tried> {
  const { what, bytes } = spoiltYaml(ANSWERS, random);
  const typed = Array.from(
    { length: random.integer(4) },
    () => `${pick(NASTY_TEXTS, random)}=${pick(NASTY_TEXTS, random)}`,
  );
  const outcome = await withSeason({ 'sheet.csv': foreign(random), 'answers.yaml': bytes }, (folder) => {
    const options = { output: join(folder, 'made'), answers: join(folder, 'answers.yaml'), answer: typed };
    return tryCommand({
      season: folder,
      into: ['made/'],
      run: (terminal) => adopt(join(folder, 'sheet.csv'), options, terminal),
    });
  });
  return { what: `${what}, ${JSON.stringify(typed).slice(0, 200)}`, outcome };
}
