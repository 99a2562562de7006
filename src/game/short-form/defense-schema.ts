import * as z from 'zod';
import { expandDefense } from './expand-defense.ts';
import { writtenDefense } from './written-defense.ts';

/**
 * The shape of defense.yaml. A call is written in full, or as a path, a coverage and what differs; what comes out is
 * every call in full, its men in one fixed order.
 */
export const defenseSchema = writtenDefense.transform((written, context) => {
  const { library, problems, issues = [] } = expandDefense(written);
  for (const { path: place, message } of problems) context.addIssue({ code: 'custom', path: place, message });
  for (const issue of issues) context.addIssue({ ...issue });
  return library ?? z.NEVER;
});
