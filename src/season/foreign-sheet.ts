import Papa from 'papaparse';
import type { ProfileDraft } from '../ingest/adopt/draft-profile.ts';
import { type FoundTable, findTable } from '../ingest/adopt/found-table.ts';
import { profileText } from '../ingest/adopt/profile-text.ts';
import { decodeText } from '../ingest/decode-text.ts';
import { profileSchema } from '../ingest/profile.ts';
import { readSheet, type SheetReading } from '../ingest/read-sheet.ts';
import { isWorkbookName } from '../ingest/read-workbook.ts';
import { describeProblem } from '../ingest/row-problem.ts';
import { readYaml } from '../ingest/yaml-file.ts';
import { isTooLong } from '../ingest/yaml-limits.ts';
import { UserProblem } from './user-problem.ts';
import { workbookText } from './workbook-text.ts';

/** What a sheet holds that may be adopted: snaps of their film, or our own calls. */
export type AdoptKind = 'opponent' | 'own';

/**
 * The text of a foreign sheet, a workbook's first table as CSV.
 *
 * @param name - as messages say it; a workbook is known by it
 * @throws UserProblem when it is neither text nor a workbook, or is no chart of snaps
 */
export async function foreignText(name: string, bytes: Uint8Array): Promise<string> {
  const text = await textOf(name, bytes);
  refuseEndless(text, name);
  return text;
}

async function textOf(name: string, bytes: Uint8Array): Promise<string> {
  if (isWorkbookName(name)) {
    const reading = await workbookText(bytes);
    if (reading.kind === 'sheet') return reading.csv;
    throw new UserProblem('faults', `${name} ${reading.reason}`);
  }
  const decoded = decodeText(bytes);
  if (decoded.kind === 'text') return decoded.text;
  throw new UserProblem('faults', `${name} ${decoded.reason}`);
}

/** More columns than any chart of snaps has; judgment. Every column is held to every other, so far more would take hours. */
const MOST_COLUMNS = 500;

/** A longer text is no cell of a chart, but what a lost quotation mark makes of half a sheet; judgment. */
const LONGEST_CELL = 10_000;

/** @throws UserProblem when the sheet has far more columns, or longer cells, than could be separated */
function refuseEndless(text: string, name: string): void {
  const { data } = Papa.parse<string[]>(text);
  const columns = data.reduce((most, row) => Math.max(most, row.length), 0);
  const longRow = data.findIndex((row) => row.some((cell) => cell.length > LONGEST_CELL));
  if (columns > MOST_COLUMNS) {
    const message = `${name} has ${columns} columns; a chart of snaps has some dozens. Take out what is no part of it (at most ${MOST_COLUMNS}).`;
    throw new UserProblem('faults', message);
  }
  if (longRow < 0) return;
  const message = `${name} holds a cell of more than ${LONGEST_CELL} characters in row ${longRow + 1}; is a quotation mark missing?`;
  throw new UserProblem('faults', message);
}

/**
 * The table of snaps in a foreign sheet.
 *
 * @throws UserProblem when there is no snap in it
 */
export function foreignTable(name: string, text: string): FoundTable {
  const table = findTable(text);
  if (table.rows.length === 0) throw new UserProblem('faults', `no snaps were found in ${name}`);
  return table;
}

/** A foreign sheet with the profile drafted for it. */
export interface DraftedSheet {
  readonly name: string;
  readonly text: string;
  readonly kind: AdoptKind;
  readonly draft: ProfileDraft;
}

/**
 * The profile as it would be written, and the sheet read through it as it stands in its file.
 *
 * @throws UserProblem when the codes of the sheet are more, or longer, than a settings file can hold
 */
export function readThrough({ name, text, kind, draft }: DraftedSheet): { profile: string; reading: SheetReading } {
  const profile = profileText(draft, name);
  if (isTooLong(profile))
    throw new UserProblem('faults', `${name} holds more codes, or longer ones, than a profile can.`);
  const read = readYaml(profile, profileSchema, 'profile.yaml');
  if (read.kind === 'problems') throw new Error(read.problems.map(describeProblem).join('\n'));
  const bytes = new TextEncoder().encode(text);
  return { profile, reading: readSheet({ file: name, bytes }, { kind, profile: read.value }) };
}
