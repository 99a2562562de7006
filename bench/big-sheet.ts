import { closeSync, mkdirSync, openSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { OFFENSES } from '../scripts/demo/offense-style.ts';
import { sheetOf } from '../scripts/demo/sheet.ts';
import { simulateGame } from '../scripts/demo/simulate-game.ts';
import { type ColumnName, FILM_COLUMNS } from '../src/game/columns.ts';
import { createRandom } from '../src/stats/random.ts';

const OWN_ONLY: readonly ColumnName[] = ['call', 'path', 'family', 'coverage', 'rotation', 'shown_early', 'note'];

/** Writes an invented sheet of exactly `rows` snaps, game after game, without holding it in memory. */
export function writeBigSheet(path: string, rows: number): void {
  mkdirSync(dirname(path), { recursive: true });
  const headers = FILM_COLUMNS.map(({ name }) => name).filter((name) => !OWN_ONLY.includes(name));
  const file = openSync(path, 'w');
  const random = createRandom('big sheet');
  let left = rows;
  for (let game = 1; left > 0; game++) {
    const style = OFFENSES[game % OFFENSES.length]!;
    const snaps = simulateGame(style, { defense: 'Pinegate', week: game % 50, game: `game ${game}` }, random).slice(
      0,
      left,
    );
    const text = sheetOf(snaps, headers);
    writeSync(file, left === rows ? text : text.slice(text.indexOf('\n') + 1));
    left -= snaps.length;
  }
  closeSync(file);
}
