import type { SheetKind } from './sheet-kind.ts';

/** A file of a season folder: its path below that folder, parts divided by /, and its content. */
export interface SeasonFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** What a file of a season folder is for. */
export type SeasonRole =
  | { readonly kind: 'sheet'; readonly group: SheetGroup; readonly sheet: SheetKind }
  | { readonly kind: 'week' }
  | { readonly kind: 'defense' }
  | { readonly kind: 'profile' }
  | { readonly kind: 'other' };

/** The groups of sheets whose charted shares are counted apart. */
export const SHEET_GROUPS = ['opponent', 'archive', 'own', 'live'] as const;

/** One word of {@link SHEET_GROUPS}. */
export type SheetGroup = (typeof SHEET_GROUPS)[number];

/** Endings of files that may be sheets. */
const SHEET_NAME = /\.(?:csv|tsv|txt)$/i;

/** What the file is, by where it lies and what it is called. Files in a folder named `out` are the tool's own. */
export function roleOf(path: string): SeasonRole {
  const { folder, name } = splitPath(path);
  if (folder.split('/').includes('out')) return { kind: 'other' };
  if (SHEET_NAME.test(name)) return sheetRole(folder, name.toLowerCase());
  if (/^(?:ours-)?profile\.yaml$/.test(name)) return { kind: 'profile' };
  if (name === 'week.yaml' && folder !== '') return { kind: 'week' };
  return name === 'defense.yaml' && folder === '' ? { kind: 'defense' } : { kind: 'other' };
}

/**
 * The paths at which the profile of a sheet may lie, the first that exists counts: `ours-profile.yaml` for our own
 * film; else `profile.yaml` beside the sheet, then in the season folder. Live sheets are read by our own headers.
 */
export function profilePaths(path: string, group: SheetGroup): readonly string[] {
  if (group === 'live') return [];
  if (group === 'own') return ['ours-profile.yaml'];
  const { folder } = splitPath(path);
  return [`${folder === '' ? '' : `${folder}/`}profile.yaml`, 'profile.yaml'];
}

function splitPath(path: string): { folder: string; name: string } {
  const end = path.lastIndexOf('/');
  return { folder: end === -1 ? '' : path.slice(0, end), name: path.slice(end + 1) };
}

function sheetRole(folder: string, name: string): SeasonRole {
  if (folder === '') return name.startsWith('ours') ? { kind: 'sheet', group: 'own', sheet: 'own' } : { kind: 'other' };
  if (folder === 'archive') return { kind: 'sheet', group: 'archive', sheet: 'opponent' };
  if (name.startsWith('opponent')) return { kind: 'sheet', group: 'opponent', sheet: 'opponent' };
  return name.startsWith('live') ? { kind: 'sheet', group: 'live', sheet: 'live' } : { kind: 'other' };
}
