import type * as z from 'zod';
import { decodeText } from './decode-text.ts';
import { readPlainYaml } from './plain-yaml.ts';
import type { YamlReading } from './yaml-reading.ts';
import { scalarsOf } from './yaml-scalars.ts';

/**
 * The reading that `readYaml` of yaml-file.ts gives, for less: a plain text without a fault is read quickly, and only for
 * any other is the full reading loaded, which names every fault with its line. Never rejects on what a file holds.
 */
export async function readYamlQuickly<Value>(
  bytes: Uint8Array,
  schema: z.ZodType<Value>,
  file: string,
): Promise<YamlReading<Value>> {
  const quick = quickReading(bytes, schema);
  if (quick !== undefined) return quick;
  const { readYaml } = await import('./yaml-file.ts');
  return readYaml(bytes, schema, file);
}

function quickReading<Value>(bytes: Uint8Array, schema: z.ZodType<Value>): YamlReading<Value> | undefined {
  const decoded = decodeText(bytes);
  if (decoded.kind === 'refused') return undefined;
  const plain = readPlainYaml(decoded.text, scalarsOf(schema));
  if (plain.kind !== 'value') return undefined;
  const checked = schema.safeParse(plain.value ?? {});
  return checked.success ? { kind: 'value', value: checked.data } : undefined;
}
