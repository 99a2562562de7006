import type { FileSet } from '../season/memory-files.ts';
import type { SeasonStore } from '../season/store.ts';
import type { KnownSeason } from './store/database.ts';

/** The views of a week, in the order of the week. */
export const VIEWS = [
  { id: 'chart', label: 'Chart' },
  { id: 'sheets', label: 'Sheets' },
  { id: 'calls', label: 'Calls' },
  { id: 'plan', label: 'Plan' },
  { id: 'practice', label: 'Practice' },
  { id: 'tonight', label: 'Tonight' },
  { id: 'monday', label: 'Monday' },
  { id: 'season', label: 'Season' },
] as const;

/** One view. */
export type ViewId = (typeof VIEWS)[number]['id'];

/** The season on the desk. */
export interface OpenSeason {
  readonly known: KnownSeason;
  readonly store: SeasonStore;
  /** Every file as last read or written. */
  readonly files: FileSet;
  /** Another tab has the season: nothing can be typed here. */
  readonly isElsewhere: boolean;
}

/** Everything the page shows, as plain data. */
export interface DeskState {
  readonly seasons: readonly KnownSeason[];
  readonly open: OpenSeason | null;
  /** The week on the desk, such as `week-09`; empty when there is none. */
  readonly week: string;
  readonly view: ViewId;
  readonly saving: 'saved' | 'saving' | 'failed';
  /** What went wrong and what to do; stays until it is mended or put away. */
  readonly problem: string | null;
  /** What was done; said once. */
  readonly note: string | null;
}

/** The desk before anything was read. */
export const EMPTY_DESK: DeskState = {
  seasons: [],
  open: null,
  week: '',
  view: 'chart',
  saving: 'saved',
  problem: null,
  note: null,
};

const ORDER = new Intl.Collator('en', { numeric: true });

/** The weeks of a season in their order. */
export function weeksOf(files: FileSet): readonly string[] {
  const names = new Set([...files.keys()].flatMap((path) => /^(week[^/]*)\//i.exec(path)?.[1] ?? []));
  return [...names].sort(ORDER.compare);
}

/** A file's text; empty when it is not there. */
export function textOf(files: FileSet, path: string): string {
  const bytes = files.get(path);
  return bytes === undefined ? '' : new TextDecoder().decode(bytes);
}

/** The opponent named in a week's settings, for headings; the week's own name when there is none. */
export function opponentOf(files: FileSet, week: string): string {
  const found = /^opponent:\s*(.+)$/m.exec(textOf(files, `${week}/week.yaml`))?.[1]?.trim() ?? '';
  return found.replace(/^(["'])(.*)\1$/, '$2') || week;
}
