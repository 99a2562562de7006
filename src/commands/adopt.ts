import { readFile, stat } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import { answersSchema } from '../ingest/adopt/answers-file.ts';
import { draftProfile } from '../ingest/adopt/draft-profile.ts';
import type { DraftRequest } from '../ingest/adopt/draft-state.ts';
import { answerKey } from '../ingest/adopt/question.ts';
import { guardPasted } from '../ingest/guard-pasted.ts';
import { describeProblem } from '../ingest/row-problem.ts';
import { readYaml } from '../ingest/yaml-file.ts';
import { type AdoptKind, foreignTable, foreignText, readThrough } from '../season/foreign-sheet.ts';
import type { OutputFile } from '../season/store.ts';
import { UserProblem } from '../season/user-problem.ts';
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
 * is never changed, and a profile that is there already stays, unless it is the draft of the same sheet as it was made
 * before anybody answered.
 */
export async function adopt(sheet: string, options: AdoptOptions, terminal: Terminal): Promise<number> {
  const kind = kindOf(sheet, options.kind);
  const place = placeOf(sheet, kind, options.output);
  if (place.copy !== undefined) await refuseExisting(join(place.folder, place.copy));
  const text = await foreignText(shown(sheet), sheet === PASTED ? await standardInput() : await readBytes(sheet));
  const table = foreignTable(shown(sheet), text);
  const gameName = sheet === PASTED ? 'pasted sheet' : basename(sheet, extname(sheet));
  const request: DraftRequest = { table, kind, gameName, answers: await givenAnswers(options) };
  await refuseEdited(join(place.folder, place.profile), () => {
    const unanswered = draftProfile({ ...request, answers: new Map() });
    return readThrough({ name: shown(sheet), text, kind, draft: unanswered }).profile;
  });
  const draft = await answeredDraft(request, terminal, () => somebodyThere(terminal));
  const { profile, reading } = readThrough({ name: shown(sheet), text, kind, draft });
  const adopted: AdoptedSheet = { sheet: shown(sheet), table, draft, reading };
  const copy: OutputFile[] = place.copy === undefined ? [] : [{ name: place.copy, text: guardPasted(text) }];
  const written = await writeFiles(place.folder, [{ name: place.profile, text: profile }, ...copy]);
  terminal.out(options.json ? adoptJson(adopted) : adoptText(adopted));
  for (const path of written) terminal.note(`Wrote ${path}`);
  if (options.output === undefined) tellUnread(sheet, kind, terminal);
  return adopted.reading.chart.size === 0 ? EXIT.faults : EXIT.fine;
}

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

/** How the names of sheets begin that a week reads, and that of our own film. */
const NAMES_READ = { opponent: /^(opponent|game|live)/i, own: /^ours/i } as const;
const NAMES_WANTED = { opponent: 'opponent', own: 'ours' } as const;

/** Says that the sheet must be renamed where no command would read it. */
function tellUnread(sheet: string, kind: AdoptKind, terminal: Terminal): void {
  const name = basename(sheet);
  if (NAMES_READ[kind].test(name)) return;
  terminal.note(`No command reads ${sheet} under this name: call it "${NAMES_WANTED[kind]} ${name}".`);
}

/**
 * Lets nothing but a draft be written over that nobody touched.
 *
 * @param untouched - the draft as it would be without answers
 * @throws UserProblem for any other file
 */
async function refuseEdited(path: string, untouched: () => string): Promise<void> {
  const there = await textThere(path);
  if (there !== null && there !== untouched()) throw alreadyThere(path);
}

async function refuseExisting(path: string): Promise<void> {
  if ((await stat(path).catch(() => null)) !== null) throw alreadyThere(path);
}

/** The text of a file, or null when there is none. */
async function textThere(path: string): Promise<string | null> {
  return readFile(path, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT' || error.code === 'ENOTDIR') return null;
    throw alreadyThere(path);
  });
}

function alreadyThere(path: string): UserProblem {
  const message = `${path} is there already and stays as it is: somebody edited it, or it was drafted with answers. To draft it again, delete it first; to write another one, name it with --output.`;
  return new UserProblem('usage', message);
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

function shown(sheet: string): string {
  return sheet === PASTED ? 'the pasted text' : sheet;
}
