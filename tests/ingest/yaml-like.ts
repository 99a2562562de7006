import fc from 'fast-check';

/** Words, numbers and marks in the shapes that readers of YAML could take differently. */
const WORDS = [
  ...[
    'a',
    'b c',
    'null',
    '~',
    'Null',
    'true',
    'True',
    'no',
    'on',
    '1',
    '0',
    '-1',
    '-0',
    '01',
    '+1',
    '1.50',
    '1e3',
    '1e400',
  ],
  ...[
    '0x1F',
    '0o7',
    '1_000',
    '.5',
    '.inf',
    '9'.repeat(16),
    '9'.repeat(400),
    '12:30',
    '2026-10-23',
    '3x1',
    '1.',
    '- -1',
  ],
  ...[
    '"q"',
    "'q'",
    '"1"',
    "'null'",
    '""',
    '"a: b"',
    '"#"',
    '"a [b"',
    '"a\\n"',
    "it's",
    "'it''s'",
    'a, b',
    'a [b]',
    'a{b}',
  ],
  ...[
    'a "b"',
    '(x)',
    'é–x',
    'x: y',
    'x #y',
    'x#y',
    'a:b',
    '-a',
    '*a',
    '&a',
    '!a',
    '<<',
    '? a',
    '%a',
    '|',
    '>',
    'a\r',
    'a\tb',
  ],
  ...['a\u00a0', 'a\u0085b', 'a\u2028b', '\u0001', '[', '{', ']', '---', '...', 'constructor', '__proto__', ''],
];

const word = fc.constantFrom(...WORDS);
const gap = fc.constantFrom('', ' ', '  ');

/** `[a, b]` or `{ a: b }` with odd gaps, commas and depths. */
const collection: fc.Arbitrary<string> = fc.letrec<{ value: string; list: string; group: string }>((tie) => ({
  value: fc.oneof({ maxDepth: 3 }, word, tie('list'), tie('group')),
  list: fc
    .tuple(fc.array(tie('value'), { maxLength: 3 }), gap, fc.constantFrom(', ', ',', ' , '), fc.constantFrom('', ','))
    .map(([parts, pad, comma, last]) => `[${pad}${parts.join(comma)}${last}${pad}]`),
  group: fc
    .tuple(
      fc.array(fc.tuple(word, fc.constantFrom(': ', ':', ' : ', ':  '), tie('value')), { maxLength: 3 }),
      gap,
      fc.constantFrom(', ', ','),
    )
    .map(([parts, pad, comma]) => `{${pad}${parts.map((part) => part.join('')).join(comma)}${pad}}`),
})).value;

/** One line: indent, list mark, key, value, remark; each may be missing or odd. */
const line = fc
  .tuple(
    fc.constantFrom(0, 0, 0, 1, 2, 2, 4, 31),
    fc.constantFrom('', '', '- ', '- ', '-', '- - '),
    fc.option(
      fc.tuple(fc.oneof(fc.constantFrom('a', 'b', 'c', 'd', 'e'), word), fc.constantFrom(': ', ': ', ':', ' : ')),
    ),
    fc.oneof(fc.constant(''), word, collection),
    fc.constantFrom('', '', '', ' # c', '#c', '  '),
  )
  .map(([indent, mark, key, value, remark]) => `${' '.repeat(indent)}${mark}${key?.join('') ?? ''}${value}${remark}`);

/** A few odd lines under one another. */
export const oddLines: fc.Arbitrary<string> = fc
  .tuple(fc.array(line, { minLength: 1, maxLength: 6 }), fc.constantFrom('\n', '\n', '\r\n', '\n\n', '\n  # c\n'))
  .map(([lines, breaks]) => lines.join(breaks));

/** Lines of a settings file as text. */
type Block = readonly string[];

const shifted = (block: Block, by: number): Block => block.map((text) => ' '.repeat(by) + text);
const keyed = fc.oneof({ weight: 9, arbitrary: fc.constant('k') }, { weight: 1, arbitrary: word });
const leaf = fc.oneof({ weight: 2, arbitrary: word }, { weight: 1, arbitrary: collection });

/** A text built as settings are: keys and lists under one another, now and then indented wrongly. */
export const builtText: fc.Arbitrary<string> = fc
  .letrec<{ block: Block; map: Block; list: Block }>((tie) => ({
    block: fc.oneof({ maxDepth: 4 }, tie('map'), tie('list')),
    map: fc
      .array(fc.tuple(keyed, fc.oneof({ maxDepth: 4 }, leaf, tie('block')), fc.constantFrom(0, 1, 2, 2, 2, 4)), {
        minLength: 1,
        maxLength: 4,
      })
      .map((entries) =>
        entries.flatMap(([key, value, by], i) => {
          const name = key === 'k' ? `k${i}` : key;
          return typeof value === 'string' ? [`${name}: ${value}`] : [`${name}:`, ...shifted(value as Block, by)];
        }),
      ),
    list: fc.array(fc.oneof({ maxDepth: 4 }, leaf, tie('block')), { minLength: 1, maxLength: 4 }).map((items) =>
      items.flatMap((item) => {
        if (typeof item === 'string') return [`- ${item}`];
        const [first = '', ...rest] = item as Block;
        return [`- ${first}`, ...shifted(rest, 2)];
      }),
    ),
  }))
  .block.chain((lines) =>
    fc
      .tuple(fc.option(fc.nat(lines.length), { freq: 3 }), fc.constantFrom(' ', '  ', '', '# c\n'))
      .map(([at, slip]) => lines.map((text, i) => (i === at ? slip + text : text)).join('\n')),
  );

/** A part of a text with a few characters put in, taken out, or lines moved. */
export function spoiltPart(text: string): fc.Arbitrary<string> {
  const lines = text.split('\n');
  const change = fc.tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.constantFrom('put', 'take', 'drop', 'shift', 'copy'),
    fc.constantFrom(...' \n:-[]{},"\'#&*!|>%@`?~\\\t\r1.+é'),
  );
  return fc
    .tuple(fc.nat(lines.length - 1), fc.integer({ min: 1, max: 30 }), fc.array(change, { maxLength: 4 }))
    .map(([from, length, changes]) =>
      changes.reduce(
        (part, [place, kind, mark]) => spoil(part, Math.floor(place * part.length), { kind, mark }),
        outdented(lines.slice(from, from + length)).join('\n'),
      ),
    );
}

function outdented(lines: Block): Block {
  const indent = /^ */.exec(lines[0] ?? '')?.[0] ?? '';
  return lines.map((text) => (text.startsWith(indent) ? text.slice(indent.length) : text));
}

function spoil(text: string, at: number, { kind, mark }: { readonly kind: string; readonly mark: string }): string {
  const start = text.lastIndexOf('\n', at - 1) + 1;
  const next = text.indexOf('\n', at) + 1 || text.length;
  if (kind === 'put') return text.slice(0, at) + mark + text.slice(at);
  if (kind === 'take') return text.slice(0, at) + text.slice(at + 1);
  if (kind === 'drop') return text.slice(0, start) + text.slice(next);
  if (kind === 'shift') return `${text.slice(0, start)} ${text.slice(start)}`;
  return text.slice(0, next) + text.slice(start, next) + text.slice(next);
}
