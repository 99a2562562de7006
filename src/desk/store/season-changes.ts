import type { FileSet } from '../../season/memory-files.ts';
import type { FileChange, OutputFile } from '../../season/store.ts';
import { bytesOf, sameBytes } from './same-bytes.ts';

/**
 * Files as they are written, and what must still stand in their places: pages the desk made are made again at will,
 * every other file must be what was last seen.
 */
export function changesTo(files: FileSet, written: readonly OutputFile[]): FileChange[] {
  return written.map(({ name, text }) => {
    const change = { name, text: text === null ? null : bytesOf(text) };
    return /(^|\/)out\//.test(name) ? change : { ...change, was: files.get(name) ?? null };
  });
}

/** The season's files with the changes made. */
export function withFiles(files: FileSet, changes: readonly OutputFile[]): FileSet {
  const next = new Map(files);
  for (const { name, text } of changes) {
    if (text === null) next.delete(name);
    else next.set(name, bytesOf(text));
  }
  return next;
}

/** Paths of files that are there in one and not in the other, or hold something else, by name. */
export function changedPaths(before: FileSet, now: FileSet): string[] {
  const paths = new Set([...before.keys(), ...now.keys()]);
  return [...paths].filter((path) => !sameBytes(before.get(path) ?? null, now.get(path) ?? null)).sort();
}
