import { describe, expect, it } from 'vitest';
import { NODE_PLATFORM } from '../../src/commands/node-platform.ts';
import { inputsPrint, isUntouched, sealed } from '../../src/season/seal.ts';
import type { SeasonFolder } from '../../src/season/season-folder.ts';

const plan = { schema: 'x/1', opponent: 'Hackle “Creek”', cells: [1, 2, { share: 0.5 }] };
const { value, text } = sealed(plan, 'inputs', NODE_PLATFORM.digest);
const bytes = (text: string) => Buffer.from(text);

describe('a sealed file', () => {
  it('holds what was sealed, and the seal as its last key', () => {
    expect(text).toBe(`${JSON.stringify(value, null, 1)}\n`);
    const { seal, ...rest } = JSON.parse(text);
    expect(rest).toEqual(plan);
    expect(seal).toEqual({ inputs: 'inputs', content: expect.stringMatching(/^[0-9a-f]{64}$/) });
    expect(Object.keys(JSON.parse(text)).at(-1)).toBe('seal');
  });

  it('is untouched with other line ends or a byte-order mark, which JSON does not mind', () => {
    for (const same of [text, text.replaceAll('\n', '\r\n'), `\ufeff${text}`])
      expect(isUntouched(bytes(same), value.seal, NODE_PLATFORM)).toBe(true);
  });

  it.each(['Creek', '0.5', '1,', 'x/1', '“'])('is touched when "%s" is another text', (piece) => {
    expect(text).toContain(piece);
    expect(isUntouched(bytes(text.replace(piece, '9')), value.seal, NODE_PLATFORM)).toBe(false);
  });

  it('is touched when a key stands behind the seal', () => {
    const more = text.replace(/\n\}\n$/, ',\n "cells": []\n}\n');
    expect(JSON.parse(more).cells).toEqual([]);
    expect(isUntouched(bytes(more), value.seal, NODE_PLATFORM)).toBe(false);
  });

  it('is touched when there is no seal in it', () =>
    expect(isUntouched(bytes('{}'), value.seal, NODE_PLATFORM)).toBe(false));
});

describe('the print of a week’s files', () => {
  const file = (name: string, text: string) => ({ path: name, file: `season/${name}`, bytes: bytes(text) });
  const folder: SeasonFolder = {
    weekFile: file('week-01/week.yaml', 'opponent: A'),
    libraryFile: null,
    profileFile: null,
    archiveProfileFile: null,
    ownProfileFile: null,
    formationFile: null,
    opponent: [file('week-01/opponent.csv', 'down\n1\n'), file('week-01/opponent-2.csv', 'down\n2\n')],
    archive: [],
    counts: [],
    earlierWeeks: [],
    ownFilm: [file('ours.csv', 'call\n')],
    unread: [],
  };
  const print = inputsPrint(folder, NODE_PLATFORM.digest);

  it('is the same for the same files', () => expect(inputsPrint({ ...folder }, NODE_PLATFORM.digest)).toBe(print));

  it.each<[string, Partial<SeasonFolder>]>([
    ['a cell', { opponent: [file('week-01/opponent.csv', 'down\n3\n'), folder.opponent[1] ?? file('', '')] }],
    ['a name', { opponent: [file('week-01/opponent-1.csv', 'down\n1\n'), folder.opponent[1] ?? file('', '')] }],
    ['a file taken away', { opponent: folder.opponent.slice(0, 1) }],
    ['a file taken elsewhere', { ownFilm: [], archive: folder.ownFilm }],
    ['a file more', { libraryFile: file('defense.yaml', '') }],
  ])('is another for %s', (_, change) =>
    expect(inputsPrint({ ...folder, ...change }, NODE_PLATFORM.digest)).not.toBe(print),
  );
});
