import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { diskWeek } from '../../src/commands/disk-season.ts';
import { textAt } from '../../src/game/film.ts';
import { isGameSheet, readGame } from '../../src/season/read-game.ts';
import { inventedLibrary } from '../report/invented-library.ts';

const made: string[] = [];
let week = '';
beforeEach(() => {
  const season = mkdtempSync(join(tmpdir(), 'game-'));
  made.push(season);
  week = join(season, 'week-03');
  mkdirSync(week);
});
afterAll(() => {
  for (const season of made) rmSync(season, { recursive: true });
});

const HEADER = 'game,offense,down,to_go,ball_on,play_kind';
const read = () => readGame(diskWeek(week), { opponent: 'Cinder Vale', library: inventedLibrary() });

describe('the finished game of a week', () => {
  it('is asked for in words where nobody charted it', async () => {
    await expect(read()).rejects.toThrow(/holds no game….csv: chart the finished game into it/);
  });

  it('is the opponent’s snaps of every game sheet; a snap that names no offense is theirs', async () => {
    writeFileSync(join(week, 'game-1.csv'), `${HEADER}\ng,Cinder Vale,1,10,own 30,run\ng,Us,1,10,own 30,run\n`);
    writeFileSync(join(week, 'game-2.csv'), `${HEADER}\ng,,2,7,own 33,quick\ng,cinder vale,9,7,own 33,quick\n`);
    const { game, ours, faults, named } = await read();
    expect(game.size).toBe(2);
    expect(ours).toBeNull();
    expect(faults).toBe(1);
    expect(named.join()).toContain('row 3');
  });

  it('fills our calls from the library', async () => {
    writeFileSync(join(week, 'game.csv'), `${HEADER}\ng,,1,10,own 30,run\n`);
    writeFileSync(join(week, 'ours.csv'), 'game,down,to_go,ball_on,call\ng,1,10,own 30,Rake\n');
    const { ours } = await read();
    expect(ours && textAt(ours, 'path', 0)).toBe('rake');
  });

  it('is told by the name of its sheet', () => {
    expect(['game.csv', 'Game 2.txt', 'endgame.csv', 'game.html'].map(isGameSheet)).toEqual([true, true, false, false]);
  });
});
