import { ANSWERS } from '../../game/answers.ts';
import { chartedCount, type Film } from '../../game/film.ts';
import { SITUATIONS } from '../../game/situations.ts';
import { weekSettingsSchema } from '../../game/week-settings.ts';
import { readSheet } from '../../ingest/read-sheet.ts';
import type { SheetKind } from '../../ingest/sheet-kind.ts';
import { answerCodes } from '../../pressure/snap/answer.ts';
import { situationCodes } from '../../pressure/snap/situation.ts';
import { teamSlips } from '../../season/team-slips.ts';

/** A sheet to look into while it is typed. */
export interface LookRequest {
  readonly file: string;
  readonly text: string;
  readonly kind: SheetKind;
  /** The week's opponent. */
  readonly opponent: string;
}

/** How often they did what, in one situation. */
export interface SituationCount {
  readonly situation: string;
  readonly snaps: number;
  /** By answer, in the order of ANSWERS. */
  readonly answers: readonly number[];
}

/** Something to look at in a row of the sheet. */
export interface RowFinding {
  /** 1-based line in the file, 0 for the whole sheet. */
  readonly row: number;
  readonly words: string;
  readonly isFault: boolean;
}

/** What a sheet says so far. */
export interface SheetLook {
  readonly snaps: number;
  readonly counts: readonly SituationCount[];
  /** On how many snaps each column is charted. */
  readonly charted: Readonly<Record<string, number>>;
  readonly findings: readonly RowFinding[];
}

/** Reads a sheet as the plan will, and counts it. */
export async function lookJob({ file, text, kind, opponent }: LookRequest): Promise<SheetLook> {
  const { chart, problems } = readSheet({ file, bytes: new TextEncoder().encode(text) }, { kind });
  const findings = problems.map(({ row, header, found, rule, severity }) => ({
    row,
    words: [header, found === undefined ? undefined : `"${found}"`, rule].filter(Boolean).join(' '),
    isFault: severity === 'fault',
  }));
  const slips = teamSlips([chart], opponent).map((words) => ({ row: 0, words, isFault: false }));
  return {
    snaps: chart.size,
    counts: countsOf(chart),
    charted: chartedOf(chart),
    findings: [...slips, ...findings],
  };
}

function countsOf(chart: Film): SituationCount[] {
  const cuts = weekSettingsSchema.parse({ opponent: 'x' }).situations;
  const situations = situationCodes(chart, cuts);
  const answers = answerCodes(chart, cuts);
  const counts = SITUATIONS.map(() => ({ snaps: 0, answers: ANSWERS.map(() => 0) }));
  for (let i = 0; i < chart.size; i++) {
    const count = counts[situations[i] ?? 0];
    if (count === undefined) continue;
    count.snaps++;
    const answer = answers[i] ?? 255;
    if (count.answers[answer] !== undefined) count.answers[answer]++;
  }
  return counts.map((count, i) => ({ situation: SITUATIONS[i]?.id ?? '', ...count })).filter(({ snaps }) => snaps > 0);
}

function chartedOf(chart: Film): Record<string, number> {
  const names = Object.keys(chart.columns) as (keyof Film['columns'])[];
  return Object.fromEntries(names.map((name) => [name, chartedCount(chart, name)]));
}
