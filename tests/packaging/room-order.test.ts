import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, resolve } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const CRUISER = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
const CONFIG = resolve('.dependency-cruiser.mjs');
const { ROOMS }: { readonly ROOMS: readonly string[] } = await import(CONFIG);

/** A file in each room, named for the direction of its arrow. */
const fileIn = (room: string, name: string) =>
  /\.tsx?$/.test(room) ? `src/${room}` : `src/${room.replace('/*', '')}/${name}.ts`;

interface Violation {
  readonly from: string;
  readonly to: string;
  readonly rule: { readonly name: string };
}

/** What the import check says of a program of these arrows alone. */
function violationsOf(arrows: readonly (readonly [string, string])[]): readonly Violation[] {
  const folder = mkdtempSync(join(tmpdir(), 'rooms-'));
  folders.push(folder);
  for (const path of new Set(arrows.flat())) {
    const imports = arrows
      .filter(([from]) => from === path)
      .map(([from, to], i) => {
        const way = relative(dirname(from), to);
        return `export * as with${i} from '${way.startsWith('.') ? way : `./${way}`}';\n`;
      });
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), `export const here = 1;\n${imports.join('')}`);
  }
  const args = [CRUISER, 'src', '--config', CONFIG, '--output-type', 'json'];
  const said = execFileSync(process.execPath, args, { cwd: folder, encoding: 'utf8', maxBuffer: 2 ** 26 });
  return JSON.parse(said).summary.violations;
}

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

const ofOrder = ({ rule }: Violation) => rule.name.endsWith('-imports-no-later-room');

describe('the order of the rooms', () => {
  it('forbids every room the next one, by name', () => {
    const arrows = ROOMS.slice(1).map((later, i) => [fileIn(ROOMS[i]!, 'up'), fileIn(later, 'aim')] as const);
    const found = violationsOf(arrows).filter(ofOrder);
    expect(found.map(({ rule, from, to }) => [rule.name, from, to]).sort()).toEqual(
      arrows.map(([from, to], i) => [`${ROOMS[i]}-imports-no-later-room`, from, to]).sort(),
    );
  });

  it('allows every room the one before it', () => {
    const arrows = ROOMS.slice(1).map((later, i) => [fileIn(later, 'down'), fileIn(ROOMS[i]!, 'aim')] as const);
    expect(violationsOf(arrows).filter(ofOrder)).toEqual([]);
  });

  it('knows no file outside the rooms', () => {
    const found = violationsOf([['src/attic/box.ts', fileIn('game', 'aim')]]);
    expect(found.map(({ rule }) => rule.name)).toContain('every-file-in-a-room');
  });

  it('is the order in which DEVELOPERS.md lists them', () => {
    const table = readFileSync('DEVELOPERS.md', 'utf8').split('| room | what it holds |')[1]?.split('\n\n')[0] ?? '';
    const listed = [...table.matchAll(/^\| `([^`]+)` \|/gm)].map((row) => row[1]);
    expect(listed).toEqual([...ROOMS]);
  });
});
