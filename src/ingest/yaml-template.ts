import { Document, isMap, isScalar, isSeq, type YAMLMap, type YAMLSeq } from 'yaml';
import * as z from 'zod';

/** The parts of a JSON Schema that a template is written from. */
interface SchemaNode {
  readonly description?: string;
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly additionalProperties?: SchemaNode | boolean;
  readonly items?: SchemaNode;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly required?: readonly string[];
}

/** A number larger than this is no bound a coach would meet. */
const NO_BOUND = 1e9;

/** The longest line of a template, as of the sources. */
const LINE_WIDTH = 120;

/**
 * A YAML file that holds `example` and says beside every key what the schema says of it: meaning, words, bounds.
 * A key is explained where it first stands. Keys the example leaves out follow as comments. `heading` comes first.
 */
export function yamlTemplate(schema: z.ZodType, example: unknown, heading: readonly string[]): string {
  const described = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any', reused: 'inline' }) as SchemaNode;
  const document = new Document(example, { aliasDuplicateObjects: false });
  annotate(document.contents, described, new Set());
  document.commentBefore = heading.map((line) => ` ${line}`).join('\n');
  return document.toString({ lineWidth: LINE_WIDTH, flowCollectionPadding: true });
}

/** Explains the keys below a node; `explained` names the parts of the schema with keys explained above. */
function annotate(node: unknown, schema: SchemaNode | undefined, explained: Set<string>): void {
  if (schema === undefined) return;
  if (isSeq(node)) annotateItems(node, schema, explained);
  if (isMap(node)) annotateKeys(node, schema, explained);
}

function annotateItems(list: YAMLSeq, { items }: SchemaNode, explained: Set<string>): void {
  list.flow = list.items.every(isScalar);
  for (const item of list.items) {
    const known = items !== undefined && explained.has(nameOf(items));
    annotate(item, items, explained);
    // What was explained once may stand on one line, when it is flat.
    if (isMap(item) && known) item.flow = item.items.every(({ value }) => isScalar(value) || isFlowList(value));
  }
}

function isFlowList(value: unknown): boolean {
  return isSeq(value) && value.flow === true;
}

function annotateKeys(map: YAMLMap, schema: SchemaNode, explained: Set<string>): void {
  const fresh = !explained.has(nameOf(schema));
  explained.add(nameOf(schema));
  const keys = map.items.flatMap(({ key, value }) => (isScalar(key) ? [{ key, value, name: String(key.value) }] : []));
  for (const { key, value, name } of keys) {
    const known = schema.properties?.[name];
    const said = fresh && known ? explain(known) : '';
    if (said !== '') key.commentBefore = ` ${said}`;
    annotate(value, known ?? openKeys(schema), explained);
  }
  const absent = fresh ? absentKeys(schema, new Set(keys.map(({ name }) => name))) : '';
  if (absent !== '') map.comment = absent;
}

/** Parts with the same keys are explained once, wherever they stand. */
function nameOf({ properties }: SchemaNode): string {
  return JSON.stringify(properties);
}

function openKeys({ additionalProperties }: SchemaNode): SchemaNode | undefined {
  return typeof additionalProperties === 'object' ? additionalProperties : undefined;
}

function absentKeys({ properties = {} }: SchemaNode, present: ReadonlySet<string>): string {
  const absent = Object.entries(properties).filter(([name]) => !present.has(name));
  return absent.map(([name, inner]) => ` ${name}: (may be left out) ${explain(inner)}`).join('\n');
}

/** Meaning, then the words or bounds of a value. */
function explain({ description, enum: words, minimum, maximum, items }: SchemaNode): string {
  const parts = [description, wordsOf(words ?? items?.enum), boundsOf(minimum, maximum)];
  return parts.filter((part) => part !== undefined).join('; ');
}

function wordsOf(words: readonly unknown[] | undefined): string | undefined {
  return words === undefined ? undefined : words.map(String).join(', ');
}

function boundsOf(minimum: number | undefined, maximum: number | undefined): string | undefined {
  if (minimum === undefined) return undefined;
  return maximum === undefined || maximum > NO_BOUND ? `${minimum} or more` : `${minimum} to ${maximum}`;
}
