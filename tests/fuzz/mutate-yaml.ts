import { parse, stringify } from 'yaml';
import type { Random } from '../../src/stats/random.ts';
import { NASTY_TEXTS } from './nasty-text.ts';

/** One way to spoil a YAML file. */
export interface YamlMutation {
  readonly name: string;
  readonly spoil: (text: string, random: Random) => string;
}

const pick = <T>(items: readonly T[], random: Random): T => items[random.integer(items.length)]!;

/** Values that are no settings. */
const ODD_VALUES: readonly unknown[] = [
  ...NASTY_TEXTS,
  null,
  true,
  0,
  -1,
  1e308,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  0.1 + 0.2,
  2 ** 53,
  [],
  {},
  [[]],
  [null],
  { constructor: 1 },
  new Array(400).fill(1),
];

interface Slot {
  readonly holder: Record<PropertyKey, unknown>;
  readonly key: PropertyKey;
}

/** Every place of a value within a parsed file. */
function slotsOf(value: unknown): Slot[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<PropertyKey, unknown>;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...slotsOf(holder[key])]);
}

const onTree = (name: string, spoil: (slot: Slot, random: Random, all: readonly Slot[]) => void): YamlMutation => ({
  name,
  spoil: (text, random) => {
    const tree: unknown = parse(text);
    for (let i = 0; i <= random.integer(4); i++) {
      const slots = slotsOf(tree);
      if (slots.length > 0) spoil(pick(slots, random), random, slots);
    }
    return stringify(tree, { aliasDuplicateObjects: false });
  },
});

/** A "billion laughs": each anchor holds the one before ten times. */
const laughs = (levels: number) =>
  `a0: &a0 [x]\n${Array.from({ length: levels }, (_, i) => `a${i + 1}: &a${i + 1} [${Array(10).fill(`*a${i}`).join(',')}]`).join('\n')}\n`;

/** The ways a YAML file is spoilt. */
export const YAML_MUTATIONS: readonly YamlMutation[] = [
  onTree('an odd value', ({ holder, key }, random) => {
    holder[key] = pick(ODD_VALUES, random);
  }),
  onTree('a key dropped', ({ holder, key }) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1);
    else delete holder[key];
  }),
  onTree('a nasty key', ({ holder, key }, random) => {
    const name = pick(NASTY_TEXTS, random);
    if (!Array.isArray(holder))
      Object.defineProperty(holder, name, { value: holder[key], enumerable: true, configurable: true });
  }),
  onTree('an entry doubled', ({ holder, key }) => {
    if (Array.isArray(holder)) holder.push(structuredClone(holder[Number(key)]));
  }),
  onTree('a value from elsewhere', ({ holder, key }, random, all) => {
    const from = pick(all, random);
    holder[key] = structuredClone(from.holder[from.key]);
  }),
  onTree('a nasty text', ({ holder, key }, random) => {
    if (typeof holder[key] === 'string') holder[key] = pick(NASTY_TEXTS, random);
  }),
  onTree('another number', ({ holder, key }, random) => {
    if (typeof holder[key] === 'number') holder[key] = pick([0, 1, 2, 0.5, 3, 7, 30, 100, 300, -5, 1e6], random);
  }),
  { name: 'cut in half', spoil: (text, random) => text.slice(0, random.integer(text.length + 1)) },
  {
    name: 'characters changed',
    spoil: (text, random) => {
      const characters = [...text];
      for (let i = 0; i < 8; i++)
        characters[random.integer(characters.length)] = pick([...'{}[]:,#&*!|>%@`"\'\n\t -?0ax'], random);
      return characters.join('');
    },
  },
  {
    name: 'lines moved',
    spoil: (text, random) => {
      const lines = text.split('\n');
      for (let i = 0; i < 4; i++) lines.splice(random.integer(lines.length), 0, pick(lines, random));
      return lines.join('\n');
    },
  },
  { name: 'billion laughs', spoil: (text, random) => laughs(3 + random.integer(25)) + text },
  { name: 'an alias to itself', spoil: (text) => `me: &me { me: *me }\n${text}` },
  { name: 'deep flow', spoil: (text, random) => `${text}\ndeep: ${'['.repeat(10 ** (1 + random.integer(5)))}` },
  {
    name: 'deep and closed',
    spoil: (text, random) => {
      const n = 10 ** (1 + random.integer(5));
      return `${text}\ndeep: ${'['.repeat(n)}${']'.repeat(n)}`;
    },
  },
  {
    name: 'deep block',
    spoil: (_, random) =>
      Array.from({ length: 10 ** (1 + random.integer(3)) }, (_value, i) => `${' '.repeat(i)}a:`).join('\n'),
  },
  { name: 'merge keys', spoil: (text) => `base: &base { opponent: x, level: pro }\n<<: *base\n${text}` },
  {
    name: 'tags',
    spoil: (text, random) =>
      text.replace(/: /g, (colon) =>
        random.uniform() < 0.05
          ? `: ${pick(['!!js/function ', '!!binary ', '!!set ', '!!omap ', '!x ', '!!timestamp ', '!!null '], random)}`
          : colon,
      ),
  },
  { name: 'several documents', spoil: (text) => `${text}\n---\n${text}` },
  {
    name: 'prototype keys',
    spoil: (text) => `__proto__: { level: pro }\nconstructor: { prototype: { x: 1 } }\n${text}`,
  },
  { name: 'the same key twice', spoil: (text) => `${text}\n${text}` },
  { name: 'carriage returns and a byte-order mark', spoil: (text) => `\ufeff${text.replaceAll('\n', '\r\n')}` },
  { name: 'tabs', spoil: (text) => text.replaceAll('  ', '\t') },
  {
    name: 'a scalar, a list or nothing',
    spoil: (_, random) =>
      pick(
        ['', 'x', '- 1\n- 2', '42', 'null', '~', '[]', '""', '? [a]\n: b', '{[a]: b}', '%YAML 9.9\n---\nx: 1'],
        random,
      ),
  },
  { name: 'a megabyte', spoil: (text) => `${text}\nnote: ${'y'.repeat(1_100_000)}` },
];
