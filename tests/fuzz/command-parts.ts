import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { adopt } from '../../src/commands/adopt.ts';
import { agree } from '../../src/commands/agree.ts';
import { check } from '../../src/commands/check.ts';
import { counts } from '../../src/commands/counts.ts';
import { halftime } from '../../src/commands/halftime.ts';
import { report } from '../../src/commands/report.ts';
import { review } from '../../src/commands/review.ts';
import { script } from '../../src/commands/script.ts';
import { tendency } from '../../src/commands/tendency.ts';
import type { Random } from '../../src/stats/random.ts';
import { makeWorkbook } from '../ingest/make-workbook.ts';
import { put, tryCommand, withStandardInput } from './command-trial.ts';
import { JSON_MUTATIONS } from './mutate-json.ts';
import { cellsOf, SHEET_MUTATIONS, sheetOfCells } from './mutate-sheet.ts';
import { YAML_MUTATIONS } from './mutate-yaml.ts';
import { NASTY_TEXTS } from './nasty-text.ts';
import { type SeasonFiles, smallSeason, withSeason } from './small-season.ts';
import type { Outcome } from './trial.ts';

/** One input: what was spoilt, and how the command ended. */
export interface Tried {
  readonly what: string;
  readonly outcome: Outcome;
}

/** A command with spoilt inputs; the same random numbers give the same input. */
export interface CommandPart {
  readonly name: string;
  /** Inputs for each thousand asked for: slow commands get fewer. */
  readonly perThousand: number;
  readonly attempt: (random: Random) => Promise<Tried>;
}

const season = smallSeason();
const pick = <T>(items: readonly T[], random: Random): T => items[random.integer(items.length)]!;
const WEEK = 'week-09';
const OUT = [`${WEEK}/out/`];

interface Spoilt {
  readonly what: string;
  readonly bytes: Uint8Array;
}

function spoiltSheet(bytes: Uint8Array, random: Random): Spoilt {
  const steps = Array.from({ length: 1 + random.integer(2) }, () => pick(SHEET_MUTATIONS, random));
  const spoilt = steps.reduce((sheet, { spoil }) => (sheet.length === 0 ? sheet : spoil(sheet, random)), bytes);
  return { what: steps.map(({ name }) => name).join(' + '), bytes: spoilt };
}

function spoiltYaml(text: string, random: Random): Spoilt {
  const { name, spoil } = pick(YAML_MUTATIONS, random);
  return { what: name, bytes: Buffer.from(spoil(text, random)) };
}

/** Sunday's plan of the small season, made once. */
let saved: Promise<string> | undefined;
function savedPlan(): Promise<string> {
  saved ??= withSeason(season, async (folder) => {
    const quiet = { out: () => {}, note: () => {}, progress: () => {}, today: '2026-10-15' };
    await report(join(folder, WEEK), {}, quiet);
    return readFileSync(join(folder, WEEK, 'out/report.json'), 'utf8');
  });
  return saved;
}

/** The season with its saved plan. */
async function planned<Result>(files: SeasonFiles, use: (folder: string) => Promise<Result>): Promise<Result> {
  const plan = await savedPlan();
  return withSeason(files, (folder) => {
    mkdirSync(join(folder, WEEK, 'out'));
    put(folder, `${WEEK}/out/report.json`, plan);
    return use(folder);
  });
}

const opponent = season['week-09/opponent.csv']!;
const own = season['ours.csv']!;

/** Foreign headers over our own values: what adopt is for. */
function foreign(random: Random): Uint8Array {
  const [header = [], ...rows] = cellsOf(random.uniform() < 0.3 ? own : opponent);
  const names = header.map((_, i) => (random.uniform() < 0.5 ? `F${i}` : header[i]!.toUpperCase().slice(0, 4)));
  return sheetOfCells([names, ...rows]);
}

async function attemptAdopt(random: Random): Promise<Tried> {
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

async function attemptPasted(random: Random): Promise<Tried> {
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

async function attemptWorkbook(random: Random): Promise<Tried> {
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

async function attemptAnswers(random: Random): Promise<Tried> {
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

const BOOK = `formations:
  trips right: { receivers: 3x1, backs: 1, back_spot: strong, strength: right }
  doubles: { receivers: 2x2, backs: 1 }
  empty: { receivers: 3x2, backs: 0, back_spot: none }
`;

async function attemptBook(random: Random): Promise<Tried> {
  const { what, bytes } = spoiltYaml(BOOK, random);
  return onSeason({ ...season, 'formations.yaml': bytes }, what, check);
}

async function attemptCounts(random: Random): Promise<Tried> {
  const { what, bytes } = spoiltSheet(await tallies(), random);
  return onSeason({ ...season, 'archive/league-counts.csv': bytes }, what, random.uniform() < 0.7 ? check : counts);
}

let counted: Promise<Uint8Array> | undefined;
function tallies(): Promise<Uint8Array> {
  counted ??= withSeason(season, async (folder) => {
    const said: string[] = [];
    const out = (text: string) => void said.push(text);
    await counts(join(folder, WEEK), {}, { out, note: () => {}, progress: () => {}, today: '2026-10-15' });
    return Buffer.from(said.join('').replaceAll('\r\n', '\n'));
  });
  return counted;
}

type WeekCommand = (week: string, options: object, terminal: Parameters<typeof check>[2]) => Promise<number>;

async function onSeason(files: SeasonFiles, what: string, command: WeekCommand): Promise<Tried> {
  const outcome = await withSeason(files, (folder) =>
    tryCommand({ season: folder, into: OUT, run: (terminal) => command(join(folder, WEEK), {}, terminal) }),
  );
  return { what, outcome };
}

/** A spoilt sheet of the week under a command that reads the saved plan. */
function attemptSheetOf(names: readonly string[], command: WeekCommand) {
  return async (random: Random): Promise<Tried> => {
    const name = pick(names, random);
    const { what, bytes } = spoiltSheet(season[name]!, random);
    const outcome = await planned({ ...season, [name]: bytes }, (folder) =>
      tryCommand({ season: folder, into: OUT, run: (terminal) => command(join(folder, WEEK), {}, terminal) }),
    );
    return { what: `${name}: ${what}`, outcome };
  };
}

/** A spoilt report.json under every command that reads it. */
async function attemptSaved(random: Random): Promise<Tried> {
  const { name, spoil } = pick(JSON_MUTATIONS, random);
  const spoilt = spoil(await savedPlan(), random);
  const [reader, command] = pick(
    [
      ['halftime', halftime],
      ['script', script],
      ['review', review],
    ] as const,
    random,
  );
  const outcome = await planned(season, (folder) => {
    put(folder, `${WEEK}/out/report.json`, spoilt);
    return tryCommand({ season: folder, into: OUT, run: (terminal) => command(join(folder, WEEK), {}, terminal) });
  });
  return { what: `${reader}, ${name}`, outcome };
}

async function attemptAgree(random: Random): Promise<Tried> {
  const sheets = [0, 1].map(() => spoiltSheet(pick([opponent, own, season['week-09/live.csv']!], random), random));
  const files = { 'a.csv': sheets[0]!.bytes, 'b.csv': random.uniform() < 0.3 ? opponent : sheets[1]!.bytes };
  const outcome = await withSeason(files, (folder) =>
    tryCommand({
      season: folder,
      into: [],
      run: (terminal) => agree({ first: join(folder, 'a.csv'), second: join(folder, 'b.csv') }, {}, terminal),
    }),
  );
  return { what: sheets.map(({ what }) => what).join(' / '), outcome };
}

const WORDS = [
  'screen',
  'run',
  'third_long',
  'slide=left',
  'down=3',
  'receivers',
  'situation',
  'coverage',
  'red_zone',
  'down',
  '=',
];

async function attemptTendency(random: Random): Promise<Tried> {
  const word = () =>
    random.uniform() < 0.6 ? pick(WORDS, random) : pick(NASTY_TEXTS, random) + pick(['', '=', '=1'], random);
  const question = { of: word(), when: Array.from({ length: random.integer(3) }, word), by: word() };
  const json = random.uniform() < 0.3;
  return onSeason(season, JSON.stringify(question).slice(0, 200), (week, _, terminal) =>
    tendency(week, { ...question, json }, terminal),
  );
}

/** Texts that stand in many files: one of them becomes a nasty one everywhere, and a sheet of the archive gets its name. */
async function attemptNames(random: Random): Promise<Tried> {
  const old = pick(['Harrow Creek', 'Larkmoor', 'Trips', 'Roof', 'Split', 'three_deep', 'g1'], random);
  const name = pick(
    NASTY_TEXTS.filter(
      (text) => !/[\n\r"\p{Cc}]/u.test(text) && text.length < 100 && !/NaN|Infinity|undefined/.test(text),
    ),
    random,
  );
  const { 'archive/one.csv': archive, ...files } = renamedSeason(season, { old, name });
  const sheet = `archive/${name.replaceAll(/[/\\\ud800-\udfff]/g, '_')}.csv`;
  const command = pick([check, report, halftime, script, review], random);
  return onSeason({ ...files, [sheet]: archive! }, `${command.name}: ${old} is ${JSON.stringify(name)}`, command);
}

/** The season with one text for another in all its files. */
export function renamedSeason(
  files: SeasonFiles = season,
  names?: { readonly old: string; readonly name: string },
): SeasonFiles {
  if (!names) return files;
  return Object.fromEntries(Object.entries(files).map(([path, bytes]) => [path, replaced(path, bytes, names)]));
}

function replaced(path: string, bytes: Uint8Array, { old, name }: { old: string; name: string }): Uint8Array {
  const text = String(Buffer.from(bytes));
  if (!path.endsWith('.yaml')) return Buffer.from(text.replaceAll(old, name.includes(',') ? `"${name}"` : name));
  return Buffer.from(
    text.replaceAll(
      new RegExp(`^(.*: |- )(.*${old}.*)$`, 'gm'),
      (_, key: string, value: string) => key + JSON.stringify(value.replaceAll(old, name)),
    ),
  );
}

/** Every command that reads files, with its inputs spoilt. */
export const COMMAND_PARTS: readonly CommandPart[] = [
  { name: 'adopt', perThousand: 500, attempt: attemptAdopt },
  { name: 'adopt, pasted', perThousand: 300, attempt: attemptPasted },
  { name: 'adopt, workbook', perThousand: 500, attempt: attemptWorkbook },
  { name: 'adopt, answers', perThousand: 300, attempt: attemptAnswers },
  { name: 'formation book', perThousand: 300, attempt: attemptBook },
  { name: 'counts', perThousand: 400, attempt: attemptCounts },
  { name: 'live sheet', perThousand: 300, attempt: attemptSheetOf(['week-09/live.csv'], halftime) },
  { name: 'review', perThousand: 60, attempt: attemptSheetOf(['week-09/game.csv', 'week-09/ours.csv'], review) },
  { name: 'saved plan', perThousand: 60, attempt: attemptSaved },
  { name: 'agree', perThousand: 700, attempt: attemptAgree },
  { name: 'tendency', perThousand: 500, attempt: attemptTendency },
  { name: 'names', perThousand: 80, attempt: attemptNames },
];
