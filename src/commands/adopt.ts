import { readFile, stat } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import Papa from 'papaparse';
import { answersSchema } from '../ingest/adopt/answers-file.ts';
import type { DraftRequest } from '../ingest/adopt/draft-state.ts';
import { findTable } from '../ingest/adopt/found-table.ts';
import { profileText } from '../ingest/adopt/profile-text.ts';
import { answerKey } from '../ingest/adopt/question.ts';
import { decodeText } from '../ingest/decode-text.ts';
import { guardPasted } from '../ingest/guard-pasted.ts';
import { profileSchema } from '../ingest/profile.ts';
import { readSheet } from '../ingest/read-sheet.ts';
import { isWorkbookName } from '../ingest/read-workbook.ts';
import { describeProblem } from '../ingest/row-problem.ts';
import { readYaml } from '../ingest/yaml-file.ts';
import { isTooLong } from '../ingest/yaml-limits.ts';
import type { OutputFile } from '../season/store.ts';
import { UserProblem } from '../season/user-problem.ts';
import { workbookText } from '../season/workbook-text.ts';
import { type AdoptedSheet, adoptJson, adoptText } from './adopt-text.ts';
import { answeredDraft } from './answered-draft.ts';
import { somebodyThere } from './ask-questions.ts';
import { EXIT } from './exit-code.ts';
import type { Terminal } from './terminal.ts';
import { writeFiles } from './write-files.ts';

/** Flags of the adopt command. */
export interface AdoptOptions {
  readonly kind?: string;
  readonly answer?: readonly string[];
  readonly answers?: string;
  readonly output?: string;
  readonly json?: boolean;
}

/** Pasted text comes without a name. */
const PASTED = '-';

/**
 * Drafts a profile for a foreign sheet from its values, asks what it could not tell, and writes the profile. The sheet
 * is never changed, and a profile that is there already stays.
 */
export async function adopt(sheet: string, options: AdoptOptions, terminal: Terminal): Promise<number> {
  const kind = kindOf(sheet, options.kind);
  const place = placeOf(sheet, kind, options.output);
  await refuseExisting(join(place.folder, place.profile));
  if (place.copy !== undefined) await refuseExisting(join(place.folder, place.copy));
  const text = await sheetText(sheet);
  refuseEndless(text, sheet);
  const table = findTable(text);
  if (table.rows.length === 0) throw new UserProblem('faults', `no snaps were found in ${shown(sheet)}`);
  const gameName = sheet === PASTED ? 'pasted sheet' : basename(sheet, extname(sheet));
  const request: DraftRequest = { table, kind, gameName, answers: await givenAnswers(options) };
  const draft = await answeredDraft(request, terminal, () => somebodyThere(terminal));
  const profile = profileText(draft, shown(sheet));
  refuseLong(profile, sheet);
  const adopted: AdoptedSheet = {
    sheet: shown(sheet),
    table,
    draft,
    reading: readBack({ sheet, text, kind, profile }),
  };
  const copy: OutputFile[] = place.copy === undefined ? [] : [{ name: place.copy, text: guardPasted(text) }];
  const written = await writeFiles(place.folder, [{ name: place.profile, text: profile }, ...copy]);
  terminal.out(options.json ? adoptJson(adopted) : adoptText(adopted));
  for (const path of written) terminal.note(`Wrote ${path}`);
  return adopted.reading.chart.size === 0 ? EXIT.faults : EXIT.fine;
}

type AdoptKind = 'opponent' | 'own';

function kindOf(sheet: string, given: string | undefined): AdoptKind {
  if (given === undefined) return /^ours/i.test(basename(sheet)) ? 'own' : 'opponent';
  if (given === 'opponent' || given === 'own') return given;
  throw new UserProblem('usage', `--kind takes opponent or own, got "${given}"`);
}

interface OutputPlace {
  readonly folder: string;
  readonly profile: string;
  /** The name under which pasted text is kept. */
  readonly copy: string | undefined;
}

function placeOf(sheet: string, kind: AdoptKind, output: string | undefined): OutputPlace {
  const name = kind === 'own' ? 'ours-profile.yaml' : 'profile.yaml';
  const copy = sheet === PASTED ? `${kind === 'own' ? 'ours' : 'opponent'}-pasted.csv` : undefined;
  if (output === undefined) {
    if (copy === undefined) return { folder: dirname(sheet), profile: name, copy };
    throw new UserProblem('usage', 'pasted text needs a place: name a folder with --output, such as season/week-03');
  }
  if (/\.ya?ml$/i.test(output)) return { folder: dirname(output), profile: basename(output), copy };
  return { folder: output, profile: name, copy };
}

async function refuseExisting(path: string): Promise<void> {
  if ((await stat(path).catch(() => null)) === null) return;
  const message = `${path} is there already and stays as it is. Name another file with --output, or move it away first.`;
  throw new UserProblem('usage', message);
}

async function sheetText(sheet: string): Promise<string> {
  const bytes = sheet === PASTED ? await standardInput() : await readBytes(sheet);
  if (isWorkbookName(sheet)) {
    const reading = await workbookText(bytes);
    if (reading.kind === 'sheet') return reading.csv;
    throw new UserProblem('faults', `${sheet} ${reading.reason}`);
  }
  const decoded = decodeText(bytes);
  if (decoded.kind === 'text') return decoded.text;
  throw new UserProblem('faults', `${shown(sheet)} ${decoded.reason}`);
}

/** More columns than any chart of snaps has; judgment. Every column is held to every other, so far more would take hours. */
const MOST_COLUMNS = 500;

/** A longer text is no cell of a chart, but what a lost quotation mark makes of half a sheet; judgment. */
const LONGEST_CELL = 10_000;

/** @throws UserProblem when the sheet has far more columns, or longer cells, than could be told apart */
function refuseEndless(text: string, sheet: string): void {
  const { data } = Papa.parse<string[]>(text);
  const columns = data.reduce((most, row) => Math.max(most, row.length), 0);
  const longRow = data.findIndex((row) => row.some((cell) => cell.length > LONGEST_CELL));
  if (columns > MOST_COLUMNS) {
    const message = `${shown(sheet)} has ${columns} columns; a chart of snaps has some dozens. Take out what is no part of it (at most ${MOST_COLUMNS}).`;
    throw new UserProblem('faults', message);
  }
  if (longRow < 0) return;
  const message = `${shown(sheet)} holds a cell of more than ${LONGEST_CELL} characters in row ${longRow + 1}; is a quotation mark missing?`;
  throw new UserProblem('faults', message);
}

/** @throws UserProblem when the codes of the sheet are more, or longer, than a settings file can hold */
function refuseLong(profile: string, sheet: string): void {
  if (isTooLong(profile))
    throw new UserProblem('faults', `${shown(sheet)} holds more codes, or longer ones, than a profile can.`);
}

async function readBytes(path: string): Promise<Uint8Array> {
  return readFile(path).catch((error: NodeJS.ErrnoException) => {
    const said = error.code === undefined ? undefined : MISSING[error.code];
    throw new UserProblem('usage', said ? `${said} ${path}` : `cannot read ${path}: ${error.message}`, {
      cause: error,
    });
  });
}

/** What a wrong name most often is. */
const MISSING: Readonly<Record<string, string>> = {
  ENOENT: 'there is no file',
  EISDIR: 'a sheet is wanted, not a folder:',
};

async function standardInput(): Promise<Uint8Array> {
  const pieces: Buffer[] = [];
  for await (const piece of process.stdin) pieces.push(Buffer.from(piece));
  return Buffer.concat(pieces);
}

async function givenAnswers({ answers, answer = [] }: AdoptOptions): Promise<ReadonlyMap<string, string>> {
  const filed = answers === undefined ? {} : await readAnswers(answers);
  const typed = answer.map((text): [string, string] => {
    const at = text.lastIndexOf('=');
    if (at > 0) return [text.slice(0, at), text.slice(at + 1)];
    throw new UserProblem('usage', `--answer takes key=value, got "${text}"`);
  });
  return new Map([...Object.entries(filed), ...typed].map(([key, value]) => [answerKey(key), value]));
}

async function readAnswers(path: string): Promise<Record<string, string>> {
  const reading = readYaml(await readBytes(path), answersSchema, path);
  if (reading.kind === 'value') return reading.value;
  throw new UserProblem('usage', reading.problems.map(describeProblem).join('\n'));
}

/** The sheet read through the profile as it stands in its file. */
function readBack({ sheet, text, kind, profile }: { sheet: string; text: string; kind: AdoptKind; profile: string }) {
  const reading = readYaml(profile, profileSchema, 'profile.yaml');
  if (reading.kind === 'problems') throw new Error(reading.problems.map(describeProblem).join('\n'));
  const bytes = new TextEncoder().encode(text);
  return readSheet({ file: shown(sheet), bytes }, { kind, profile: reading.value });
}

function shown(sheet: string): string {
  return sheet === PASTED ? 'the pasted text' : sheet;
}
