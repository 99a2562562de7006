import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { defenseSchema } from '../../src/game/short-form/defense-schema.ts';
import { weekSettingsSchema } from '../../src/game/week-settings.ts';
import { profileSchema } from '../../src/ingest/profile.ts';
import { profileTemplate } from '../../src/ingest/templates.ts';
import { readYaml } from '../../src/ingest/yaml-file.ts';
import { createRandom } from '../../src/stats/random.ts';
import { YAML_MUTATIONS } from './mutate-yaml.ts';
import { smallSeason } from './small-season.ts';
import { tryYaml } from './try-yaml.ts';

const season = smallSeason();
const files = [
  { file: 'defense.yaml', schema: defenseSchema, text: String(Buffer.from(season['defense.yaml'] ?? [])) },
  { file: 'week.yaml', schema: weekSettingsSchema, text: String(Buffer.from(season['week-09/week.yaml'] ?? [])) },
  { file: 'profile.yaml', schema: profileSchema, text: profileTemplate() },
];

describe('a spoilt settings file is read or refused in words, never a crash', () => {
  it.each(YAML_MUTATIONS)('$name', ({ name, spoil }) => {
    for (const { file, schema, text } of files) {
      for (let seed = 0; seed < 2; seed++) {
        const outcome = tryYaml(spoil(text, createRandom(`${name} ${seed}`)), schema, file);
        expect(outcome.kind, JSON.stringify(outcome)).not.toBe('bug');
      }
    }
  });

  it.each(files)('holds for values of any shape in place of $file', ({ schema, file }) => {
    fc.assert(
      fc.property(
        fc.object({ key: fc.oneof(fc.string(), fc.constantFrom('opponent', 'columns', 'calls', '__proto__')) }),
        (value) => {
          expect(tryYaml(stringify(value), schema, file).kind).not.toBe('bug');
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('attacks through YAML', () => {
  const week = 'opponent: Harrow Creek\n';
  const refused = (text: string) => {
    const reading = readYaml(text, weekSettingsSchema, 'week.yaml');
    return reading.kind === 'problems' ? reading.problems.map(({ rule }) => rule).join('; ') : 'accepted';
  };

  it.each([
    [
      'aliases that multiply',
      `a: &a [x, x]\n${['b', 'c', 'd', 'e', 'f', 'g', 'h'].map((key, i) => `${key}: &${key} [${Array(9).fill(`*${'abcdefg'[i]}`)}]`).join('\n')}\n`,
      /aliases\) too often|not a key/,
    ],
    ['nesting without end', `x: ${'['.repeat(100_000)}`, /nested too deeply|well-formed/],
    ['an unknown tag', `${week}us: !!js/function "function () { return 1 }"\n`, /well-formed|not a key|accepted/],
    ['a prototype', `${week}__proto__: { level: pro }\n`, /not a key/],
  ])('%s is refused in words', (_, text, words) => {
    expect(refused(text)).toMatch(words);
    expect(Object.hasOwn(Object.prototype, 'level')).toBe(false);
  });

  it('a tag runs nothing: what it marks stays a text', () => {
    const reading = readYaml(`${week}us: !!js/function "() => { throw 1 }"\n`, weekSettingsSchema, 'week.yaml');
    expect(reading.kind === 'value' ? reading.value.us : reading.kind).toMatch(/^\(\) => \{ throw 1 \}$|^problems$/);
  });
});
