import { draftProfile } from '../ingest/adopt/draft-profile.ts';
import { findTable } from '../ingest/adopt/found-table.ts';
import { previewSnaps, type SnapPreview } from '../ingest/adopt/preview.ts';
import { profileText } from '../ingest/adopt/profile-text.ts';
import { answerKey, type Question } from '../ingest/adopt/question.ts';
import { decodeText } from '../ingest/decode-text.ts';
import { profileSchema } from '../ingest/profile.ts';
import { readSheet } from '../ingest/read-sheet.ts';
import { isWorkbookName } from '../ingest/read-workbook.ts';
import { describeGroup, describeProblem, groupProblems } from '../ingest/row-problem.ts';
import { readYaml } from '../ingest/yaml-file.ts';
import { UserProblem } from './user-problem.ts';
import { workbookText } from './workbook-text.ts';

/** A foreign sheet, with the coach's answers so far by the key of their question. */
export interface SheetToAdopt {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly kind: 'opponent' | 'own';
  readonly answers: Readonly<Record<string, string>>;
}

/** How a foreign sheet is understood, and what is still asked. */
export interface AdoptedSheet {
  /** The profile as it would be written. */
  readonly profile: string;
  readonly questions: readonly Question[];
  readonly preview: SnapPreview;
  readonly snaps: number;
  readonly rejected: number;
  /** Columns of the sheet that are not read. */
  readonly unread: readonly string[];
  /** What is wrong with its rows, in words, the first kinds named. */
  readonly problems: readonly string[];
}

/** Snaps of the preview. */
const PREVIEWED = 10;
/** Kinds of problems named. */
const NAMED = 8;
/** A sheet larger than this is no chart of one season; judgment. Columns are held to one another, which takes long. */
const MOST_BYTES = 20_000_000;

/**
 * Drafts how a foreign sheet is read and reads it that way.
 *
 * @throws UserProblem when no snap can be found in it
 */
export async function adoptSheet({ name, bytes, kind, answers }: SheetToAdopt): Promise<AdoptedSheet> {
  const text = await textOf(name, bytes);
  const table = findTable(text);
  if (table.rows.length === 0) throw new UserProblem('faults', `No snaps were found in ${name}.`);
  const given = new Map(Object.entries(answers).map(([key, answer]) => [answerKey(key), answer]));
  const draft = draftProfile({ table, kind, gameName: name.replace(/\.[^.]*$/, ''), answers: given });
  const profile = profileText(draft, name);
  const read = readYaml(profile, profileSchema, 'profile.yaml');
  if (read.kind === 'problems') throw new Error(read.problems.map(describeProblem).join('\n'));
  const sheet = { file: name, bytes: new TextEncoder().encode(text) };
  const { chart, rejected, problems } = readSheet(sheet, { kind, profile: read.value });
  return {
    profile,
    questions: draft.questions,
    preview: previewSnaps(chart, PREVIEWED),
    snaps: chart.size,
    rejected: rejected.length,
    unread: draft.unread.map(String),
    problems: groupProblems(problems, NAMED).groups.map(describeGroup),
  };
}

async function textOf(name: string, bytes: Uint8Array): Promise<string> {
  if (bytes.length > MOST_BYTES) throw new UserProblem('faults', `${name} is far larger than a chart of snaps.`);
  if (isWorkbookName(name)) {
    const reading = await workbookText(bytes);
    if (reading.kind === 'sheet') return reading.csv;
    throw new UserProblem('faults', `${name} ${reading.reason}`);
  }
  const decoded = decodeText(bytes);
  if (decoded.kind === 'text') return decoded.text;
  throw new UserProblem('faults', `${name} ${decoded.reason}`);
}
