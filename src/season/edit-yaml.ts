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

/**
 * The text of defense.yaml with one call changed, or added at its end, comments and every other call left as they stand.
 *
 * @param at - the call's place among the calls, or null for a new one
 */
export function withCall(text: string, at: number | null, call: Readonly<Record<string, unknown>>): string {
  const document = parseDocument(text);
  const node = document.createNode(call);
  if (at === null) document.addIn(['calls'], node);
  else document.setIn(['calls', at], node);
  return document.toString({ lineWidth: 0 });
}
