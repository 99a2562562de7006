import * as z from 'zod';
import { weekSettingsSchema } from '../game/week-settings.ts';

/** One setting of week.yaml, as a form asks for it. */
export interface SettingField {
  /** Keys from the top, such as `['menu', 'size']`. */
  readonly path: readonly string[];
  /** `list` is a list of words or of groups; every other form is one value. */
  readonly form: 'text' | 'date' | 'number' | 'choice' | 'yes_no' | 'list';
  /** What it means, or the group that it is the first of; empty where its key says it. */
  readonly meaning: string;
  /** What counts when it is left out; empty when nothing does. */
  readonly usual: string;
  /** The words it may be. */
  readonly words: readonly string[];
}

/** The parts of a JSON Schema that a form is made from. */
interface SchemaNode {
  readonly type?: string;
  readonly format?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
}

/** Every setting of a week in the order of its schema, so that a form forgets none. */
export function settingFields(): readonly SettingField[] {
  const schema = z.toJSONSchema(weekSettingsSchema, { io: 'input', reused: 'inline' }) as SchemaNode;
  return fieldsIn({ schema, path: [], usual: undefined });
}

interface Place {
  readonly schema: SchemaNode;
  readonly path: readonly string[];
  /** What the group above says it is when left out. */
  readonly usual: unknown;
  /** What the group above means, for the first of it. */
  readonly said?: string | undefined;
}

function fieldsIn({ schema, path, usual, said }: Place): SettingField[] {
  const standing = schema.default ?? usual;
  const meaning = schema.description ?? said;
  const groups = Object.entries(schema.properties ?? {});
  if (groups.length === 0) return [fieldOf({ schema, path, usual: standing, said: meaning })];
  return groups.flatMap(([key, inner], i) =>
    fieldsIn({
      schema: inner,
      path: [...path, key],
      usual: (standing as Readonly<Record<string, unknown>>)?.[key],
      said: i === 0 ? meaning : undefined,
    }),
  );
}

function fieldOf({ schema, path, usual, said = '' }: Place): SettingField {
  return {
    path,
    form: formOf(schema),
    meaning: said,
    usual: Array.isArray(usual) || usual === undefined ? '' : String(usual),
    words: (schema.enum ?? []).map(String),
  };
}

function formOf({ type, format, enum: words }: SchemaNode): SettingField['form'] {
  if (words !== undefined) return 'choice';
  if (format === 'date') return 'date';
  if (type === 'boolean') return 'yes_no';
  if (type === 'array') return 'list';
  return type === 'string' ? 'text' : 'number';
}
