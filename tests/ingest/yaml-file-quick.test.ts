import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type * as z from 'zod';
import { defenseSchema } from '../../src/game/short-form/defense-schema.ts';
import { weekSettingsSchema } from '../../src/game/week-settings.ts';
import { formationBookSchema } from '../../src/ingest/formation/formation-schema.ts';
import { formationTemplate } from '../../src/ingest/formation/formation-template.ts';
import { profileSchema } from '../../src/ingest/profile.ts';
import { defenseTemplate, profileTemplate, weekTemplate } from '../../src/ingest/templates.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';
import { readYamlQuickly } from '../../src/ingest/yaml-file-quick.ts';
import { createRandom } from '../../src/stats/random.ts';
import { YAML_MUTATIONS } from '../fuzz/mutate-yaml.ts';
import { smallSeason } from '../fuzz/small-season.ts';

const demo = (file: string) => readFileSync(`data/demo/season/${file}`, 'utf8');

interface Settings {
  readonly name: string;
  readonly text: string;
  readonly schema: z.ZodType;
}

const SETTINGS: readonly Settings[] = [
  { name: 'the demo calls', text: demo('defense.yaml'), schema: defenseSchema },
  { name: 'the demo week', text: demo('week-09/week.yaml'), schema: weekSettingsSchema },
  { name: 'the calls of the template', text: defenseTemplate(), schema: defenseSchema },
  { name: 'the week of the template', text: weekTemplate(), schema: weekSettingsSchema },
  { name: 'the profile of the template', text: profileTemplate(), schema: profileSchema },
  { name: 'the formations of the template', text: formationTemplate(), schema: formationBookSchema },
];

/** As the demo, with fewer calls: spoiling is tried many times. */
const SMALL: readonly Settings[] = [
  { name: 'calls', text: String(Buffer.from(smallSeason()['defense.yaml'] ?? [])), schema: defenseSchema },
  ...SETTINGS.filter(({ name }) => name === 'the demo week' || name === 'the profile of the template'),
];

const bytes = (text: string) => new TextEncoder().encode(text);

describe('readYamlQuickly', () => {
  it.each(SETTINGS)('reads $name as the full reading does', async ({ text, schema }) => {
    const quick = await readYamlQuickly(bytes(text), schema, 'file.yaml');
    expect(quick.kind).toBe('value');
    expect(quick).toStrictEqual(readYaml(text, schema, 'file.yaml'));
  });

  it.each(YAML_MUTATIONS)('says of settings spoilt by "$name" what the full reading says', async ({ name, spoil }) => {
    for (const { text, schema } of SMALL) {
      const spoilt = bytes(spoil(text, createRandom(name)));
      expect(await readYamlQuickly(spoilt, schema, 'file.yaml')).toStrictEqual(readYaml(spoilt, schema, 'file.yaml'));
    }
  });

  it.each([
    ['an unknown key', 'opponent: Cinder Vale\nlevle: high_school\n'],
    ['a key given twice', 'opponent: Cinder Vale\nopponent: Harrow Creek\n'],
    ['a list that is not closed', 'opponent: [Cinder Vale\n'],
    ['a missing key', 'level: high_school\n'],
  ])('names %s with its line, in the words of the full reading', async (_, text) => {
    const quick = await readYamlQuickly(bytes(text), weekSettingsSchema, 'week.yaml');
    expect(quick).toStrictEqual(readYaml(text, weekSettingsSchema, 'week.yaml'));
    expect(quick.kind).toBe('problems');
  });

  it.each([
    ['nothing', ''],
    ['remarks alone', '# nothing yet\n'],
    ['a mark for the order of bytes', '\ufeffopponent: Cinder Vale\n'],
    ['lines as another system ends them', 'opponent: Cinder Vale\r\nus: Oakhollow\r\n'],
  ])('reads a file of %s as the full reading does', async (_, text) => {
    const quick = await readYamlQuickly(bytes(text), weekSettingsSchema, 'week.yaml');
    expect(quick).toStrictEqual(readYaml(bytes(text), weekSettingsSchema, 'week.yaml'));
  });

  it('refuses what is no text in the words of the full reading', async () => {
    const picture = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 0);
    const quick = await readYamlQuickly(picture, weekSettingsSchema, 'week.yaml');
    expect(quick.kind).toBe('problems');
    expect(quick).toStrictEqual(readYaml(picture, weekSettingsSchema, 'week.yaml'));
  });
});
