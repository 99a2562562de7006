import * as z from 'zod';
import { suggest } from './look-alike.ts';
import { nearestWord } from './nearest-word.ts';
import type { RowProblem } from './row-problem.ts';

/** Keys and item numbers that lead to a value. */
export type IssuePath = readonly PropertyKey[];

/** What is needed to put an issue of the schema in plain words. */
export interface IssueContext {
  readonly file: string;
  readonly schema: z.ZodType;
  readonly value: unknown;
  /** The 1-based line on which the value at a path stands. */
  readonly lineAt: (path: IssuePath) => number;
}

/** One issue of a zod schema. */
type Issue = z.core.$ZodIssue;

/** The schema's issues as problems in plain words, in the order of their lines. */
export function sayIssues(issues: readonly Issue[], context: IssueContext): readonly RowProblem[] {
  const problems = issues.flatMap((issue) => sayIssue(issue, context));
  return problems.sort((left, right) => left.row - right.row);
}

function sayIssue(issue: Issue, context: IssueContext): RowProblem[] {
  if (issue.code === 'unrecognized_keys') return unknownKeys(issue, context);
  if (issue.code === 'invalid_union' && issue.errors.length > 0) return sayUnion(issue, context);
  const found = foundAt(context.value, issue.path);
  const options = optionsOf(issue);
  const meant = nearestWord(found, options);
  const rule = ruleOf(issue, found);
  return [
    problemAt(context, issue.path, {
      found,
      rule,
      suggestion: meant === undefined ? undefined : suggest(found, meant),
    }),
  ];
}

interface Finding {
  readonly found: string;
  readonly rule: string;
  readonly suggestion: string | undefined;
}

function problemAt({ file, lineAt, value }: IssueContext, path: IssuePath, finding: Finding): RowProblem {
  const { found, rule, suggestion } = finding;
  const header = keyPath(path, value);
  return {
    severity: 'fault',
    file,
    row: lineAt(path),
    unit: 'line',
    ...(header === '' ? {} : { header }),
    found,
    rule,
    ...(suggestion === undefined ? {} : { suggestion }),
  };
}

/**
 * `calls[3] (Latch Roof).rush[1] (nickel).lane`: the third item of a list is written [3], as a coach counts, with its own
 * name, role or id where it has one.
 */
function keyPath(path: IssuePath, value: unknown): string {
  return path
    .map((step, i) => {
      if (typeof step !== 'number') return `${i === 0 ? '' : '.'}${String(step)}`;
      const name = nameOf(valueAt(value, path.slice(0, i + 1)));
      return name === undefined ? `[${step + 1}]` : `[${step + 1}] (${name})`;
    })
    .join('');
}

/** What an item of a list is called in the file. */
function nameOf(item: unknown): string | undefined {
  if (!isRecord(item)) return undefined;
  const named = ['name', 'role', 'id'].map((key) => item[key]).find((word) => typeof word === 'string');
  return named as string | undefined;
}

/** Unknown keys of one place that are named one by one; the rest is counted. Judgment. */
const NAMED_KEYS = 50;

function unknownKeys(
  { path, keys }: Extract<Issue, { code: 'unrecognized_keys' }>,
  context: IssueContext,
): RowProblem[] {
  const known = knownKeys(context.schema, path);
  const named = keys.slice(0, NAMED_KEYS).map((key) => unknownKey([...path, key], key, { ...context, known }));
  const rest = keys.length - named.length;
  if (rest === 0) return named;
  return [
    ...named,
    problemAt(context, path, { found: '', rule: `has ${rest} more unknown keys`, suggestion: undefined }),
  ];
}

function unknownKey(path: IssuePath, key: string, context: IssueContext & { readonly known: readonly string[] }) {
  const { known } = context;
  const meant = nearestWord(key, known);
  const rule = known.length > 0 ? `is not a key here; known are ${known.join(', ')}` : 'is not a key here';
  return problemAt(context, path, {
    found: key,
    rule,
    suggestion: meant === undefined ? undefined : suggest(key, meant),
  });
}

/** Of several shapes a value may have, the one it comes nearest to: fewest issues, deepest first. */
function sayUnion(issue: Extract<Issue, { code: 'invalid_union' }>, context: IssueContext): RowProblem[] {
  const deepest = (issues: readonly Issue[]) => Math.max(0, ...issues.map(({ path }) => path.length));
  const [nearest = []] = [...issue.errors].sort((a, b) => deepest(b) - deepest(a) || a.length - b.length);
  return nearest.flatMap((inner) => sayIssue({ ...inner, path: [...issue.path, ...inner.path] } as Issue, context));
}

function ruleOf(issue: Issue, found: string): string {
  switch (issue.code) {
    case 'invalid_type':
      return found === '' ? `is missing; ${article(issue.expected)} is needed` : `is not ${article(issue.expected)}`;
    case 'invalid_value':
      return `is not one of ${issue.values.map(String).join(', ')}`;
    case 'too_small':
      return sizeRule(issue.origin, 'at least', Number(issue.minimum));
    case 'too_big':
      return sizeRule(issue.origin, 'at most', Number(issue.maximum));
    case 'not_multiple_of':
      return `is not a multiple of ${issue.divisor}`;
    case 'custom':
      return issue.message;
    default:
      return plainMessage(issue.message);
  }
}

/** A schema's own words stay; the package's default wording loses its prefix. */
function plainMessage(message: string): string {
  return message.replace(/^Invalid [a-z ]+: /, 'is not valid: ').replace(/\.$/, '');
}

function sizeRule(origin: string, bound: string, limit: number): string {
  if (origin === 'string') return `needs ${bound} ${limit} characters`;
  if (origin === 'array' || origin === 'set') return `needs ${bound} ${limit} entries`;
  return `must be ${bound} ${limit}`;
}

/** What the schema expected, in plain words. */
const EXPECTED_WORDS: Readonly<Record<string, string>> = {
  int: 'a whole number',
  number: 'a number',
  string: 'a text',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of keys',
  record: 'a group of keys',
};

function article(expected: string): string {
  return EXPECTED_WORDS[expected] ?? `a ${expected}`;
}

function optionsOf(issue: Issue): readonly string[] {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  return [];
}

function foundAt(value: unknown, path: IssuePath): string {
  const found = valueAt(value, path);
  if (found === undefined || found === null) return '';
  return isRecord(found) ? (Array.isArray(found) ? 'a list' : 'a group of keys') : String(found);
}

function valueAt(value: unknown, path: IssuePath): unknown {
  return path.reduce<unknown>((inner, step) => (isRecord(inner) ? inner[String(step)] : undefined), value);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

/** The keys the schema knows at a path, from its own description of itself. */
function knownKeys(schema: z.ZodType, path: IssuePath): readonly string[] {
  for (const io of ['output', 'input'] as const) {
    const described = z.toJSONSchema(schema, { io, unrepresentable: 'any', reused: 'inline' });
    const keys = keysAt(described as SchemaNode, path);
    if (keys.length > 0) return keys;
  }
  return [];
}

/** The parts of a JSON Schema that lead to keys. */
interface SchemaNode {
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly additionalProperties?: SchemaNode | boolean;
  readonly propertyNames?: { readonly enum?: readonly string[] };
  readonly items?: SchemaNode;
  readonly anyOf?: readonly SchemaNode[];
  readonly oneOf?: readonly SchemaNode[];
  readonly allOf?: readonly SchemaNode[];
}

function keysAt(node: SchemaNode, path: IssuePath): readonly string[] {
  const choices = [...(node.anyOf ?? []), ...(node.oneOf ?? []), ...(node.allOf ?? [])];
  const [step, ...rest] = path;
  if (step === undefined) {
    const own = [...Object.keys(node.properties ?? {}), ...(node.propertyNames?.enum ?? [])];
    return [...own, ...choices.flatMap((choice) => keysAt(choice, []))];
  }
  const next = typeof step === 'number' ? node.items : (node.properties?.[String(step)] ?? node.additionalProperties);
  const direct = typeof next === 'object' ? keysAt(next, rest) : [];
  return [...direct, ...choices.flatMap((choice) => keysAt(choice, path))];
}
