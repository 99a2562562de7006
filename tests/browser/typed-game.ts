import type { Depth } from '../../src/desk/chart/chart-fields.ts';

/** An invented game as keys on the strip: runs and passes that go on forever, in series of about six snaps. */
export function snapKeys(snaps: number, depth: Depth, from = 0): string[] {
  return Array.from({ length: snaps }, (_, i) => oneSnap(from + i, depth)).flat();
}

const SERIES = 6;

/** The ball is typed at the beginning of a series; `/` begins one when the snap before did not end it. */
function oneSnap(index: number, depth: Depth): string[] {
  const begins = index % SERIES === 0;
  const ball = begins ? [...(index === 0 ? [] : ['/']), '2', String(index % 10), 'Space'] : [];
  return [...ball, ...look(depth, index), ...(isPassAt(index) ? pass(depth, index) : run(depth, index))];
}

/** Every third snap is a pass. */
export function isPassAt(index: number): boolean {
  return index % 3 === 1;
}

/** A name of the staff's own is typed once and then has a key. */
function named(word: string, key: string, isFirst: boolean): string[] {
  return isFirst ? ['=', ...word, 'Enter'] : [key];
}

function look(depth: Depth, index: number): string[] {
  const hash = 'lmr'[index % 3] ?? 'm';
  if (depth === 'quick') return [];
  if (depth === 'plan') return [hash, '1', 'b'];
  // The formation was charted before: one key takes its receivers, its back and how the quarterback stands.
  if (index > 0) return [hash, '1', '1', ',', 'r', 'n', 'h', 'n'];
  return [hash, '1', ...named('ace', '1', true), '1', 'r', 'b', 's', 'n', 'h', 'n'];
}

function run(depth: Depth, index: number): string[] {
  const own = depth === 'full' ? ['n', ...named('zone', '1', index === 0)] : [];
  return ['r', ...own, String(2 + (index % 3)), 'Space'];
}

function pass(depth: Depth, index: number): string[] {
  const kind = 'qsd'[index % 3] ?? 'q';
  if (depth === 'quick') return [kind, 'c', '5', 'Space'];
  if (depth === 'plan') return [kind, 'c', '5', 'Space', '6', 'l', 'b', '4', 'hold'];
  const name = ['n', ...named('stick', '2', index === 1)];
  return [kind, ...name, 'c', '5', 'Space', '6', 'l', 'b', '0', '4', '3', 'hold', 'f', '6', 'Space'];
}
