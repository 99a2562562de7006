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
  const isPass = index % 3 === 1;
  return [...ball, ...look(depth, index), ...(isPass ? pass(depth, index) : run(index))];
}

function look(depth: Depth, index: number): string[] {
  if (depth === 'quick') return [];
  return ['lmr'[index % 3] ?? 'm', '1', 'b'];
}

function run(index: number): string[] {
  return ['r', String(2 + (index % 3)), 'Space'];
}

function pass(depth: Depth, index: number): string[] {
  const protection = depth === 'quick' ? [] : ['6', 'l', 'b', '4', 'hold'];
  return ['qsd'[index % 3] ?? 'q', 'c', '5', 'Space', ...protection];
}
