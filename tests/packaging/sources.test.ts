import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOTS = ['src', 'tests', 'scripts', 'bench', 'data', 'docs'];
const TEXT = /\.(ts|tsx|mjs|yaml|csv|md|json|txt)$/;
const FILES = [
  'README.md',
  'DEVELOPERS.md',
  'package.json',
  ...ROOTS.flatMap((root) =>
    (readdirSync(root, { recursive: true }) as string[]).map((name) => join(root, name)),
  ).filter((name) => TEXT.test(name) && !/[\\/]out[\\/]/.test(name)),
];

/** The lines of our files that match, each with its place. */
function linesWith(pattern: RegExp): readonly string[] {
  return FILES.flatMap((file) =>
    readFileSync(file, 'utf8')
      .split('\n')
      .flatMap((line, i) => (pattern.test(line) ? [`${file}:${i + 1}: ${line.trim().slice(0, 120)}`] : [])),
  );
}

describe('what our files cite can be looked up by anybody', () => {
  it('reads all of them', () => expect(FILES.length).toBeGreaterThan(500));

  it('no note of the house by a name in capitals and a section, as a standard is cited by its short name', () => {
    // A word of five and more capitals and a number, such as the short title of a note and its section.
    expect(linesWith(/\b[A-Z]{5,}(?:\.md)? (?:§ ?|section )?\d+(?:\.\d+)*\b/)).toEqual([]);
  });

  it('no source that names neither author nor year', () => {
    // Spelled with a class of one character, or this line would find itself.
    const vague =
      /public test[ ]suite|published combine[ ]averages|league[ ]glossary|various[ ]sources|the[ ]literature/i;
    expect(linesWith(vague)).toEqual([]);
  });

  it('no text file that is not among ours', () => {
    const named = linesWith(/\b[A-Za-z-]+\.md\b/).flatMap((line) =>
      [...line.matchAll(/\b[A-Za-z-]+\.md\b/g)].map(([name]) => ({ line, name })),
    );
    expect(named.length).toBeGreaterThan(3);
    expect(named.filter(({ name }) => !existsSync(name) && name !== 'notes.md').map(({ line }) => line)).toEqual([]);
  });

  it('no place on one machine', () => {
    // Written in parts, or this file would name one itself.
    const places = ['/home', '/root', '/work', '/Users'].map((place) => `${place}/`);
    expect(linesWith(new RegExp(`(?:^|[\\s"'\`(])(?:${places.join('|')})[a-z]`))).toEqual([]);
  });
});
