import type { Random } from '../../src/stats/random.ts';
import { SHEET_MUTATIONS } from './mutate-sheet.ts';
import { YAML_MUTATIONS } from './mutate-yaml.ts';

/** One of several, drawn. */
export const pick = <T>(items: readonly T[], random: Random): T => items[random.integer(items.length)]!;

/** A spoilt file, and how it was spoilt. */
export interface Spoilt {
  readonly what: string;
  readonly bytes: Uint8Array;
}

/** A sheet spoilt once or twice. */
export function spoiltSheet(bytes: Uint8Array, random: Random): Spoilt {
  const steps = Array.from({ length: 1 + random.integer(2) }, () => pick(SHEET_MUTATIONS, random));
  const spoilt = steps.reduce((sheet, { spoil }) => (sheet.length === 0 ? sheet : spoil(sheet, random)), bytes);
  return { what: steps.map(({ name }) => name).join(' + '), bytes: spoilt };
}

/** A settings file spoilt once. */
export function spoiltYaml(text: string, random: Random): Spoilt {
  const { name, spoil } = pick(YAML_MUTATIONS, random);
  return { what: name, bytes: Buffer.from(spoil(text, random)) };
}
