import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Call, CallLibrary } from '../../src/game/call-library.ts';
import { defenseSchema } from '../../src/game/short-form/defense-schema.ts';

/** The invented call library of the demo season. */
export const demoDefense: CallLibrary = defenseSchema.parse(
  parse(readFileSync('data/demo/season/defense.yaml', 'utf8')),
);

/** One call of the demo library by its name. */
export function demoCall(name: string): Call {
  const found = demoDefense.calls.find((call) => call.name === name);
  if (!found) throw new Error(`no call named ${name} in the demo library`);
  return found;
}
