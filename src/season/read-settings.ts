import type { ZodType } from 'zod';
import { describeProblem } from '../ingest/row-problem.ts';
import type { FoundFile } from './season-folder.ts';
import { UserProblem } from './user-problem.ts';

/**
 * The value of a YAML file by its schema, or null when the file is absent; then neither its schema nor the reader of YAML
 * is loaded.
 *
 * @throws UserProblem when the file has faults
 */
export async function readSettings<T>(
  found: FoundFile | null,
  schemaOf: () => ZodType<T> | Promise<ZodType<T>>,
): Promise<T | null> {
  if (!found) return null;
  const { readYamlQuickly } = await import('../ingest/yaml-file-quick.ts');
  const reading = await readYamlQuickly(found.bytes, await schemaOf(), found.file);
  if (reading.kind === 'value') return reading.value;
  throw new UserProblem('faults', reading.problems.map(describeProblem).join('\n'));
}
