import { type Document, isMap, isNode, isScalar, isSeq, type Pair, parseDocument, type Range, stringify } from 'yaml';

/** A value to put into a settings file, or to take out of it. */
export interface SettingChange {
  /** Keys and places in lists from the top, such as `['menu', 'size']`. */
  readonly path: readonly (string | number)[];
  /** What to put there; undefined takes the key away. */
  readonly value: unknown;
}

/**
 * The text of a settings file with values put in their places, in that order; comments, unknown keys and everything else
 * stay as they stand. A comment above a key that is taken away stays above the one after it.
 *
 * @throws Error of the YAML package when the text is not well-formed
 */
export function withSettings(text: string, changes: readonly SettingChange[]): string {
  return changes.reduce(changed, text);
}

function changed(text: string, { path, value }: SettingChange): string {
  const document = parseDocument(text);
  if (value === undefined) return document.hasIn(path) ? written(takenAway(document, path)) : text;
  const before = document.getIn(path, true);
  put(document, path, value);
  const spliced = isScalar(before) && !isObject(value) ? splice(text, before.range, value) : null;
  // A word that YAML would take for something else where it stands is left to the package to quote.
  return spliced !== null && isSame(parseDocument(spliced), document) ? spliced : written(document);
}

function written(document: Document): string {
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

/** The text with one plain value written over another; nothing else moves. */
function splice(text: string, range: Range | null | undefined, value: unknown): string | null {
  if (!range || range[0] === range[1]) return null;
  return text.slice(0, range[0]) + stringify(value, { lineWidth: 0 }).trimEnd() + text.slice(range[1]);
}

function isSame(one: Document.Parsed, other: Document): boolean {
  return one.errors.length === 0 && JSON.stringify(one.toJS()) === JSON.stringify(other.toJS());
}

function put(document: Document, path: SettingChange['path'], value: unknown): void {
  for (let depth = 1; depth < path.length; depth++) openAt(document, path.slice(0, depth));
  document.setIn(path, document.createNode(value));
}

/** A group with a key and nothing behind it, and an empty list in brackets, take what is put into them. */
function openAt(document: Document, path: SettingChange['path']): void {
  const there = document.getIn(path, true);
  if (isScalar(there) && there.value === null) document.deleteIn(path);
  if (isSeq(there) && there.items.length === 0) there.flow = false;
}

function isObject(value: unknown): boolean {
  return typeof value === 'object' && value !== null;
}

function takenAway(document: Document, path: SettingChange['path']): Document {
  const above = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
  if (isMap(above)) keepComment(above.items, path.at(-1));
  document.deleteIn(path);
  return document;
}

function keepComment(pairs: readonly Pair[], key: unknown): void {
  const at = pairs.findIndex((pair) => isScalar(pair.key) && pair.key.value === key);
  const said = commentOf(pairs[at]);
  const after = pairs[at + 1]?.key;
  if (said !== '' && isNode(after)) after.commentBefore = [said, after.commentBefore].filter(Boolean).join('\n');
}

function commentOf(pair: Pair | undefined): string {
  return (isNode(pair?.key) ? pair.key.commentBefore : '') ?? '';
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

/** The names of the calls in defense.yaml, in its order; none when it cannot be read. */
export function callNames(text: string): readonly string[] {
  const document = parseDocument(text);
  if (document.errors.length > 0) return [];
  const calls: unknown = document.get('calls');
  if (!isSeq(calls)) return [];
  return calls.items.flatMap((call) => (isMap(call) ? [String(call.get('name') ?? '').trim()] : [])).filter(Boolean);
}
