import type { SettingChange } from '../../season/edit-yaml.ts';

/** Settings that were typed and are in no file: the file they were typed over, the text, and changes not in it yet. */
export interface SettingsDraft {
  readonly base: string;
  readonly text: string;
  readonly changes: readonly SettingChange[];
}

/** Settings typed before the page was opened again. */
export type EarlierSettings =
  /** The file is what it was: they stand in the form. */
  | { readonly kind: 'typed' }
  /** The file is another by now: these lines were typed and are not in it. */
  | { readonly kind: 'overtaken'; readonly lines: readonly string[] };

/** What is left of a draft beside its file; null when the file holds all of it. */
export function earlierSettings(left: SettingsDraft | undefined, saved: string): EarlierSettings | null {
  if (left === undefined || (left.text === saved && left.changes.length === 0)) return null;
  if (left.base === saved) return { kind: 'typed' };
  const there = new Set([...saved.split('\n'), ...left.base.split('\n')]);
  const typed = left.text.split('\n').filter((line) => line.trim() !== '' && !there.has(line));
  const lines = [...typed.map((line) => line.trim()), ...left.changes.map(changeWords)];
  return lines.length === 0 ? null : { kind: 'overtaken', lines };
}

function changeWords({ path, value }: SettingChange): string {
  return `${path.join(', ')}: ${typeof value === 'object' ? JSON.stringify(value) : (value ?? '')}`;
}
