import { draftProfile } from '../ingest/adopt/draft-profile.ts';
import { previewSnaps, type SnapPreview } from '../ingest/adopt/preview.ts';
import { answerKey, type Question } from '../ingest/adopt/question.ts';
import { describeGroup, groupProblems } from '../ingest/row-problem.ts';
import { type AdoptKind, foreignTable, foreignText, readThrough } from './foreign-sheet.ts';
import { UserProblem } from './user-problem.ts';

/** A foreign sheet, with the coach's answers so far by the key of their question. */
export interface SheetToAdopt {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly kind: AdoptKind;
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
  if (bytes.length > MOST_BYTES) throw new UserProblem('faults', `${name} is far larger than a chart of snaps.`);
  const text = await foreignText(name, bytes);
  const given = new Map(Object.entries(answers).map(([key, answer]) => [answerKey(key), answer]));
  const gameName = name.replace(/\.[^.]*$/, '');
  const draft = draftProfile({ table: foreignTable(name, text), kind, gameName, answers: given });
  const { profile, reading } = readThrough({ name, text, kind, draft });
  const { chart, rejected, problems } = reading;
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
