import { parseDocument } from 'yaml';

/**
 * The text of a settings file with one value put in its place, comments and everything else left as they stand.
 *
 * @param path - keys from the top, such as `['menu', 'size']`
 * @param value - what to put there; undefined takes the key away
 */
export function withSetting(text: string, path: readonly (string | number)[], value: unknown): string {
  const document = parseDocument(text);
  if (value === undefined) document.deleteIn(path);
  else document.setIn(path, value);
  return document.toString({ lineWidth: 0 });
}
