import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { check } from '../../src/commands/check.ts';
import { counts } from '../../src/commands/counts.ts';
import { halftime } from '../../src/commands/halftime.ts';
import { report } from '../../src/commands/report.ts';
import { review } from '../../src/commands/review.ts';
import { script } from '../../src/commands/script.ts';
import type { Random } from '../../src/stats/random.ts';
import { attemptAdopt, attemptAnswers, attemptPasted, attemptWorkbook } from './adopt-parts.ts';
import { put, type Tried, tryCommand } from './command-trial.ts';
import { JSON_MUTATIONS } from './mutate-json.ts';
import { NASTY_TEXTS } from './nasty-text.ts';
import { attemptAgree, attemptBacktest, attemptCalls, attemptTendency } from './question-parts.ts';
import { type SeasonFiles, smallSeason, withSeason } from './small-season.ts';
import { pick, spoiltSheet, spoiltYaml } from './spoilt.ts';

/** A command with spoilt inputs; the same random numbers give the same input. */
export interface CommandPart {
  readonly name: string;
  /** Inputs for each thousand asked for: slow commands get fewer. */
  readonly perThousand: number;
  readonly attempt: (random: Random) => Promise<Tried>;
}

const season = smallSeason();
const WEEK = 'week-09';
const OUT = [`${WEEK}/out/`];

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
  { name: 'calls', perThousand: 300, attempt: attemptCalls },
  { name: 'backtest', perThousand: 100, attempt: attemptBacktest },
  { name: 'names', perThousand: 80, attempt: attemptNames },
];
