import type * as z from 'zod';

/** How the words of a YAML file become values: as YAML 1.2 has it (core), or each as the text that stands there. */
export type YamlScalars = 'core' | 'failsafe';

/** What a schema asks for: the text as it stands when its `meta` says `scalars: 'text'`, else the values of YAML 1.2. */
export function scalarsOf(schema: z.ZodType): YamlScalars {
  return schema.meta()?.['scalars'] === 'text' ? 'failsafe' : 'core';
}
