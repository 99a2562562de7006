import { parseDocument } from 'yaml';

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
