import { type Document, isCollection, isMap, isScalar, LineCounter, type Node, parseDocument } from 'yaml';
import type * as z from 'zod';
import { decodeText } from './decode-text.ts';
import type { RowProblem } from './row-problem.ts';
import { type IssuePath, sayIssues } from './yaml-issue.ts';
import { isTooLong } from './yaml-limits.ts';
import type { YamlReading } from './yaml-reading.ts';
import { scalarsOf } from './yaml-scalars.ts';

/** Deeper nesting than any of our files has, by far; judgment. */
const DEEPEST = 40;

const TOO_DEEP = 'is nested too deeply';

/** The words the engine has for nesting that the parser cannot follow. */
const OUT_OF_STACK = /call stack/i;

/** Faults of form that are named; a file with more is no YAML at all. Judgment. */
const MOST_FAULTS = 50;

/** How often aliases may be expanded; the YAML package's own default, against "billion laughs" files. */
const MOST_ALIASES = 100;

/**
 * A YAML file, as text or as the bytes read, checked against a zod schema. Every problem comes at once, each with its
 * line and the path of its key; an unknown key names the nearest known one. Never throws. When the schema's `meta`
 * says `scalars: 'text'`, every value is kept as the text that stands there (`01` stays `01`).
 */
export function readYaml<Value>(text: string | Uint8Array, schema: z.ZodType<Value>, file: string): YamlReading<Value> {
  if (typeof text === 'string') return readText({ text, schema, file });
  const decoded = decodeText(text);
  return decoded.kind === 'refused' ? refused(file, decoded.reason) : readText({ text: decoded.text, schema, file });
}

interface YamlJob<Value> {
  readonly text: string;
  readonly schema: z.ZodType<Value>;
  readonly file: string;
}

function readText<Value>(job: YamlJob<Value>): YamlReading<Value> {
  const { text, schema, file } = job;
  if (isTooLong(text)) return refused(file, 'is far too long for a settings file');
  if (isSurelyTooDeep(text)) return refused(file, TOO_DEEP);
  const lines = new LineCounter();
  try {
    const document = parseDocument(text, {
      lineCounter: lines,
      prettyErrors: false,
      logLevel: 'error',
      schema: scalarsOf(schema),
    });
    return readDocument(job, document, lines);
  } catch (error) {
    return refused(file, refusalOf(error));
  }
}

/** Levels by brackets or by marks and spaces at the start of a line, from which on no text is parsed; judgment. */
const PARSED_LEVELS = 200;

/** A line that begins with so many spaces and list marks that it may open as many levels. */
const DEEP_LINE = new RegExp(`^[ \\t?-]{${PARSED_LEVELS}}`, 'm');

/**
 * The parser calls itself for each level. Near the end of the stack that may stop the whole program, and not only the
 * parser, so nesting without end is refused before it is parsed.
 */
function isSurelyTooDeep(text: string): boolean {
  let open = 0;
  for (const [bracket] of text.matchAll(/[[\]{}]/g)) {
    open = bracket === '[' || bracket === '{' ? open + 1 : Math.max(0, open - 1);
    if (open > PARSED_LEVELS) return true;
  }
  return DEEP_LINE.test(text);
}

function readDocument<Value>(
  { schema, file }: YamlJob<Value>,
  document: Document.Parsed,
  lines: LineCounter,
): YamlReading<Value> {
  if (document.errors.length > 0) {
    const faults = document.errors.slice(0, MOST_FAULTS);
    if (faults.some(({ message }) => OUT_OF_STACK.test(message))) return refused(file, TOO_DEEP);
    const problems = faults.map(({ message, pos }) => lineFault(file, lines.linePos(pos[0]).line, message));
    return { kind: 'problems', problems };
  }
  if (isDeeperThan(document.contents, DEEPEST)) return refused(file, TOO_DEEP);
  const plain: unknown = document.toJS({ maxAliasCount: MOST_ALIASES });
  const checked = schema.safeParse(plain ?? {});
  if (checked.success) return { kind: 'value', value: checked.data };
  const lineAt = (path: IssuePath) => lineOf(document, lines, path);
  return { kind: 'problems', problems: sayIssues(checked.error.issues, { file, schema, value: plain, lineAt }) };
}

function refused(file: string, rule: string): { kind: 'problems'; problems: readonly RowProblem[] } {
  return { kind: 'problems', problems: [{ severity: 'fault', file, row: 0, found: '', rule }] };
}

/** The parser runs out of stack on absurd nesting, and the package refuses aliases that multiply. */
function refusalOf(error: unknown): string {
  if (error instanceof RangeError) return TOO_DEEP;
  if (error instanceof ReferenceError) return 'repeats parts of itself (aliases) too often';
  throw error;
}

function lineFault(file: string, line: number, message: string): RowProblem {
  const rule = `is not well-formed YAML: ${message.replace(/\.$/, '')}`;
  return { severity: 'fault', file, row: line, unit: 'line', found: '', rule };
}

function isDeeperThan(node: unknown, levels: number): boolean {
  if (!isCollection(node)) return false;
  if (levels === 0) return true;
  return node.items.some((item) => isDeeperThan(pairValue(item), levels - 1));
}

function pairValue(item: unknown): unknown {
  return typeof item === 'object' && item !== null && 'value' in item && 'key' in item ? item.value : item;
}

/** The line of the key or item the path leads to; of the nearest one above it when it is missing. */
function lineOf(document: Document.Parsed, lines: LineCounter, path: IssuePath): number {
  let node: unknown = document.contents;
  let offset = 0;
  for (const step of path) {
    const place = stepInto(node, step);
    if (place === undefined) break;
    offset = place.offset;
    node = place.node;
  }
  return lines.linePos(offset).line;
}

function stepInto(node: unknown, step: PropertyKey): { offset: number; node: unknown } | undefined {
  if (isMap(node)) {
    const pair = node.items.find(({ key }) => isScalar(key) && String(key.value) === String(step));
    const key = pair?.key as Node | undefined;
    return key?.range ? { offset: key.range[0], node: pair?.value } : undefined;
  }
  const item = isCollection(node) ? (node.items[Number(step)] as Node | undefined) : undefined;
  return item?.range ? { offset: item.range[0], node: item } : undefined;
}
