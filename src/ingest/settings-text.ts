import type { CallLibrary } from '../game/call-library.ts';
import { defenseSchema } from '../game/short-form/defense-schema.ts';
import { type WeekSettings, weekSettingsSchema } from '../game/week-settings.ts';
import { readYaml } from './yaml-file.ts';
import type { YamlReading } from './yaml-reading.ts';

/** The settings of a week from the text of its week.yaml, with every default filled in, or what is wrong with it. */
export function readWeekSettings(text: string | Uint8Array, file = 'week.yaml'): YamlReading<WeekSettings> {
  return readYaml(text, weekSettingsSchema, file);
}

/** Our roles and calls from the text of defense.yaml, or what is wrong with it. */
export function readCallLibrary(text: string | Uint8Array, file = 'defense.yaml'): YamlReading<CallLibrary> {
  return readYaml(text, defenseSchema, file);
}
