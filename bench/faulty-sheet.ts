import { closeSync, mkdirSync, openSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';

/** How a faulty sheet is made: how many rows, how many of the cells of each are wrong, and whether it has every column. */
export interface FaultySheet {
  readonly rows: number;
  /** Faults a row, 1 to 3. */
  readonly faults: number;
  /** A long row of some 150 characters, or a short one of some 50. */
  readonly wide: boolean;
}

/** Rows written at a time. */
const PORTION = 10_000;

/** Headers every sheet has, and those a wide one has besides. */
const NARROW = 'offense,game,snap,quarter,down,to_go,ball_on,play_kind,formation';
const WIDE =
  'defense,week,drive,clock,score_margin,hash,personnel,receivers,strength,back_spot,quarterback_depth,motion,tempo,rushers_faced,coverage_faced,gain,result,note';

/** Writes an invented sheet of which every row is refused; the same bytes each time. */
export function writeFaultySheet(path: string, { rows, faults, wide }: FaultySheet): void {
  mkdirSync(dirname(path), { recursive: true });
  const file = openSync(path, 'w');
  writeSync(file, `${wide ? `${NARROW},${WIDE}` : NARROW}\n`);
  for (let from = 0; from < rows; from += PORTION) {
    const count = Math.min(PORTION, rows - from);
    const text = Array.from({ length: count }, (_, i) => `${rowText(from + i, faults, wide)}\n`).join('');
    writeSync(file, text);
  }
  closeSync(file);
}

/** One row: the letter O in the distance, then a fifth down, then a yard line beyond midfield. */
function rowText(i: number, faults: number, wide: boolean): string {
  const game = Math.floor(i / 120);
  const down = faults > 1 ? 5 + (i % 3) : 1 + (i % 4);
  const ball = faults > 2 ? `own ${51 + (i % 40)}` : `own ${1 + (i % 49)}`;
  const plain = `Harrow Creek,game ${game},${(i % 120) + 1},${1 + (i % 4)},${down},1O${i % 7},${ball},run,Bench ${i % 9}`;
  if (!wide) return plain;
  const clock = `${i % 12}:${String(i % 60).padStart(2, '0')}`;
  return `${plain},Larkmoor,${1 + (game % 10)},${1 + (i % 12)},${clock},${(i % 29) - 14},left,21,2x1,right,both,shotgun,across,no_huddle,5,three_deep,${i % 20},rush,row ${i}`;
}
