import type { Random } from '../../src/stats/random.ts';
import { NASTY_TEXTS } from './nasty-text.ts';

/** One way to spoil one of our JSON files. */
export interface JsonMutation {
  readonly name: string;
  readonly spoil: (text: string, random: Random) => string;
}

const pick = <T>(items: readonly T[], random: Random): T => items[random.integer(items.length)]!;

type Holder = Record<string, unknown>;

/** A holder and a key of it, found by walking down from the top: shallow places come as often as deep ones. */
function place(tree: unknown, random: Random): { readonly holder: Holder; readonly key: string } {
  let holder = tree as Holder;
  for (;;) {
    const key = pick(Object.keys(holder), random);
    const inner = holder[key] as Holder | null;
    const leaf = typeof inner !== 'object' || inner === null || Object.keys(inner).length === 0;
    if (leaf || random.uniform() < 0.3) return { holder, key };
    holder = inner;
  }
}

const onTree = (name: string, spoil: (holder: Holder, key: string, random: Random) => void): JsonMutation => ({
  name,
  spoil: (text, random) => {
    const tree: unknown = JSON.parse(text);
    const { holder, key } = place(tree, random);
    spoil(holder, key, random);
    return `${JSON.stringify(tree, null, 1)}\n`;
  },
});

const ODD_VALUES: readonly unknown[] = [...NASTY_TEXTS, null, true, -1, 1e308, [], {}, [[]], [null], 0];

/** Ways in which a file changes between two commands. */
export const JSON_MUTATIONS: readonly JsonMutation[] = [
  { name: 'cut off', spoil: (text, random) => text.slice(0, random.integer(text.length)) },
  { name: 'emptied', spoil: () => '' },
  {
    name: 'another file',
    spoil: (_, random) => pick(['[]', 'null', '3', '"x"', '{}', 'a,b\n1,2\n', '<html>'], random),
  },
  {
    name: 'characters changed',
    spoil: (text, random) => {
      const at = random.integer(text.length);
      return `${text.slice(0, at)}${pick([...'{}[]:,"0x'], random)}${text.slice(at + 1)}`;
    },
  },
  {
    name: 'a piece doubled',
    spoil: (text, random) => {
      const [from, to] = [random.integer(text.length), random.integer(text.length)].sort((a, b) => a - b);
      return text.slice(0, to) + text.slice(from);
    },
  },
  {
    name: 'two versions merged',
    spoil: (text) => text.replace(/\n( "film")/, '\n<<<<<<< ours\n$1').replace(/\n( "menu")/, '\n>>>>>>> theirs\n$1'),
  },
  {
    name: 'nested without end',
    spoil: (text) => text.replace('{', `{"deep": ${'['.repeat(200_000)}${']'.repeat(200_000)},`),
  },
  { name: 'names of every object', spoil: (text) => text.replace('{', '{"__proto__": {"menu": 1}, "constructor": 1,') },
  onTree('a key missing', (holder, key) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1);
    else delete holder[key];
  }),
  onTree('a number as text', (holder, key) => {
    holder[key] = String(holder[key]);
  }),
  onTree('a list emptied', (holder, key) => {
    holder[key] = Array.isArray(holder[key]) ? [] : {};
  }),
  onTree('an odd value', (holder, key, random) => {
    holder[key] = pick(ODD_VALUES, random);
  }),
  onTree('another number', (holder, key, random) => {
    if (typeof holder[key] === 'number') holder[key] = pick([0, 1, 0.5, -3, 1e9], random);
    else holder['added'] = 1;
  }),
  { name: 'another version', spoil: (text) => text.replace(/"version": "[^"]*"/, '"version": "0.0.9"') },
  { name: 'no seal, as before there were any', spoil: (text) => text.replace(/,\n "seal": \{[^}]*\}/, '') },
  { name: 'the seal of another', spoil: (text) => text.replace(/("content": ")[0-9a-f]{8}/, '$100000000') },
];
